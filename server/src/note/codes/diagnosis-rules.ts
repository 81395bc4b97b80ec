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
const RUPTURE_UK: CodingRule = {
  says: 'A rupture of the posterior capsule documented as a complication takes T81.2 followed by Y60.0.',
  source: 'National Clinical Coding Standards ICD-10 2026, version 12.0, DCS.XIX.7 and DCS.XX.8',
  status: 'second-hand',
};
const INTRAOPERATIVE: CodingRule = {
  says: 'A complication during the operation is coded beside the diagnosis when the surgeon documents it as one.',
  source: 'ICD-10-CM tabular list, H59',
  status: 'from memory',
};

/** Diagnoses: the cataract first, then complications in the order in which they are recorded. */
export function diagnosisDrafts(facts: CodingFacts, set: 'icd10cm' | 'icd10-opcs4'): Drafts {
  const cataract = cataractDraft(facts.cataract);
  const complications = complicationDrafts(facts, set);
  return {
    drafts: [...cataract.drafts, ...complications.drafts],
    notCoded: [...cataract.notCoded, ...complications.notCoded],
  };
}

function cataractDraft(kinds: readonly Fact<string>[]): Drafts {
  if (kinds.length === 0) {
    return { drafts: [], notCoded: [notCoded('cataract', 'the note does not say which kind of cataract it was', [])] };
  }
  const cause = kinds.find((kind) => CAUSES[kind.value] !== undefined);
  if (cause) {
    const key = CAUSES[cause.value] ?? '';
    return only({
      key,
      facts: [cause],
      rule: CAUSE,
      wouldChange: 'another cause, or none, among the kinds of cataract',
    });
  }
  const elsewhere = kinds.find((kind) => kind.value === CAUSE_ELSEWHERE);
  if (elsewhere) {
    const why = 'the disease behind it decides the code, and the table has no certain one';
    return { drafts: [], notCoded: [notCoded(`${elsewhere.value} (diagnosis)`, why, [elsewhere])] };
  }
  const forms = kinds.filter((kind) => FORMS[kind.value] !== undefined);
  const keys = [...new Set(forms.map((kind) => FORMS[kind.value] ?? ''))];
  const [first] = keys;
  if (first !== undefined) {
    const single = keys.length === 1;
    return only({
      key: single ? first : 'cataract.combined',
      facts: forms,
      rule: single ? SUBTYPE : COMBINED,
      wouldChange: single
        ? 'a further form of cataract, a documented cause (injury, steroid, congenital), or a young patient: the code says age-related'
        : 'a single form of cataract, or a documented cause',
    });
  }
  const white = kinds.filter((kind) => kind.value === 'white');
  if (white.length > 0) {
    return only({
      key: 'cataract.unspecified',
      facts: white,
      rule: SUBTYPE,
      wouldChange: 'a documented form (nuclear, cortical, posterior subcapsular) or cause',
    });
  }
  return {
    drafts: [],
    notCoded: kinds.map((kind) => notCoded(`${kind.value} (diagnosis)`, whyNoDiagnosis(kind.value), [kind])),
  };
}

const only = (draft: Draft): Drafts => ({ drafts: [draft], notCoded: [] });

function whyNoDiagnosis(kind: string): string {
  if (kind.endsWith('polar')) return 'a polar cataract may be congenital or acquired, and the note does not say which';
  if (kind === 'pseudophakia') return 'the fault of the lens in the eye decides the code, and no field records it';
  return 'the table has no certain code for it; choose one from the full classification';
}

function complicationDrafts(facts: CodingFacts, set: 'icd10cm' | 'icd10-opcs4'): Drafts {
  const drafts: Draft[] = [];
  const without: NotCoded[] = [];
  const uk = set === 'icd10-opcs4';
  const torn = facts.posteriorCapsuleTorn;
  if (torn) {
    const rule = uk ? RUPTURE_UK : INTRAOPERATIVE;
    const wouldChange = 'a capsule opened on purpose, or a tear that the surgeon does not document as a complication';
    drafts.push({ key: 'complication.capsule-rupture', facts: [torn], rule, wouldChange });
    if (uk) drafts.push({ key: 'cause.surgical-operation', facts: [torn], rule, wouldChange });
  }
  for (const complication of facts.complications) {
    const key = complicationKey(complication.value, uk);
    if (key) {
      drafts.push({
        key,
        facts: [complication],
        rule: INTRAOPERATIVE,
        wouldChange: 'the complication not being documented as one',
      });
    } else {
      without.push(
        notCoded(
          `${complication.value} (complication)`,
          'the table has no certain code for it; choose one from the full classification',
          [complication],
        ),
      );
    }
  }
  return { drafts, notCoded: without };
}

function complicationKey(complication: string, uk: boolean): string | undefined {
  if (complication === 'suprachoroidal haemorrhage' || complication === 'hyphaema') return 'complication.haemorrhage';
  if (uk) return undefined;
  return complication === 'lens fragment into vitreous' || complication === 'retained fragment'
    ? 'complication.fragment'
    : undefined;
}
