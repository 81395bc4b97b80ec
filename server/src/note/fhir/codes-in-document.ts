import type { CodeableConcept, Coding } from 'fhir/r4';
import type { Operation } from '@sideport/schemas';
import { sideOfCode } from '@sideport/schemas/codes/sides.ts';
import type { CodeSuggestion, CodeSuggestions } from '../codes/suggestion.ts';
import { noted } from './coding-notes.ts';
import { concept, type Fhir } from './fhir.ts';

/** Addresses of the code systems; a code of another system is named in a note of the procedure. */
const SYSTEMS: Readonly<Record<string, string>> = {
  'ICD-10-CM': 'http://hl7.org/fhir/sid/icd-10-cm',
  'ICD-10-PCS': 'http://www.cms.gov/Medicare/Coding/ICD10',
  'ICD-10': 'http://hl7.org/fhir/sid/icd-10',
  'OPCS-4': 'https://fhir.hl7.org.uk/Id/opcs-4',
  CPT: 'http://www.ama-assn.org/go/cpt',
};
const DIAGNOSIS_SYSTEMS = new Set(['ICD-10-CM', 'ICD-10']);

type Role = 'procedure' | 'site' | 'reason' | 'complication' | 'nowhere';

/** A code on its way into a document. */
interface Placed {
  readonly role: Role;
  readonly system: string;
  readonly code: string;
  readonly coding: Fhir<Coding>;
  readonly title: string;
  /** The suggestion behind it: a code of the coder's own has one where it is the same. */
  readonly suggestion: CodeSuggestion | undefined;
}

export interface CodesInDocument {
  /** What the operation as a whole is: one code of each system. */
  readonly main: readonly Fhir<Coding>[];
  /** Procedures beside it, each a concept of its own. */
  readonly further: readonly Fhir<CodeableConcept>[];
  readonly sites: readonly Fhir<CodeableConcept>[];
  readonly reasons: readonly Fhir<CodeableConcept>[];
  readonly complications: readonly Fhir<CodeableConcept>[];
  /** Where suggestions come from, what has no code, and what became of the coder's own. */
  readonly notes: readonly string[];
}

/**
 * Puts every code where FHIR has a place for what it means: codings of one concept mean the same. Where the coder chose
 * codes of a system, those stand, and the suggestions of that system stay in the notes.
 */
export function codesInDocument(note: Operation, codes: CodeSuggestions | undefined): CodesInDocument {
  const placed = placedCodes(note, codes?.suggestions ?? []);
  const of = (role: Role): readonly Placed[] => placed.filter((one) => one.role === role);
  const main = firstOfEach(of('procedure'));
  const further = of('procedure').filter((one) => !main.includes(one));
  return {
    main: main.map(({ coding }) => coding),
    further: apart(further),
    sites: of('site').map(({ coding }) => concept('side of the operation', [coding])),
    reasons: reasons(note, of('reason')),
    complications: complications(note, of('complication')),
    notes: noted(note, codes, of('nowhere')),
  };
}

function placedCodes(note: Operation, suggestions: readonly CodeSuggestion[]): readonly Placed[] {
  const own = (note.codes?.items ?? []).flatMap(({ system, code }): Placed[] => {
    if (!system || !code) return [];
    const same = suggestions.find((one) => one.system === system.value && plain(one.code) === plain(code.value));
    const title = same?.title ?? `${system.value} ${code.value}, chosen by the coder`;
    return [placed(system.value, code.value, title, same, true, note)];
  });
  const chosen = new Set(own.map(({ system }) => system));
  const others = suggestions
    // A code of the user's own map goes with the suggestion that it was made from.
    .filter(({ system, mappedFrom }) => !chosen.has(system) && !(mappedFrom && chosen.has(mappedFrom.system)))
    .map((one) => placed(one.system, one.code, one.title, one, false, note));
  return [...own, ...others];
}

const plain = (code: string): string => code.replace('.', '').toUpperCase();

