import type { ValuePlan } from '@sideport/schemas/fields/plan.ts';

/** What happens to a field when a record leaves without identifiers. */
export type Treatment =
  | 'keep'
  | 'drop'
  | 'date'
  | 'text'
  | 'drug names'
  | 'pseudonym of note'
  | 'pseudonym of patient'
  | 'pseudonym of staff';

/** Notations whose values are words of a closed vocabulary or measured amounts: nobody can be named with them. */
const MEASURES = new Set([
  'number',
  'refraction',
  'acuity',
  'ring size',
  'offset',
  'place on the eye',
  'dose',
  'regimen',
  'count',
  'yes or no',
]);

/**
 * Identifiers, by path. An identifier that is not listed is dropped.
 * Source: 45 CFR 164.514(b)(2)(i), (A) to (R): record numbers, device identifiers, places below the state, any unique code.
 */
const IDENTIFIERS: Readonly<Record<string, Treatment>> = {
  id: 'pseudonym of note',
  operation: 'pseudonym of note',
  amends: 'pseudonym of note',
  'patient.ref': 'pseudonym of patient',
  by: 'pseudonym of staff',
  'team.ref': 'pseudonym of staff',
  'signed.by': 'pseudonym of staff',
  'anaesthesia.anaesthetist': 'pseudonym of staff',
  'anaesthesia.given-by': 'pseudonym of staff',
  'safety.sign-in.by': 'pseudonym of staff',
  'safety.time-out.by': 'pseudonym of staff',
  'safety.sign-out.by': 'pseudonym of staff',
  'safety.lens-verified.by': 'pseudonym of staff',
  // Maker, model and power name a kind of lens; serial number, lot, expiry and scanned identifier name one lens.
  'lens.maker': 'keep',
  'lens.model': 'keep',
  'explanted-lens.maker': 'keep',
  'explanted-lens.model': 'keep',
  'plan.lens.maker': 'keep',
  'plan.lens.model': 'keep',
  'plan.spare-lens.maker': 'keep',
  'plan.spare-lens.model': 'keep',
  'safety.lens-verified.model': 'keep',
  'codes.code': 'keep',
  'changes.field': 'keep',
  place: 'drop',
  'lens.serial': 'drop',
  'lens.lot': 'drop',
  'lens.udi': 'drop',
  'explanted-lens.serial': 'drop',
  'ring.serial': 'drop',
};

/** Fields that are dropped whatever their notation. */
const DROPPED = new Set(['patient.born', 'lens.expiry', 'changes.was', 'changes.now']);

/** Texts that leave when they say nothing but generic names of drugs. */
const DRUGS = new Set(['drugs.drug', 'after-care.drops.drug', 'anaesthesia.drug', 'patient.anticoagulant']);

/** The treatment of a value, or undefined for a notation nobody has decided about: it is dropped. */
export function treatmentOf(path: string, { guide, notation }: ValuePlan): Treatment | undefined {
  if (DROPPED.has(path)) return 'drop';
  if (DRUGS.has(path)) return 'drug names';
  if (notation.name === 'identifier') return IDENTIFIERS[path];
  if (guide.prose === true || notation.name === 'text') return 'text';
  if (['date', 'date and time', 'due date'].includes(notation.name)) return 'date';
  if (notation.name === 'time of day' || notation.name === 'year' || notation.name === 'expiry date') return 'drop';
  const closed =
    notation.words !== undefined || MEASURES.has(notation.name) || notation.name.startsWith('quantity in ');
  return closed || notation.name === 'keratometry' ? 'keep' : undefined;
}
