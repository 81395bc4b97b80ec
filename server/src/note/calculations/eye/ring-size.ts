import { calculation } from '../calculation.ts';
import { found } from '../outcome.ts';
import { AXIAL_LENGTH } from '../lens-power/formula.ts';

/** A capsular tension ring by its two diameters, mm. */
export type RingSize = {
  readonly free: number;
  readonly compressed: number;
};

const VERY_LONG = 30;

function sizeFor(length: number): RingSize {
  if (length < 24) return { free: 12.3, compressed: 10 };
  return length <= 28 ? { free: 13, compressed: 11 } : { free: 14.5, compressed: 12 };
}

export const ringSizeAdvice = calculation<{ axialLengthMm: number }, RingSize>({
  name: 'ring-size-advice',
  topic: 'Eye',
  definition: 'Usual size of a capsular tension ring for the length of the eye, free and compressed.',
  inputs: { axialLengthMm: AXIAL_LENGTH },
  unit: 'mm',
  domain: 'Bag size counts, not axial length alone; the ends of the ring should overlap.',
  method: '12.3/10 mm below 24 mm, 13/11 mm from 24 to 28 mm, 14.5/12 mm above',
  source: { citation: 'rule of thumb; sizes from a review of 2006', status: 'common practice' },
  cautions: ["Common practice, not a measurement of this bag. Follow the maker's instructions and local policy."],
  example: { input: { axialLengthMm: 26 }, gives: { free: 13, compressed: 11 } },
  compute: ({ axialLengthMm }) =>
    found(
      sizeFor(axialLengthMm),
      axialLengthMm >= VERY_LONG
        ? ['From 30 mm on a randomised trial in 120 eyes compared 13/11 mm with 12/10 mm and favoured 13/11 mm (seen).']
        : [],
    ),
});
