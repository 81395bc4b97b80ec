import { calculation } from '../calculation.ts';
import { optional, quantity } from '../fields.ts';
import { found } from '../outcome.ts';
import { CITATIONS } from '../sources.ts';
import { powerOfRadius, USUAL_INDEX } from './index-of-refraction.ts';

const INDEX = optional(quantity('keratometric index', '', 1.3, 1.4));
const source = { citation: CITATIONS.iso10343, status: 'from memory' } as const;

function indexCautions(index: number): string[] {
  return index === USUAL_INDEX
    ? []
    : [`Index ${index} instead of ${USUAL_INDEX}: not comparable with keratometry of the usual index.`];
}

export const cornealPowerFromRadius = calculation<{ radiusMm: number; index?: number }, number>({
  name: 'corneal-power-from-radius',
  topic: 'Keratometry',
  definition: 'Power of the cornea from its front radius of curvature.',
  inputs: { radiusMm: quantity('corneal radius', 'mm', 4.8, 11.25), index: INDEX },
  unit: 'D',
  domain: 'Convert each meridian by itself: the power of the mean radius is not the mean of the powers.',
  method: 'K = 1000 (n - 1) / r, n = 1.3375 unless another keratometric index is stated',
  source,
  example: { input: { radiusMm: 7.5 }, gives: 45 },
  compute: ({ radiusMm, index = USUAL_INDEX }) => found(powerOfRadius(radiusMm, index), indexCautions(index)),
});

export const cornealRadiusFromPower = calculation<{ powerD: number; index?: number }, number>({
  name: 'corneal-radius-from-power',
  topic: 'Keratometry',
  definition: 'Front radius of curvature of the cornea from its keratometric power.',
  inputs: { powerD: quantity('corneal power', 'D', 30, 70), index: INDEX },
  unit: 'mm',
  domain: 'Convert each meridian by itself.',
  method: 'r = 1000 (n - 1) / K, n = 1.3375 unless another keratometric index is stated',
  source,
  example: { input: { powerD: 43 }, gives: 7.848837 },
  compute: ({ powerD, index = USUAL_INDEX }) => found(powerOfRadius(powerD, index), indexCautions(index)),
});
