import type { CodeSetName } from '@sideport/schemas/codes/table.ts';
import { complicationDrafts, complicationKeys } from './complication-rules.ts';
import type { CodingFacts, Fact } from './facts.ts';
import { notCoded, type CodingRule, type Draft, type Drafts, type NotCoded } from './suggestion.ts';

/** The kinds of cataract that are a form of the lens itself, by the key of their code. */
const FORMS: Readonly<Record<string, string>> = {
  nuclear: 'cataract.nuclear',
  brunescent: 'cataract.nuclear',
  cortical: 'cataract.cortical',
  'posterior subcapsular': 'cataract.posterior-subcapsular',
  hypermature: 'cataract.hypermature',
};

/** Causes come before forms: a cataract with a stated cause is not age-related. */
const CAUSES: Readonly<Record<string, string>> = {
  congenital: 'cataract.congenital',
  traumatic: 'cataract.traumatic',
  'steroid-induced': 'cataract.drug-induced',
  aphakia: 'aphakia',
};

/** A cause, too, but one whose code names the disease behind it. */
const CAUSE_ELSEWHERE = 'complicated';

const SUBTYPE: CodingRule = {
  says: 'The subtype is coded only when it is documented; a mature or white cataract without one is unspecified.',
  source: 'National Clinical Coding Standards ICD-10 2026, version 12.0, DCS.VII.1',
  status: 'second-hand',
};
const COMBINED: CodingRule = {
  says: 'Several documented forms of age-related cataract are coded together as combined forms.',
  source: 'ICD-10 tabular list, H25.8',
  status: 'from memory',
};
const CAUSE: CodingRule = {
  says: 'A cataract with a documented cause is coded by the cause, not as age-related.',
  source: 'ICD-10 tabular list, H25 and H26',
  status: 'from memory',
};
/** Under this age no cataract is age-related. ICD-10 has H26.0 for cataract of childhood (title from memory). */
const ADULT = 18;
/** Under this age the wording of the code is worth a second look; common practice, no source. */
const SENIOR = 60;

/** The entries that these rules ask a table for. */
export function diagnosisKeys(set: CodeSetName): readonly string[] {
  const cataract = [...Object.values(FORMS), ...Object.values(CAUSES), 'cataract.combined', 'cataract.unspecified'];
  return [...new Set([...cataract, ...complicationKeys(set)])];
}

/** Diagnoses: the cataract first, then complications in the order in which they are recorded. */
export function diagnosisDrafts(facts: CodingFacts, set: CodeSetName): Drafts {
  const cataract = cataractDraft(facts, set);
  const complications = complicationDrafts(facts, set);
  return {
    drafts: [...cataract.drafts, ...complications.drafts],
    notCoded: [...cataract.notCoded, ...complications.notCoded],
  };
}

function cataractDraft({ cataract: kinds, ageYears, whichEye }: CodingFacts, set: CodeSetName): Drafts {
  if (kinds.length === 0) {
    return { drafts: [], notCoded: [notCoded('cataract', 'the note does not say which kind of cataract it was', [])] };
  }
  const cause = kinds.find((kind) => CAUSES[kind.value] !== undefined);
  if (cause) {
    const draft = {
      key: CAUSES[cause.value] ?? '',
      facts: [cause],
      rule: CAUSE,
      wouldChange: 'another cause, or none, among the kinds of cataract',
    };
    return oneOf(
      draft,
      kinds,
      () => `the eye is coded as ${cause.value}; whether this is coded beside it is for a coder`,
    );
  }
  if (kinds.some((kind) => kind.value === CAUSE_ELSEWHERE)) {
    const why = 'the disease behind the cataract decides the code, and the table has no certain one';
    return { drafts: [], notCoded: without(kinds, () => why) };
  }
  const forms = kinds.filter((kind) => FORMS[kind.value] !== undefined);
  if (forms.length > 0) {
    if (ageYears !== undefined && ageYears < ADULT) {
      const why = `the patient was ${ageYears} years old, and the codes of this form say age-related; a cataract of childhood is classified elsewhere (H26.0, from memory)`;
      return { drafts: [], notCoded: without(kinds, () => why) };
    }
    const first = set === 'icd10cm' && whichEye?.value !== 'second';
    return oneOf(formDraft(forms, ageYears, first), kinds, (kind) =>
      kind === 'white' ? 'a form is documented, and the code of the form stands for it' : whyNoDiagnosis(kind),
    );
  }
  const white = kinds.filter((kind) => kind.value === 'white');
  if (white.length > 0) {
    const draft = {
      key: 'cataract.unspecified',
      facts: white,
      rule: SUBTYPE,
      wouldChange: 'a documented form (nuclear, cortical, posterior subcapsular) or cause',
    };
    return oneOf(draft, kinds, whyNoDiagnosis);
  }
  return { drafts: [], notCoded: without(kinds, whyNoDiagnosis) };
}

/** One code for the lens, and a word on every kind of cataract that had no part in it. */
function oneOf(draft: Draft, kinds: readonly Fact<string>[], whyNot: (kind: string) => string): Drafts {
  return {
    drafts: [draft],
    notCoded: without(
      kinds.filter((kind) => !draft.facts.includes(kind)),
      whyNot,
    ),
  };
}

const without = (kinds: readonly Fact<string>[], why: (kind: string) => string): readonly NotCoded[] =>
  kinds.map((kind) => notCoded(`${kind.value} (diagnosis)`, why(kind.value), [kind]));

// Source: ICD-10-CM Official Guidelines for Coding and Reporting, I.B.13 (seen second-hand, on a page of CMS).
const BOTH_EYES =
  'A cataract of both eyes takes the bilateral code at the operation on the first eye (ICD-10-CM guidelines, I.B.13)';

function formDraft(forms: readonly Fact<string>[], ageYears: number | undefined, mayBeBoth: boolean): Draft {
  const keys = [...new Set(forms.map((kind) => FORMS[kind.value] ?? ''))];
  const single = keys.length === 1;
  const age =
    ageYears !== undefined && ageYears < SENIOR
      ? `The patient was ${ageYears} years old, and the code says age-related: a cataract documented as juvenile or presenile is classified elsewhere (H26.0, from memory)`
      : 'The code says age-related: a young patient has another';
  const other = single
    ? 'a further form of cataract, or a documented cause (injury, steroid, congenital)'
    : 'a single form of cataract, or a documented cause';
  return {
    key: single ? (keys[0] ?? '') : 'cataract.combined',
    facts: forms,
    rule: single ? SUBTYPE : COMBINED,
    wouldChange: [other, age, ...(mayBeBoth ? [BOTH_EYES] : [])].join('. '),
  };
}

function whyNoDiagnosis(kind: string): string {
  if (kind.endsWith('polar')) return 'a polar cataract may be congenital or acquired, and the note does not say which';
  if (kind === 'pseudophakia') return 'the fault of the lens in the eye decides the code, and no field records it';
  return 'the table has no certain code for it; choose one from the full classification';
}
