import type { FollowUp, GroupPlace, Operation } from '@sideport/schemas';
import { asAxis } from '../calculations/angles.ts';
import { posteriorCapsuleRupture } from '../calculations/eye/posterior-capsule-rupture.ts';
import { ruptureRisk } from '../calculations/eye/rupture-risk.ts';
import type { Outcome } from '../calculations/outcome.ts';
import { siteAt } from '../calculations/position/site.ts';
import { sphericalEquivalent } from '../calculations/refraction/spherical-equivalent.ts';
import { reviewDates } from '../calculations/time/reviews.ts';
import type { CheckContext } from '../checks/check.ts';
import { logmarOf, type AcuityFields } from '../computing/acuities.ts';
import { corneaOf } from '../computing/corneas.ts';
import type { Known } from '../computing/known.ts';
import { whyNoExtraction } from '../computing/natural-lens.ts';
import { operationFacts, type OperationFacts as Computable } from '../computing/operation-facts.ts';
import { riskFactorsOf } from '../computing/risk-factors.ts';
import { capsuleFactsOf } from '../computing/values/capsule-rupture.ts';
import { ownPrediction } from '../computing/values/outcome-of-refraction.ts';
import { wantedReviews } from '../computing/values/reviews.ts';
import { ageOf } from '../computing/values/time.ts';
import type { AcuityFacts, AuditFacts, FollowUpFacts, IncisionFacts, LensFacts, OperationFacts } from './facts.ts';
import { recordedElements } from './recorded-elements.ts';

const orNull = <T>(answer: Known<T> | Outcome<T>): T | null => (answer.ok ? answer.value : null);

/** Words of a list: empty where the note says "none", null where it says nothing. */
function words(
  list: readonly (string | undefined)[] | undefined,
  key: string,
  group: GroupPlace,
): readonly string[] | null {
  const found = list?.filter((word) => word !== undefined) ?? [];
  if (found.length > 0) return [...new Set(found)].toSorted();
  return group.said[key]?.word === 'none' ? [] : null;
}

/** Light perception has a number only by extrapolation, which an average must not rest on. */
const NO_NUMBER: readonly string[] = ['PL', 'NPL'];

/** Best corrected, else pinhole, else uncorrected. */
function acuityOf(acuities: AcuityFields | undefined): AcuityFacts | null {
  const field = acuities?.corrected ?? acuities?.pinhole ?? acuities?.uncorrected;
  if (field === undefined) return null;
  const hasNumber = field.value.kind !== 'category' || !NO_NUMBER.includes(field.value.category);
  return { text: field.text, logMar: hasNumber ? orNull(logmarOf(field, 'acuity')) : null };
}

function incisionOf({ mainIncision, eye }: Computable): IncisionFacts | null {
  if (mainIncision === undefined || mainIncision.planned || !mainIncision.position.ok || !eye.ok) return null;
  const position = mainIncision.position.value;
  return { site: siteAt(position, eye.value), meridian: asAxis(position), widthMm: orNull(mainIncision.widthMm) };
}

function lensOf({ lens }: Operation): LensFacts | null {
  if (lens === undefined || lens.placed?.value === 'none') return null;
  return {
    model: lens.model?.value ?? null,
    powerD: lens.power?.value.amount ?? null,
    placed: lens.placed?.value ?? null,
  };
}

function reviewsOf(facts: Computable): OperationFacts['reviews'] {
  if (!facts.date.ok) return [];
  const dates = reviewDates({ operationDate: facts.date.value, reviews: wantedReviews(facts) });
  return dates.ok ? dates.value.map(({ what, due }) => ({ what, due })) : [];
}

/** Expected chance of a rupture; a factor that is not recorded counts as absent, as the model's authors had it. */
function riskOf(facts: Computable): number | null {
  const age = ageOf(facts);
  if (!age.ok) return null;
  return orNull(
    ruptureRisk(riskFactorsOf(facts.note, age.value, facts.axialLength.ok ? facts.axialLength.value : undefined)),
  );
}

