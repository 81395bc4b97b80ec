import type { GroupPlan, Path } from '@sideport/schemas';

/**
 * The fields that a whole section is begun with: what a note of a usual operation says there. The others are
 * proposed one by one. Common practice, no source.
 */
const usual: Readonly<Record<string, readonly string[]>> = {
  patient: ['ref', 'born', 'sex', 'allergies', 'anticoagulant', 'alpha-blocker'],
  team: ['role', 'ref', 'grade'],
  diagnosis: ['cataract', 'grade', 'scale', 'post-operative'],
  preop: ['acuity', 'refraction', 'pressure', 'biometry'],
  'preop.acuity': ['uncorrected', 'corrected'],
  'preop.biometry': ['method', 'date', 'eye', 'axial-length', 'k1', 'k2', 'chamber-depth'],
  plan: ['eye', 'target', 'formula', 'predicted', 'predicted-by', 'lens'],
  'plan.lens': ['maker', 'model', 'power'],
  safety: ['consent', 'site-marked', 'sign-in', 'time-out', 'lens-verified', 'sign-out'],
  'safety.lens-verified': ['eye', 'model', 'power', 'by', 'time'],
  anaesthesia: ['kinds', 'drug', 'given-by', 'anaesthetist'],
  antisepsis: ['agent', 'strength', 'contact'],
  incisions: ['kind', 'at', 'width', 'plane'],
  ovd: ['kind', 'agent'],
  capsulotomy: ['technique', 'diameter', 'off-centre', 'outcome'],
  nucleus: ['technique', 'steps', 'ultrasound-time', 'mean-power'],
  'nucleus.steps': ['step', 'bottle-height', 'vacuum', 'flow', 'ultrasound-mode', 'power'],
  cortex: ['method', 'vacuum', 'flow', 'complete'],
  'capsule-state': ['anterior', 'posterior', 'zonule', 'vitreous'],
  ring: ['used', 'kind', 'size', 'reason', 'inserted', 'result'],
  lens: ['maker', 'model', 'power', 'serial', 'lot', 'expiry', 'placed'],
  closure: ['hydration', 'sutures', 'leak-test'],
  complications: ['what', 'when', 'action', 'account', 'told'],
  'after-care': ['drops', 'shield', 'instructions'],
  codes: ['system', 'code'],
};

/** The usual fields of the section at a path; without a table entry, all that are not prose. */
export function usualFields(path: Path, plan: GroupPlan): readonly string[] {
  const known = usual[path.filter((step) => typeof step === 'string').join('.')];
  if (known !== undefined) return known.filter((key) => plan.fields.has(key));
  return [...plan.fields].filter(([, field]) => field.guide.prose !== true).map(([key]) => key);
}
