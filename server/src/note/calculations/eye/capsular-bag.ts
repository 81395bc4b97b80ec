import { calculation } from '../calculation.ts';
import { found, refused } from '../outcome.ts';
import { AXIAL_LENGTH, MEAN_KERATOMETRY } from '../lens-power/formula.ts';
import { CITATIONS } from '../sources.ts';

type Given = { axialLengthMm: number; meanKeratometryD: number };

const inputs = { axialLengthMm: AXIAL_LENGTH, meanKeratometryD: MEAN_KERATOMETRY };
const method = '3.44 - 0.056 K + 0.713 L - 0.0135 L²';
const source = { citation: CITATIONS.vass1999, status: 'seen' } as const;
const LONGEST = 28;
const SHORTEST = 20;

const regression = ({ axialLengthMm: length, meanKeratometryD: keratometry }: Given): number =>
  3.44 - 0.056 * keratometry + 0.713 * length - 0.0135 * length * length;

export const capsularBagDiameter = calculation<Given, number>({
  name: 'capsular-bag-diameter',
  topic: 'Eye',
  definition: 'Diameter of the capsular bag expected from axial length and keratometry.',
  inputs,
  unit: 'mm',
  domain: `${SHORTEST} to ${LONGEST} mm: the fitted curve has its top at 26.4 mm and falls beyond, which no eye does.`,
  method,
  source,
  cautions: [
    'Explains about a third of the variation (r² 0.31, 70 eyes, mean 10.37 mm ± 0.25).',
    'The printed abstract shows a "to" for the first minus sign. The bag shrinks by about 15 % in the first six months.',
  ],
  example: { input: { axialLengthMm: 23.5, meanKeratometryD: 43 }, gives: 10.332125 },
  compute: (eye) => {
    const { axialLengthMm } = eye;
    if (axialLengthMm > LONGEST || axialLengthMm < SHORTEST)
      return refused(
        `axial length ${axialLengthMm} mm is outside ${SHORTEST} to ${LONGEST} mm: the published curve has its top at 26.4 mm and says nothing of such an eye`,
      );
    const value = regression(eye);
    const kind = value > 10.7 ? ['Large bag (over 10.7 mm).'] : value < 10.1 ? ['Small bag (under 10.1 mm).'] : [];
    return found(value, kind);
  },
});

export const capsularBagRegression = calculation<Given, number>({
  name: 'capsular-bag-regression',
  topic: 'Eye',
  definition: 'The printed regression of the bag diameter, at any axial length: for study, not for choosing a ring.',
  inputs,
  unit: 'mm',
  domain: 'No eye beyond 28 mm is described by it.',
  method,
  source,
  cautions: ['Not an estimate of the bag beyond 28 mm, where the curve falls with length.'],
  example: { input: { axialLengthMm: 30, meanKeratometryD: 43 }, gives: 10.272 },
  compute: (eye) => found(regression(eye)),
});