function placed(
  system: string,
  code: string,
  title: string,
  suggestion: CodeSuggestion | undefined,
  userSelected: boolean,
  note: Operation,
): Placed {
  const url = SYSTEMS[system];
  const side = sideOfCode(system, code);
  const role = url === undefined ? 'nowhere' : roleOf(system, code, suggestion?.key);
  const display = suggestion === undefined || title === '' ? {} : { display: title };
  return {
    // A site of the other eye beside the site of this one would say two things.
    role: role === 'site' && side !== note.eye?.value ? 'nowhere' : role,
    system,
    code,
    coding: { ...(url === undefined ? {} : { system: url }), code, ...display, userSelected },
    title,
    suggestion,
  };
}

/** What a code is for: by the rule that suggested it, or else by the chapter of its system. */
function roleOf(system: string, code: string, key: string | undefined): Role {
  if (key !== undefined) {
    if (key === 'site') return 'site';
    if (/^(?:complication|cause)\./u.test(key)) return 'complication';
    return /^cataract\.|^aphakia$/u.test(key) ? 'reason' : 'procedure';
  }
  if (DIAGNOSIS_SYSTEMS.has(system)) return /^(?:T8[0-8]|Y|H59)/iu.test(code) ? 'complication' : 'reason';
  // Z is the chapter of sites, Y that of methods: neither is a procedure.
  if (system === 'OPCS-4' && /^[YZ]/iu.test(code)) return /^Z/iu.test(code) ? 'site' : 'nowhere';
  return 'procedure';
}

/** The first code of each system: in its own sequence, but what is known to be the lens before what stands beside it. */
function firstOfEach(all: readonly Placed[]): readonly Placed[] {
  const systems = [...new Set(all.map(({ system }) => system))];
  return systems.flatMap((system) => {
    const ofSystem = all.filter((one) => one.system === system);
    return ofSystem.find(({ suggestion }) => suggestion?.key.startsWith('lens.')) ?? ofSystem[0] ?? [];
  });
}

/** Each in a concept of its own; a code of the user's own map stands with the one that it was made from. */
function apart(all: readonly Placed[]): readonly Fhir<CodeableConcept>[] {
  const roots = all.filter(({ suggestion }) => suggestion?.mappedFrom === undefined);
  const alone = all.filter((one) => !roots.includes(one) && !roots.some((root) => isMappedFrom(one, root)));
  return [...roots, ...alone].map((root) =>
    concept(root.title === '' ? `${root.system} ${root.code}` : root.title, [
      root.coding,
      ...all.filter((one) => isMappedFrom(one, root)).map(({ coding }) => coding),
    ]),
  );
}

function isMappedFrom({ suggestion }: Placed, root: Placed): boolean {
  const from = suggestion?.mappedFrom;
  return from !== undefined && from.system === root.system && from.code === root.code;
}

/** The cataract in words with its code; what else the coder chose stands apart. */
function reasons(note: Operation, all: readonly Placed[]): readonly Fhir<CodeableConcept>[] {
  const kinds = note.diagnosis?.cataract?.items.map((kind) => kind.value) ?? [];
  const ofCataract = all.filter(({ suggestion }) => suggestion !== undefined);
  const others = apart(all.filter((one) => !ofCataract.includes(one)));
  if (kinds.length === 0) return [...apart(ofCataract), ...others];
  return [
    concept(
      `cataract: ${kinds.join(', ')}`,
      ofCataract.map(({ coding }) => coding),
    ),
    ...others,
  ];
}

/** The complications in words, each with its code; an external cause is none, and has a concept of its own. */
function complications(note: Operation, all: readonly Placed[]): readonly Fhir<CodeableConcept>[] {
  const items = note.complications?.items ?? [];
  const left = new Set(all);
  const told = items.flatMap(({ what }, at) => {
    if (!what) return [];
    const field = `complications[${at}].what`;
    const its = [...left].filter(
      ({ suggestion }) =>
        suggestion?.key.startsWith('complication.') && suggestion.because.some((one) => one.field === field),
    );
    for (const one of its) left.delete(one);
    return [
      concept(
        what.value,
        its.map(({ coding }) => coding),
      ),
    ];
  });
  return [...told, ...apart([...left])];
}
