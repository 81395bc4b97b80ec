import { calculation } from '../calculation.ts';
import { quantity } from '../fields.ts';
import { found, refused } from '../outcome.ts';
import { CITATIONS } from '../sources.ts';

const MEDIA = 1336;
const source = { citation: 'paraxial vergence, thin cornea, index 1.336', status: 'derived' } as const;
const POSITION = quantity('lens position', 'mm', 2, 9);
const inputs = {
  flatD: quantity('flat keratometry', 'D', 30, 60),
  steepD: quantity('steep keratometry', 'D', 30, 60),
  lensPositionMm: POSITION,
};
const cautions = [
  'The lens position is an estimate; a fixed ratio for all eyes is a convention of lens makers, the eye itself ranges from about 1.29 to 1.86.',
];
const example = { flatD: 42, steepD: 44, lensPositionMm: 5.2 };
type Eye = typeof example;

/** Vergence (D) at the lens of light that the cornea bends by `powerD`. */
const vergenceAtLens = (powerD: number, positionMm: number): number => MEDIA / (MEDIA / powerD - positionMm);

const neutralising = ({ flatD, steepD, lensPositionMm }: Eye): number =>
  vergenceAtLens(steepD, lensPositionMm) - vergenceAtLens(flatD, lensPositionMm);

export const lensPlaneCylinder = calculation<Eye, number>({
  name: 'lens-plane-cylinder',
  topic: 'Toric',
  definition: 'Cylinder at the plane of the lens that neutralises the corneal astigmatism of this eye.',
  inputs,
  unit: 'D',
  domain: 'Distant object; the flat power is not above the steep one.',
  method: 'n/(n/K steep - d) - n/(n/K flat - d), n = 1336, d = lens position',
  source,
  cautions,
  example: { input: example, gives: 2.884898 },
  compute: (eye) =>
    eye.steepD < eye.flatD ? refused('the flat power is above the steep power') : found(neutralising(eye)),
});

export const toricRatio = calculation<Eye, number>({
  name: 'toric-ratio',
  topic: 'Toric',
  definition: 'Cylinder at the lens over cylinder at the cornea for this eye.',
  inputs,
  unit: '',
  domain: 'Distant object. Equal powers take the limit for a small cylinder.',
  method: 'neutralising cylinder at the lens / (K steep - K flat)',
  source,
  cautions,
  example: { input: example, gives: 1.442449 },
  compute: (eye) => {
    if (eye.steepD < eye.flatD) return refused('the flat power is above the steep power');
    if (eye.steepD === eye.flatD) return found(smallRatio(eye.flatD, eye.lensPositionMm));
    return found(neutralising(eye) / (eye.steepD - eye.flatD));
  },
});

const smallRatio = (powerD: number, positionMm: number): number => (MEDIA / (MEDIA - positionMm * powerD)) ** 2;

export const toricRatioOfSmallCylinder = calculation<{ meanD: number; lensPositionMm: number }, number>({
  name: 'toric-ratio-of-small-cylinder',
  topic: 'Toric',
  definition: 'Cylinder at the lens over cylinder at the cornea, for a small cylinder.',
  inputs: { meanD: quantity('mean keratometry', 'D', 30, 60), lensPositionMm: POSITION },
  unit: '',
  domain: 'A very good approximation up to several dioptres of cylinder.',
  method: '(n / (n - dK))²',
  source,
  cautions,
  example: { input: { meanD: 43, lensPositionMm: 5.2 }, gives: 1.442417 },
  compute: ({ meanD, lensPositionMm }) => found(smallRatio(meanD, lensPositionMm)),
});

export const cornealPlaneCylinder = calculation<{ lensCylinderD: number; ratio: number }, number>({
  name: 'corneal-plane-cylinder',
  topic: 'Toric',
  definition: "What a toric lens's cylinder corrects at the plane of the cornea.",
  inputs: {
    lensCylinderD: quantity('cylinder of the lens', 'D', 0, 15),
    ratio: quantity('toric ratio of the eye', '', 1, 3),
  },
  unit: 'D',
  domain: "The lens's cylinder as printed on its box is at the plane of the LENS.",
  method: 'cylinder of the lens / ratio of this eye',
  source: { citation: CITATIONS.savini2013, status: 'from memory' },
  cautions,
  example: { input: { lensCylinderD: 3, ratio: 1.442449 }, gives: 2.079796 },
  compute: ({ lensCylinderD, ratio }) => found(lensCylinderD / ratio),
});
