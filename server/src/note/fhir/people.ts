import type { Operation } from '@sideport/schemas';
import type { Entries } from './entries.ts';
import { concept, to } from './fhir.ts';

/** Everyone the note names, by their local reference. */
export class People {
  readonly #entries: Entries;
  readonly #known = new Map<string, string>();
  readonly patient: string;

  constructor(note: Operation, entries: Entries) {
    this.#entries = entries;
    const { patient } = note;
    this.patient = entries.add('patient', {
      resourceType: 'Patient',
      ...(patient?.ref ? { identifier: [{ value: patient.ref.value }] } : {}),
      ...(patient?.sex ? { gender: patient.sex.value } : {}),
      ...(patient?.born ? { birthDate: String(patient.born.value) } : {}),
    });
    for (const member of note.team?.items ?? []) this.practitioner(member.ref?.value);
  }

  /** The address of a person; undefined where the note names none. */
  practitioner(ref: string | undefined): string | undefined {
    if (ref === undefined) return undefined;
    let url = this.#known.get(ref);
    if (url === undefined) {
      url = this.#entries.add(`practitioner ${ref}`, { resourceType: 'Practitioner', identifier: [{ value: ref }] });
      this.#known.set(ref, url);
    }
    return url;
  }

  /** Who took part, as performers of a procedure. */
  performers(note: Operation) {
    return (note.team?.items ?? []).flatMap(({ ref, role, grade }) => {
      const actor = this.practitioner(ref?.value);
      if (actor === undefined) return [];
      const text = [role?.value, grade && `(${grade.value})`].filter((part) => part !== undefined).join(' ');
      return [{ actor: to(actor), ...(text === '' ? {} : { function: concept(text) }) }];
    });
  }
}
