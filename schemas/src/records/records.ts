import { section, type OutputOf } from '../fields/field.ts';
import type { GroupPlan } from '../fields/plan.ts';
import type { Read } from '../fields/read.ts';
import { amendmentFields } from '../sections/amendment.ts';
import { capsuleState, ring, vitrectomy } from '../sections/capsule.ts';
import { capsulotomy, dye, hydrodissection, ovd, pupilAid } from '../sections/chamber.ts';
import * as course from '../sections/course.ts';
import { departmentFields } from '../sections/department.ts';
import { comorbidity, diagnosis, difficulty, indication } from '../sections/diagnosis.ts';
import { examination, visitFields } from '../sections/follow-up.ts';
import { eye, operationHead, recordHead, whichEye } from '../sections/head.ts';
import { explantedLens, lens } from '../sections/lens.ts';
import { cortex, nucleus } from '../sections/nucleus.ts';
import { patient, team } from '../sections/people.ts';
import { plan } from '../sections/plan.ts';
import { preop } from '../sections/preop.ts';
import { anaesthesia, antisepsis, bloodPrecautions, safety, seat } from '../sections/safety.ts';
import { closure, incisions } from '../sections/wounds.ts';

/** One operation on one eye, in the order in which an operation goes. */
export const operation = section(
  { label: 'Operation', meaning: 'One operation on one eye, from plan to closure.' },
  {
    ...recordHead,
    ...operationHead,
    patient,
    eye,
    'which-eye': whichEye,
    team,
    diagnosis,
    comorbidity,
    difficulty,
    indication,
    preop,
    plan,
    safety,
    anaesthesia,
    antisepsis,
    seat,
    thromboprophylaxis: bloodPrecautions,
    incisions,
    ovd,
    dye,
    'pupil-aid': pupilAid,
    capsulotomy,
    hydrodissection,
    nucleus,
    cortex,
    'capsule-state': capsuleState,
    vitrectomy,
    ring,
    'explanted-lens': explantedLens,
    lens,
    drugs: course.drugs,
    'antibiotic-withheld': course.antibioticWithheld,
    closure,
    complications: course.complications,
    'complications-excluded': course.excluded,
    findings: course.findings,
    specimens: course.specimens,
    'blood-loss': course.bloodLoss,
    'condition-at-end': course.conditionAtEnd,
    'after-care': course.afterCare,
    reviews: course.reviews,
    codes: course.codes,
    dictation: course.dictation,
    'free-text': course.freeText,
    signed: course.signed,
  },
);

/** A later visit of an operated eye. */
export const followUp = section(
  { label: 'Follow-up', meaning: 'A later visit, pointing to the operation by its id.' },
  {
    ...recordHead,
    operation: visitFields.operation,
    date: visitFields.date,
    patient,
    eye,
    visit: visitFields.visit,
    by: visitFields.by,
    ...examination,
    reviews: course.reviews,
    codes: course.codes,
    dictation: course.dictation,
    'free-text': course.freeText,
    signed: course.signed,
  },
);

/** An addendum, correction or late entry to a sealed note. */
export const amendment = section(
  {
    label: 'Amendment',
    meaning: 'An addendum, correction or late entry to a sealed note, which itself is never edited.',
  },
  {
    ...recordHead,
    ...amendmentFields,
    patient,
    eye,
    dictation: course.dictation,
    'free-text': course.freeText,
    signed: course.signed,
  },
);

/** The department file, `sideport.yaml`. */
export const department = section(
  { label: 'Department file', meaning: 'What one department has in common: staff, lenses, thresholds, habits.' },
  departmentFields,
);

export type Operation = Read<OutputOf<typeof operation>>;
export type FollowUp = Read<OutputOf<typeof followUp>>;
export type Amendment = Read<OutputOf<typeof amendment>>;
export type Department = Read<OutputOf<typeof department>>;

export type RecordKind = 'operation' | 'follow-up' | 'amendment' | 'department';

const records = { operation, 'follow-up': followUp, amendment, department } as const satisfies Record<
  RecordKind,
  unknown
>;

/** The plan of a kind of record. */
export function recordPlan(kind: RecordKind): GroupPlan {
  return records[kind].plan;
}
