import { calculation } from '../calculation.ts';
import { quantity } from '../fields.ts';
import { found } from '../outcome.ts';
import { CITATIONS } from '../sources.ts';

const MEDIA = 1336;
const topic = 'Capsulotomy';
const DEPTH = quantity('depth of the capsule behind the cornea', 'mm', 1, 6.5);
const KERATOMETRY = quantity('mean keratometry', 'D', 30, 60);
const inputs = { depthMm: DEPTH, meanKeratometryD: KERATOMETRY };
const source = {
  citation: `${CITATIONS.atchison}; 4 % from measurements at surgery in 40 eyes`,
  status: 'derived',
} as const;
const domain = 'Paraxial; the cornea as one surface. Depth from the front of the cornea, before viscoelastic.';
const cautions = [
  'The chamber deepens with viscoelastic: the capsule lies deeper and the tear along the mark gets smaller.',
];
/** At surgery a 5.30 mm ring appeared 6.14 mm where this optics gives 5.93 mm. */
const UNCERTAINTY = 0.04;
type Depth = { depthMm: number; meanKeratometryD: number };

const magnification = ({ depthMm, meanKeratometryD }: Depth): number => 1 / (1 - (depthMm * meanKeratometryD) / MEDIA);

function range(value: number): string {
  const [low, high] = [value * (1 - UNCERTAINTY), value * (1 + UNCERTAINTY)];
  return `Measured at surgery this optics was off by 3.5 %: allow ±4 %, ${low.toFixed(2)} to ${high.toFixed(2)} mm.`;
}

export const capsuleMagnification = calculation<Depth, number>({
  name: 'capsule-magnification',
  topic,
  definition: 'By how much the cornea enlarges what lies at the depth of the capsule.',
  inputs,
  unit: '',
  domain,
  method: '1 / (1 - dK / 1336)',
  source,
  cautions,
  example: { input: { depthMm: 3.2, meanKeratometryD: 43.5 }, gives: 1.11631 },
  compute: (depth) => found(magnification(depth)),
});

export const apparentDepth = calculation<Depth, number>({
  name: 'apparent-depth',
  topic,
  definition: 'Depth at which the capsule seems to lie behind the front of the cornea.',
  inputs,
  unit: 'mm',
  domain,
  method: 'magnification x depth / 1.336',
  source,
  cautions,
  example: { input: { depthMm: 3.2, meanKeratometryD: 43.5 }, gives: 2.673797 },
  compute: (depth) => found((1000 * magnification(depth) * depth.depthMm) / MEDIA),
});

export const diameterUnderMark = calculation<Depth & { markMm: number }, number>({
  name: 'capsulotomy-under-marker',
  topic,
  definition: 'Diameter on the capsule that a ring mark of this diameter on the cornea encloses.',
  inputs: { ...inputs, markMm: quantity('diameter of the corneal mark', 'mm', 2, 9) },
  unit: 'mm',
  domain,
  method: 'mark / magnification; the mark lies on the cornea and is not enlarged itself',
  source,
  cautions,
  example: { input: { depthMm: 3.2, meanKeratometryD: 43.5, markMm: 6 }, gives: 5.37485 },
  compute: (given) => {
    const value = given.markMm / magnification(given);
    return found(value, [range(value)]);
  },
});

export const markForDiameter = calculation<Depth & { wantedMm: number }, number>({
  name: 'marker-for-capsulotomy',
  topic,
  definition: 'Diameter of the corneal ring mark that encloses the wanted capsulotomy.',
  inputs: { ...inputs, wantedMm: quantity('wanted capsulotomy diameter', 'mm', 2, 8) },
  unit: 'mm',
  domain,
  method: 'wanted diameter x magnification',
  source,
  cautions,
  example: { input: { depthMm: 3.2, meanKeratometryD: 43.5, wantedMm: 5.25 }, gives: 5.860627 },
  compute: (given) => {
    const value = given.wantedMm * magnification(given);
    return found(value, [range(value)]);
  },
});
