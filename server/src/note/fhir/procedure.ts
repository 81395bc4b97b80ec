import type { CodeableConcept, Coding, Procedure } from 'fhir/r4';
import type { Operation } from '@sideport/schemas';
import type { CodeSuggestion } from '../codes/suggestion.ts';
import { concept, eyeConcept, to, type Fhir } from './fhir.ts';
import type { People } from './people.ts';

/** Addresses of the code systems; a system that is not listed leaves as text only. */
const SYSTEMS: Readonly<Record<string, string>> = {
  'ICD-10-CM': 'http://hl7.org/fhir/sid/icd-10-cm',
  'ICD-10-PCS': 'http://www.cms.gov/Medicare/Coding/ICD10',
  'ICD-10': 'http://hl7.org/fhir/sid/icd-10',
  'OPCS-4': 'https://fhir.hl7.org.uk/Id/opcs-4',
};
const DIAGNOSIS_SYSTEMS = new Set(['ICD-10-CM', 'ICD-10']);
const IMPLANTED = { system: 'http://hl7.org/fhir/device-action', code: 'implanted' };

export interface ProcedureParts {
  readonly people: People;
  readonly composition: string;
  readonly devices: readonly string[];
  readonly suggested: readonly CodeSuggestion[];
}

/** The operation itself. */
export function procedureOf(
  note: Operation,
  { people, composition, devices, suggested }: ProcedureParts,
): Fhir<Procedure> {
  const abandoned = note.complications?.items.some((one) => one.what?.value === 'abandoned') ?? false;
  const performer = people.performers(note);
  const complications = note.complications?.items.flatMap((one) => (one.what ? [concept(one.what.value)] : [])) ?? [];
  const aids = note['pupil-aid']?.items.flatMap((one) => (one.kind ? [concept(one.kind.value)] : [])) ?? [];
  return {
    resourceType: 'Procedure',
    status: abandoned ? 'stopped' : statusOf(note),
    ...(abandoned ? { statusReason: concept('operation abandoned, see complications') } : {}),
    code: concept(
      note.procedure?.value ?? 'cataract operation, not further recorded',
      codings(note, suggested, 'procedure'),
    ),
    subject: to(people.patient),
    ...(note.date ? { performedPeriod: { start: note.date.value, end: note.date.value } } : {}),
    ...(performer.length > 0 ? { performer } : {}),
    ...reason(note, suggested),
    ...(note.eye ? { bodySite: [eyeConcept(note.eye.value)] } : {}),
    report: [to(composition)],
    ...(complications.length > 0 ? { complication: complications } : {}),
    ...(note.findings ? { note: [{ text: note.findings.value }] } : {}),
    ...(devices.length > 0
      ? { focalDevice: devices.map((url) => ({ action: concept('implanted', [IMPLANTED]), manipulated: to(url) })) }
      : {}),
    ...(aids.length > 0 ? { usedCode: aids } : {}),
  };
}

function statusOf(note: Operation): Fhir<Procedure>['status'] {
  if (note.status?.value === 'planned') return 'preparation';
  return note.status?.value === 'final' ? 'completed' : 'unknown';
}

function reason(note: Operation, suggested: readonly CodeSuggestion[]): Pick<Fhir<Procedure>, 'reasonCode'> {
  const kinds = note.diagnosis?.cataract?.items.map((kind) => kind.value) ?? [];
  const coding = codings(note, suggested, 'diagnosis');
  if (kinds.length === 0 && coding.length === 0) return {};
  const text = kinds.length === 0 ? 'diagnosis not recorded in words' : `cataract: ${kinds.join(', ')}`;
  const reasonCode: Fhir<CodeableConcept>[] = [concept(text, coding)];
  return { reasonCode };
}

/** The coder's own codes first, marked as chosen; suggested ones behind them. */
function codings(
  note: Operation,
  suggested: readonly CodeSuggestion[],
  kind: CodeSuggestion['kind'],
): readonly Fhir<Coding>[] {
  const chosen = (note.codes?.items ?? []).flatMap(({ system, code }): Fhir<Coding>[] => {
    const url = system && SYSTEMS[system.value];
    const diagnosis = system && DIAGNOSIS_SYSTEMS.has(system.value);
    return url !== undefined && code && (kind === 'diagnosis') === diagnosis
      ? [{ system: url, code: code.value, userSelected: true }]
      : [];
  });
  const others = suggested.flatMap((one): Fhir<Coding>[] => {
    const url = SYSTEMS[one.system];
    const already = chosen.some((coding) => coding.system === url && coding.code === one.code);
    return one.kind === kind && url !== undefined && !already
      ? [{ system: url, code: one.code, display: one.title, userSelected: false }]
      : [];
  });
  return [...chosen, ...others];
}
