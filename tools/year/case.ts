import { ruptureRisk } from '../../server/src/note/calculations/eye/rupture-risk.ts';
import { inventEye, type InventedEye } from './eye.ts';
import type { SeededRandom } from './random.ts';
import { FOLLOWED, LOST, SHIFT, SURGEONS, YEAR, type Surgeon } from './truth.ts';

/** One invented operation with everything its notes say. */
export interface InventedCase {
  readonly id: string;
  readonly patient: string;
  readonly date: string;
  readonly surgeon: Surgeon;
  readonly side: 'right' | 'left';
  readonly whichEye: 'first' | 'second';
  readonly born: number;
  readonly sex: 'female' | 'male';
  readonly comorbidity: readonly string[];
  readonly difficulty: readonly string[];
  readonly cataract: readonly string[];
  readonly pupilMm: number;
  readonly before: string;
  readonly after: string;
  readonly eye: InventedEye;
  readonly rupture: boolean;
  readonly minor: string | null;
  readonly late: string | null;
  readonly visitDays: number | null;
}

const DAYS = 365;

function dateOf(dayOfYear: number): string {
  return new Date(Date.UTC(YEAR, 0, 1 + dayOfYear)).toISOString().slice(0, 10);
}

export function dateAfter(date: string, days: number): string {
  return new Date(Date.parse(`${date}T00:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);
}

const inMonths = (date: string, from: string, to: string): boolean => {
  const month = date.slice(5, 7);
  return month >= from && month <= to;
};

function ruptures(surgeon: Surgeon, expected: number, random: SeededRandom): boolean {
  const odds = (expected / (1 - expected)) * surgeon.ruptureOdds;
  return random.chance(odds / (1 + odds));
}

/** The case with this number; the same for the same state of the numbers. */
export function inventCase(index: number, of: number, random: SeededRandom): InventedCase {
  const surgeon = SURGEONS[index % SURGEONS.length] ?? SURGEONS[0];
  const date = dateOf(Math.floor((index * DAYS) / of));
  const age = Math.round(Math.min(95, Math.max(41, random.normal(72, 9))));
  const sex = random.chance(0.57) ? 'female' : 'male';
  const isShifted = surgeon.ref === SHIFT.surgeon && inMonths(date, SHIFT.from, SHIFT.to);
  const eye = inventEye(surgeon, age, isShifted ? SHIFT.byD : 0, random);
  const isLong = eye.axialLengthMm > 26;
  const [glaucoma, retinopathy, exfoliation] = [0.09, 0.06, 0.03].map((share) => random.chance(share));
  const isWhite = random.chance(0.03);
  const pupilMm = random.chance(0.06) ? 4.5 : Math.round(random.between(6, 8) * 10) / 10;
  const comorbidity = [
    ...(isLong ? ['high myopia'] : []),
    ...(glaucoma === true ? ['glaucoma'] : []),
    ...(retinopathy === true ? ['diabetic retinopathy'] : []),
    ...(exfoliation === true ? ['pseudoexfoliation'] : []),
  ];
  const difficulty = [
    ...(isLong ? ['long eye'] : []),
    ...(pupilMm < 5 ? ['small pupil'] : []),
    ...(isWhite ? ['brunescent or white lens'] : []),
  ];
  const expected = ruptureRisk({
    ageYears: age,
    male: sex === 'male',
    glaucoma: glaucoma === true,
    diabeticRetinopathy: retinopathy === true,
    pseudoexfoliationOrPhacodonesis: exfoliation === true,
    brunescentOrWhite: isWhite,
    axialLengthMm: eye.axialLengthMm,
    grade: surgeon.grade,
  });
  const isLost = surgeon.ref === LOST.surgeon && inMonths(date, LOST.from, LOST.to);
  const isFollowed = random.chance(isLost ? LOST.followed : FOLLOWED);
  const side = random.pick<'right' | 'left'>(['right', 'left']);
  return {
    id: `OP-${YEAR}-${String(index + 1).padStart(5, '0')}`,
    patient: `P-${String(10_000 + index)}`,
    date,
    surgeon,
    side,
    whichEye: random.chance(0.38) ? 'second' : 'first',
    born: YEAR - age,
    sex,
    comorbidity,
    difficulty,
    cataract: isWhite ? ['white'] : random.pick([['nuclear'], ['nuclear', 'cortical'], ['posterior subcapsular']]),
    pupilMm,
    before: random.pick(['6/12', '6/18', '6/24', '6/36', '6/60', 'CF']),
    after: random.pick(['6/5', '6/6', '6/6', '6/7.5', '6/9', '6/12']),
    eye,
    rupture: ruptures(surgeon, expected.ok ? expected.value : 0.0075, random),
    minor: random.chance(0.015) ? random.pick(['anterior capsule tear', 'iris prolapse', 'corneal abrasion']) : null,
    late: random.chance(0.03) ? random.pick(['cystoid macular oedema', 'uveitis', 'raised pressure']) : null,
    visitDays: isFollowed ? random.whole(28, 60) : null,
  };
}
