import { add, toVector } from '../../server/src/note/calculations/astigmatism/double-angle.ts';
import { cos, sin } from '../../server/src/note/calculations/angles.ts';
import { srkT } from '../../server/src/note/calculations/lens-power/srk-t.ts';
import type { Vector } from '../../server/src/note/calculations/quantities.ts';
import type { SeededRandom } from './random.ts';
import { ERROR_SD_D, LIST_A, SURPRISE_D, SURPRISES, TRUE_A, type Surgeon } from './truth.ts';

/** An invented eye, its plan and what the operation made of it. */
export interface InventedEye {
  readonly axialLengthMm: number;
  readonly chamberDepthMm: number;
  readonly meanKeratometryD: number;
  readonly corneaBefore: Vector;
  readonly corneaAfter: Vector;
  readonly targetD: number;
  readonly powerD: number;
  readonly predictedD: number;
  readonly achievedD: number;
}

const rounded = (value: number, step: number): number => Math.round(value / step) * step;

function valueOf(outcome: ReturnType<typeof srkT.power>): number {
  if (!outcome.ok) throw new Error(outcome.because);
  return outcome.value;
}

/** Measured to a hundredth of a dioptre and a whole degree, as a keratometer prints it. */
function measured(vector: Vector): Vector {
  const magnitude = rounded(vector.magnitude, 0.01);
  return magnitude === 0 || vector.axis === null
    ? { magnitude: 0, axis: null }
    : { magnitude, axis: Math.round(vector.axis) || 180 };
}

function induced(surgeon: Surgeon, meridian: number, random: SeededRandom): Vector {
  const steeper = 2 * (meridian + 90);
  const flattening = random.normal(surgeon.flatteningD, 0.3);
  const torque = random.normal(surgeon.torqueD, 0.3);
  return toVector({
    x: flattening * cos(steeper) - torque * sin(steeper),
    y: flattening * sin(steeper) + torque * cos(steeper),
  });
}

/** One eye of one patient; long eyes are more common than in the street, and end hyperopic. */
export function inventEye(surgeon: Surgeon, age: number, shiftD: number, random: SeededRandom): InventedEye {
  const isLong = random.chance(0.12);
  const axialLengthMm = rounded(
    isLong ? random.between(26.1, 32) : Math.min(25.8, Math.max(21, random.normal(23.5, 0.9))),
    0.01,
  );
  const meanKeratometryD = rounded(random.normal(43.6, 1.2), 0.01);
  const chamberDepthMm = rounded(Math.min(4.4, Math.max(2.2, random.normal(3.1, 0.3))), 0.01);
  const steep = age < 65 ? random.normal(90, 15) : random.normal(180, 20);
  const corneaBefore = measured({
    magnitude: Math.abs(random.normal(0.8, 0.4)),
    axis: ((steep % 180) + 180) % 180 || 180,
  });
  const meridian = surgeon.site === 'superior' ? 90 : 180;
  const corneaAfter = measured(add(corneaBefore, induced(surgeon, meridian, random)));
  const targetD = axialLengthMm > 28 ? -2 : random.pick([-0.25, -0.5, 0]);
  const biometry = { axialLengthMm, meanKeratometryD, aConstant: LIST_A };
  const powerD = rounded(valueOf(srkT.power({ ...biometry, targetD })), 0.5);
  const predictedD = rounded(valueOf(srkT.refraction({ ...biometry, powerD })), 0.01);
  const truly = valueOf(srkT.refraction({ ...biometry, aConstant: TRUE_A, powerD }));
  const surprise = random.chance(SURPRISES) ? random.pick([-SURPRISE_D, SURPRISE_D]) : 0;
  const longEye = axialLengthMm > 26 ? 0.2 : 0;
  const achievedD = rounded(truly + shiftD + longEye + surprise + random.normal(0, ERROR_SD_D), 0.125);
  return {
    axialLengthMm,
    chamberDepthMm,
    meanKeratometryD,
    corneaBefore,
    corneaAfter,
    targetD,
    powerD,
    predictedD,
    achievedD,
  };
}
