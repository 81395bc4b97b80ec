import type { FollowUp, GroupPlace, Operation } from '@sideport/schemas';
import { siteAt } from '../calculations/position/site.ts';
import { asAxis } from '../calculations/angles.ts';
import { sphericalEquivalent } from '../calculations/refraction/spherical-equivalent.ts';
import type { Outcome } from '../calculations/outcome.ts';
import type { CheckContext } from '../checks/check.ts';
import { computeNote } from '../computing/compute-note.ts';
import type { ComputedNote } from '../computing/computed.ts';
import { corneaOf } from '../computing/corneas.ts';
import type { Known } from '../computing/known.ts';
import { operationFacts, type OperationFacts as Computable } from '../computing/operation-facts.ts';
import type { AcuityFacts, AuditFacts, FollowUpFacts, IncisionFacts, LensFacts, OperationFacts } from './facts.ts';
import { impliedPrediction } from './prediction.ts';
import { recordedElements } from './recorded-elements.ts';

const orNull = <T>(answer: Known<T> | Outcome<T>): T | null => (answer.ok ? answer.value : null);

/** A computed value by name, at the path given, when it is of the kind wanted. */
function computedAt(computed: ComputedNote, name: string, path: readonly string[]): unknown {
  return computed.values.find((value) => value.name === name && path.every((step, at) => value.path[at] === step))
    ?.value;
}

const numberOrNull = (value: unknown): number | null => (typeof value === 'number' ? value : null);

/** Words of a list: empty where the note says "none", null where it says nothing. */
function words(
  list: { readonly items: readonly (string | undefined)[] } | undefined,
  key: string,
  group: GroupPlace,
): readonly string[] | null {
  const found = list?.items.filter((word) => word !== undefined) ?? [];
  if (found.length > 0) return [...new Set(found)].toSorted();
  return group.said[key]?.word === 'none' ? [] : null;
}

interface Acuities {
  readonly corrected?: { readonly text: string };
  readonly pinhole?: { readonly text: string };
  readonly uncorrected?: { readonly text: string };
}

/** Best corrected, else pinhole, else uncorrected; its logMAR as computed. */
function acuityOf(acuities: Acuities | undefined, computed: ComputedNote, path: readonly string[]): AcuityFacts | null {
  for (const kind of ['corrected', 'pinhole', 'uncorrected'] as const) {
    const field = acuities?.[kind];
    if (field !== undefined) {
      return { text: field.text, logMar: numberOrNull(computedAt(computed, 'acuity-logmar', [...path, kind])) };
    }
  }
  return null;
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

function reviewsOf(note: Operation, computed: ComputedNote): OperationFacts['reviews'] {
  return (note.reviews?.items ?? []).flatMap((review, at) => {
    const due = computed.values.find(
      ({ name, path }) => name === 'review-date' && path[0] === 'reviews' && path[1] === at,
    )?.value;
    return typeof due === 'string' ? [{ what: review.what?.value ?? 'review', due }] : [];
  });
}

function operationOf(note: Operation, context: CheckContext): OperationFacts | null {
  if (note.id === undefined) return null;
  const computed = computeNote(context);
  const facts = operationFacts(note, context.department, context.today);
  const rupture = computedAt(computed, 'posterior-capsule-rupture', []);
  const surgeon = note.team?.items.find(({ role }) => role?.value === 'surgeon');
  const predicted = impliedPrediction(note, computed);
  return {
    record: 'operation',
    id: note.id.value,
    status: note.status?.value ?? null,
    date: note.date?.value ?? null,
    surgeon: surgeon?.ref?.value ?? null,
    patient: note.patient?.ref?.value ?? null,
    eye: note.eye?.value ?? null,
    ageYears: numberOrNull(computedAt(computed, 'age-at-operation', [])),
    sex: note.patient?.sex?.value ?? null,
    whichEye: note['which-eye']?.value ?? null,
    axialLengthMm: orNull(facts.axialLength),
    chamberDepthMm: orNull(facts.chamberDepth),
    meanKeratometryD: orNull(facts.cornea.usual.mean),
    comorbidity: words(
      note.comorbidity && { items: note.comorbidity.items.map((item) => item.value) },
      'comorbidity',
      note.$,
    ),
    difficulty: words(
      note.difficulty && { items: note.difficulty.items.map((item) => item.value) },
      'difficulty',
      note.$,
    ),
    complications: words(
      note.complications && { items: note.complications.items.map(({ what }) => what?.value) },
      'complications',
      note.$,
    ),
    rupture: typeof rupture === 'boolean' ? rupture : null,
    ruptureRisk: numberOrNull(computedAt(computed, 'rupture-risk', [])),
    lens: lensOf(note),
    predictedD: predicted?.valueD ?? null,
    predictedBy: predicted?.by ?? null,
    incision: incisionOf(facts),
    corneaBefore: orNull(facts.cornea.usual.astigmatism),
    acuityBefore: acuityOf(note.preop?.acuity, computed, ['preop', 'acuity']),
    reviews: reviewsOf(note, computed),
    elements: recordedElements(note),
  };
}

function followUpOf(note: FollowUp, context: CheckContext): FollowUpFacts | null {
  if (note.id === undefined) return null;
  const computed = computeNote(context);
  const index = context.department?.['keratometric-index']?.value.amount;
  const refraction = note.refraction?.value;
  return {
    record: 'follow-up',
    id: note.id.value,
    operation: note.operation?.value ?? null,
    date: note.date?.value ?? null,
    refractionD: refraction === undefined ? null : orNull(sphericalEquivalent({ refraction })),
    cornea: orNull(corneaOf(note.keratometry, index).usual.astigmatism),
    acuity: acuityOf(note.acuity, computed, ['acuity']),
    complications: words(
      note.complications && { items: note.complications.items.map(({ what }) => what?.value) },
      'complications',
      note.$,
    ),
  };
}

/** What the audit keeps of a note; the note itself can be forgotten afterwards. */
export function auditFacts(context: CheckContext): AuditFacts | 'other' | 'unreadable' {
  const { reading } = context;
  switch (reading.kind) {
    case 'operation':
      return operationOf(reading.note, context) ?? 'unreadable';
    case 'follow-up':
      return followUpOf(reading.note, context) ?? 'unreadable';
    case 'amendment':
      return 'other';
    case 'department':
    case null:
      return 'unreadable';
    default:
      return reading satisfies never;
  }
}
