import { quantity } from '../fields.ts';
import { CITATIONS } from '../sources.ts';
import { lensFormula, MEASUREMENTS, type MeasuredEye } from './formula.ts';

export interface Holladay1Eye extends MeasuredEye {
  readonly surgeonFactor: number;
}

export const SURGEON_FACTOR = quantity('surgeon factor', 'mm', -6, 8);
const LEAST_RADIUS = 7;
const WIDEST_CHAMBER = 13.5;

export const holladay1 = lensFormula<Holladay1Eye>({
  title: 'Holladay 1',
  slug: 'holladay-1',
  inputs: { ...MEASUREMENTS, surgeonFactor: SURGEON_FACTOR },
  domain: 'Keratometry with index 1.3375. Radii below 7 mm are taken as 7 mm; a caution says so.',
  method:
    'anatomical depth 0.56 + Rag - √(Rag² - AG²/4) with Rag = max(r, 7) and AG = min(12.5 L / 23.45, 13.5), position = depth + SF, length L + 0.2, corneal power (1000/3)/r, vertex 12 mm',
  source: { citation: CITATIONS.holladay1988, status: 'from memory' },
  hyperopicInLongEyes: true,
  example: {
    eye: { axialLengthMm: 30, meanKeratometryD: 43, surgeonFactor: 1.45 },
    targetD: -1,
    gives: 4.180108,
    powerD: 5,
    leaves: -1.567656,
    position: 5.853622,
  },
  read: ({ axialLengthMm, meanKeratometryD, surgeonFactor }) => {
    const measured = 337.5 / meanKeratometryD;
    const radius = Math.max(measured, LEAST_RADIUS);
    const width = Math.min((12.5 * axialLengthMm) / 23.45, WIDEST_CHAMBER);
    const depth = 0.56 + radius - Math.sqrt(radius * radius - (width * width) / 4);
    return {
      lensPosition: depth + surgeonFactor,
      opticalLength: axialLengthMm + 0.2,
      cornealPower: 1000 / 3 / measured,
      cautions:
        measured < LEAST_RADIUS
          ? ['Cornea steeper than 48.2 D: Holladay 1 takes its radius as 7 mm when placing the lens.']
          : [],
    };
  },
});
