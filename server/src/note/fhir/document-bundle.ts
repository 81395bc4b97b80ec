import type { Bundle, Composition, CompositionSection } from 'fhir/r4';
import { recordPlan } from '@sideport/schemas';
import { canonicalJson } from '../export/json-text.ts';
import type { LeavingOperation } from '../export/leaving.ts';
import { plainNote } from '../export/plain-note.ts';
import type { ProseDocument } from '../prose/document.ts';
import { plain, sectionBody } from '../prose/html.ts';
import { hasContent } from '../prose/text.ts';
import { addComputed } from './computed-observations.ts';
import { addDevices } from './devices.ts';
import { addDrugs } from './drugs.ts';
import { Entries } from './entries.ts';
import { concept, fhirTime, to, type Fhir } from './fhir.ts';
import { addMeasurements, addOperative, Observations } from './observations.ts';
import { People } from './people.ts';
import { printable } from './printable.ts';
import { addProcedures } from './procedure.ts';
import { addProvenance } from './provenance.ts';

export interface DocumentSurroundings {
  /** The same note in words; its sections become the narrative. */
  readonly prose: ProseDocument;
  /** When the document is made, with its offset: 2031-03-15T08:00:00Z. */
  readonly made: string;
  /** SHA-256 of a text in hexadecimal. */
  readonly hash: (text: string) => string;
}

/** LOINC 11504-8, Surgical operation note. */
const OPERATION_NOTE = concept('Surgical operation note', [{ system: 'http://loinc.org', code: '11504-8' }]);

/**
 * One operation as a FHIR R4 document. Plain mapping; no profile is claimed.
 * @returns a reason instead when the note lacks what a document must have
 */
export function documentBundle(
  leaving: LeavingOperation,
  surroundings: DocumentSurroundings,
): Fhir<Bundle> | { readonly because: string } {
  const { note, amendments } = leaving;
  const date = lastChanged(leaving);
  if (date === undefined)
    return { because: 'a document needs a date, and the note has neither a date of the operation nor a signature' };
  const content = [
    plainNote(note, recordPlan('operation')),
    ...amendments.map((one) => plainNote(one, recordPlan('amendment'))),
  ];
  const entries = new Entries(surroundings.hash(canonicalJson(content)), surroundings.hash);
  const composition = entries.url('composition');
  const people = new People(note, entries);
  const observations = new Observations(note, people.patient, entries);
  const devices = addDevices(note, people.patient, entries);
  const procedures = addProcedures(note, { people, composition, devices, codes: leaving.codes }, entries);
  const computed = addComputed(leaving.computed, observations);
  const drugs = addDrugs(note, people.patient, entries);
  const related: Readonly<Record<string, readonly string[]>> = {
    before: [...addMeasurements(note, observations), ...computed],
    removal: [...procedures, ...addOperative(note, observations)],
    implant: [...devices.map(({ url }) => url), ...drugs],
  };
  addProvenance(leaving, { composition, people, made: surroundings.made }, entries);
  const first = compositionOf(leaving, date, people, surroundings.prose, related);
  return printable({
    resourceType: 'Bundle',
    identifier: { system: 'urn:ietf:rfc:3986', value: entries.url('bundle') },
    type: 'document',
    timestamp: surroundings.made,
    entry: [{ fullUrl: composition, resource: first }, ...entries.list],
  });
}

/** When the note was last changed by a person: signed, or amended after that. */
function lastChanged(leaving: LeavingOperation): string | undefined {
  const written = authorSignature(leaving)?.at?.value ?? leaving.note.date?.value;
  const times = [written, ...leaving.amendments.map(({ at }) => at?.value)].filter((time) => time !== undefined);
  return times.toSorted((a, b) => Date.parse(b) - Date.parse(a))[0];
}

const authorSignature = ({ note }: LeavingOperation) =>
  note.signed?.items.find((one) => one.meaning?.value === 'author') ?? note.signed?.items[0];

function compositionOf(
  leaving: LeavingOperation,
  date: string,
  people: People,
  prose: ProseDocument,
  related: Readonly<Record<string, readonly string[]>>,
): Fhir<Composition> {
  const { note } = leaving;
  const surgeon =
    note.team?.items.find((one) => one.role?.value === 'surgeon')?.ref?.value ?? authorSignature(leaving)?.by?.value;
  const author = people.practitioner(surgeon);
  const attesters = (note.signed?.items ?? []).map((signature) => {
    const party = people.practitioner(signature.by?.value);
    return {
      mode: signature.meaning?.value === 'author' ? ('professional' as const) : ('official' as const),
      ...(signature.at ? { time: fhirTime(signature.at.value) } : {}),
      ...(party === undefined ? {} : { party: to(party) }),
    };
  });
  const sections = prose.sections.filter((section) => hasContent(section));
  const withoutSection = Object.entries(related).flatMap(([id, urls]) =>
    sections.some((section) => section.id === id) ? [] : urls,
  );
  return {
    resourceType: 'Composition',
    text: { status: 'generated', div: narrative(headBody(prose)) },
    ...(note.id ? { identifier: { value: note.id.value } } : {}),
    status: statusOf(leaving),
    type: OPERATION_NOTE,
    subject: to(people.patient),
    date: fhirTime(date),
    author: [author === undefined ? { display: 'surgeon not recorded' } : to(author)],
    title: prose.title,
    ...(attesters.length > 0 ? { attester: attesters } : {}),
    section: [
      ...sections.map((section): Fhir<CompositionSection> => ({
        title: section.heading,
        text: { status: 'generated', div: narrative(sectionBody(section)) },
        ...entryOf(related[section.id] ?? []),
      })),
      // Whatever the document holds must be reached from its head, also where no section tells of it.
      ...(withoutSection.length > 0 ? [{ title: 'Coded data', ...entryOf(withoutSection) }] : []),
    ],
  };
}

const entryOf = (urls: readonly string[]): Pick<Fhir<CompositionSection>, 'entry'> =>
  urls.length > 0 ? { entry: urls.map((url) => to(url)) } : {};

function statusOf({ note, amendments }: LeavingOperation): Fhir<Composition>['status'] {
  if (amendments.length > 0) return 'amended';
  return note.status?.value === 'final' ? 'final' : 'preliminary';
}

const narrative = (body: string): string => `<div xmlns="http://www.w3.org/1999/xhtml">${body}</div>`;

function headBody(prose: ProseDocument): string {
  const facts = prose.facts.map(({ label, text }) => `<dt>${plain(label)}</dt><dd>${plain(text)}</dd>`).join('');
  const lines = [...prose.notices, ...prose.signatures, ...prose.cautions]
    .map((line) => `<p>${plain(line)}</p>`)
    .join('');
  return `<dl>${facts}</dl>${lines}`;
}
