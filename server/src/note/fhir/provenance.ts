import type { LeavingOperation } from '../export/leaving.ts';
import type { Entries } from './entries.ts';
import { concept, fhirTime, isInstant, to } from './fhir.ts';
import type { People } from './people.ts';

const PARTICIPANT = 'http://terminology.hl7.org/CodeSystem/provenance-participant-type';

/** Who signed, who amended, and that a program put the document together. */
export function addProvenance(
  { note, amendments }: LeavingOperation,
  { composition, people, made }: { readonly composition: string; readonly people: People; readonly made: string },
  entries: Entries,
): void {
  const target = [to(composition)];
  for (const [index, { by, at, meaning }] of (note.signed?.items ?? []).entries()) {
    const who = people.practitioner(by?.value);
    if (who === undefined || !at || !isInstant(at.value)) continue;
    const type = meaning?.value === 'author' ? 'author' : 'verifier';
    entries.add(`signature ${index}`, {
      resourceType: 'Provenance',
      target,
      recorded: fhirTime(at.value),
      agent: [{ type: concept(meaning?.value ?? 'signer', [{ system: PARTICIPANT, code: type }]), who: to(who) }],
    });
  }
  for (const [index, amendment] of amendments.entries()) {
    const who = people.practitioner(amendment.by?.value);
    if (who === undefined || !amendment.at || !isInstant(amendment.at.value)) continue;
    entries.add(`amendment ${index}`, {
      resourceType: 'Provenance',
      target,
      recorded: fhirTime(amendment.at.value),
      ...(amendment.reason ? { reason: [concept(amendment.reason.value)] } : {}),
      activity: concept(amendment.kind?.value ?? 'amendment'),
      agent: [{ type: concept('author', [{ system: PARTICIPANT, code: 'author' }]), who: to(who) }],
      ...(amendment.id
        ? { entity: [{ role: 'revision' as const, what: { identifier: { value: amendment.id.value } } }] }
        : {}),
    });
  }
  entries.add('assembly', {
    resourceType: 'Provenance',
    target,
    recorded: made,
    activity: concept('document made from the note by a program'),
    agent: [{ type: concept('assembler', [{ system: PARTICIPANT, code: 'assembler' }]), who: { display: 'Sideport' } }],
  });
}