/** The prediction for the lens in the eye; a lens elsewhere than in the bag has none, because the constants do not hold there. */
function predictionOf(facts: Computable): { readonly valueD: number; readonly by: string } | null {
  if (facts.note.lens?.placed?.value !== 'capsular bag') return null;
  const { value, by } = ownPrediction(facts);
  return value.ok ? { valueD: value.value, by } : null;
}

function operationOf(note: Operation, { department, today }: CheckContext): OperationFacts | null {
  if (note.id === undefined) return null;
  const facts = operationFacts(note, { department, today, visits: () => [] });
  const surgeon = note.team?.items.find(({ role }) => role?.value === 'surgeon');
  const predicted = predictionOf(facts);
  const naturalLens = whyNoExtraction(note) === undefined;
  return {
    record: 'operation',
    id: note.id.value,
    status: note.status?.value ?? null,
    date: note.date?.value ?? null,
    surgeon: surgeon?.ref?.value ?? null,
    patient: note.patient?.ref?.value ?? null,
    eye: note.eye?.value ?? null,
    ageYears: orNull(ageOf(facts)),
    sex: note.patient?.sex?.value ?? null,
    whichEye: note['which-eye']?.value ?? null,
    axialLengthMm: orNull(facts.axialLength),
    chamberDepthMm: orNull(facts.chamberDepth),
    meanKeratometryD: orNull(facts.cornea.usual.mean),
    comorbidity: words(
      note.comorbidity?.items.map((item) => item.value),
      'comorbidity',
      note.$,
    ),
    difficulty: words(
      note.difficulty?.items.map((item) => item.value),
      'difficulty',
      note.$,
    ),
    complications: words(
      note.complications?.items.map(({ what }) => what?.value),
      'complications',
      note.$,
    ),
    naturalLens,
    rupture: naturalLens ? orNull(posteriorCapsuleRupture(capsuleFactsOf(note))) : null,
    ruptureRisk: naturalLens ? riskOf(facts) : null,
    lens: lensOf(note),
    predictedD: predicted?.valueD ?? null,
    predictedBy: predicted?.by ?? null,
    incision: incisionOf(facts),
    corneaBefore: orNull(facts.cornea.usual.astigmatism),
    acuityBefore: acuityOf(note.preop?.acuity),
    reviews: reviewsOf(facts),
    elements: recordedElements(note),
  };
}

function followUpOf(note: FollowUp, { department }: CheckContext): FollowUpFacts | null {
  if (note.id === undefined) return null;
  const refraction = note.refraction?.value;
  return {
    record: 'follow-up',
    id: note.id.value,
    operation: note.operation?.value ?? null,
    date: note.date?.value ?? null,
    refractionD: refraction === undefined ? null : orNull(sphericalEquivalent({ refraction })),
    cornea: orNull(corneaOf(note.keratometry, department?.['keratometric-index']?.value.amount).usual.astigmatism),
    acuity: acuityOf(note.acuity),
    complications: words(
      note.complications?.items.map(({ what }) => what?.value),
      'complications',
      note.$,
    ),
  };
}

/** What the audit keeps of a note; the note itself can be forgotten afterwards. */
export function auditFacts(context: CheckContext): AuditFacts | 'unreadable' {
  const { reading } = context;
  switch (reading.kind) {
    case 'operation':
      return operationOf(reading.note, context) ?? 'unreadable';
    case 'follow-up':
      return followUpOf(reading.note, context) ?? 'unreadable';
    case 'amendment':
      return reading.note.id === undefined
        ? 'unreadable'
        : { record: 'amendment', id: reading.note.id.value, amends: reading.note.amends?.value ?? null };
    case 'department':
    case null:
      return 'unreadable';
    default:
      return reading satisfies never;
  }
}
