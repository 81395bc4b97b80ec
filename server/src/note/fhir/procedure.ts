import type { CodeableConcept, Procedure } from 'fhir/r4';
import type { Operation } from '@sideport/schemas';
import type { CodeSuggestions } from '../codes/suggestion.ts';
import { codesInDocument } from './codes-in-document.ts';
import type { DeviceUse } from './devices.ts';
import type { Entries } from './entries.ts';
import { concept, eyeConcept, to, type Fhir } from './fhir.ts';
import type { People } from './people.ts';

export interface ProcedureParts {
  readonly people: People;
  readonly composition: string;
  readonly devices: readonly DeviceUse[];
  readonly codes: CodeSuggestions | undefined;
}

/** The operation itself, and what was done beside it; the addresses, the operation first. */
export function addProcedures(
  note: Operation,
  { people, composition, devices, codes }: ProcedureParts,
  entries: Entries,
): readonly string[] {
  const coded = codesInDocument(note, codes);
  const shared = sharedParts(note, people, coded.sites);
  const performer = people.performers(note);
  const aids = note['pupil-aid']?.items.flatMap((one) => (one.kind ? [concept(one.kind.value)] : [])) ?? [];
  const notes = [...(note.findings ? [note.findings.value] : []), ...coded.notes].map((text) => ({ text }));
  const operation = entries.add('procedure', {
    ...shared,
    code: concept(note.procedure?.value ?? 'cataract operation, not further recorded', coded.main),
    ...(performer.length > 0 ? { performer } : {}),
    ...(coded.reasons.length > 0 ? { reasonCode: coded.reasons } : {}),
    report: [to(composition)],
    ...(coded.complications.length > 0 ? { complication: coded.complications } : {}),
    ...(notes.length > 0 ? { note: notes } : {}),
    ...(devices.length > 0
      ? { focalDevice: devices.map(({ url, action }) => ({ action, manipulated: to(url) })) }
      : {}),
    ...(aids.length > 0 ? { usedCode: aids } : {}),
  });
  const further = coded.further.map((code, index) =>
    entries.add(`procedure beside it ${index}`, { ...shared, partOf: [to(operation)], code }),
  );
  return [operation, ...further];
}

/** What holds for the operation and for each of its parts. */
function sharedParts(
  note: Operation,
  people: People,
  sites: readonly Fhir<CodeableConcept>[],
): Fhir<Pick<Procedure, 'resourceType' | 'status' | 'statusReason' | 'subject' | 'performedPeriod' | 'bodySite'>> {
  const abandoned = note.complications?.items.some((one) => one.what?.value === 'abandoned') ?? false;
  const bodySite = [...(note.eye ? [eyeConcept(note.eye.value)] : []), ...sites];
  return {
    resourceType: 'Procedure',
    status: abandoned ? 'stopped' : statusOf(note),
    ...(abandoned ? { statusReason: concept('operation abandoned, see complications') } : {}),
    subject: to(people.patient),
    ...(note.date ? { performedPeriod: { start: note.date.value, end: note.date.value } } : {}),
    ...(bodySite.length > 0 ? { bodySite } : {}),
  };
}

function statusOf(note: Operation): Fhir<Procedure>['status'] {
  if (note.status?.value === 'planned') return 'preparation';
  return note.status?.value === 'final' ? 'completed' : 'unknown';
}
