import type { CodeSetName } from '@sideport/schemas/codes/table.ts';
import type { CodingFacts, Fact } from './facts.ts';
import { notCoded, type CodingRule, type Draft, type Drafts, type NotCoded } from './suggestion.ts';

const RUPTURE_UK: CodingRule = {
  says: 'A rupture of the posterior capsule documented as a complication takes T81.2 followed by Y60.0.',
  source: 'National Clinical Coding Standards ICD-10 2026, version 12.0, DCS.XIX.7 and DCS.XX.8',
  status: 'second-hand',
};
const HAEMORRHAGE_UK: CodingRule = {
  says: 'A haemorrhage that complicates an operation is coded beside the diagnosis when the surgeon documents it as one.',
  source: 'ICD-10 tabular list, T81.0',
  status: 'from memory',
};
const INTRAOPERATIVE: CodingRule = {
  says: 'A complication during the operation is coded beside the diagnosis when the surgeon documents it as one.',
  source: 'ICD-10-CM tabular list, H59',
  status: 'from memory',
};
const POSTPROCEDURAL: CodingRule = {
  says: 'What complicates the time after an operation has codes of its own, beside those of the operation itself.',
  source: 'ICD-10-CM tabular list, H59.3',
  status: 'from memory',
};

const NO_CERTAIN_CODE = 'the table has no certain code for it; choose one from the full classification';
const AFTERWARDS = 'it was found after the operation, and the table has no certain code for that';

const TEAR = {
  'not documented':
    'the capsule is recorded as torn, and not as a complication: only a tear that the surgeon documents as one is coded',
  'before the operation': 'the capsule was torn before the operation: the tear is no complication of it',
  'after the operation': AFTERWARDS,
} as const;

/** Complications in the order in which they are recorded, the torn capsule before them. */
export function complicationDrafts(facts: CodingFacts, set: CodeSetName): Drafts {
  const { posteriorCapsuleTorn: torn, otherTear } = facts;
  const drafts: Draft[] = torn ? [...tearDrafts(torn, set)] : [];
  const without: NotCoded[] = otherTear ? [notCoded('torn posterior capsule', TEAR[otherTear.value], [otherTear])] : [];
  for (const later of [false, true]) {
    for (const complication of later ? facts.laterComplications : facts.complications) {
      const draft = draftOf(complication, later, set);
      if (draft) drafts.push(draft);
      else
        without.push(
          notCoded(`${complication.value} (complication)`, later ? AFTERWARDS : NO_CERTAIN_CODE, [complication]),
        );
    }
  }
  return { drafts, notCoded: without };
}

function tearDrafts(torn: Fact<true>, set: CodeSetName): readonly Draft[] {
  const uk = set === 'icd10-opcs4';
  const shared = {
    facts: [torn],
    rule: uk ? RUPTURE_UK : INTRAOPERATIVE,
    wouldChange: 'a capsule opened on purpose, or a tear that the surgeon does not document as a complication',
  };
  const rupture = { key: 'complication.capsule-rupture', ...shared };
  return uk ? [rupture, { key: 'cause.surgical-operation', ...shared }] : [rupture];
}

function draftOf(complication: Fact<string>, later: boolean, set: CodeSetName): Draft | undefined {
  const found = CODED[complication.value]?.[set]?.[later ? 'later' : 'during'];
  return (
    found && {
      ...found,
      facts: [complication],
      wouldChange: later
        ? 'the complication found during the operation, or not documented as one'
        : 'the complication found after the operation, or not documented as one',
    }
  );
}

/** The entries of complications that these rules ask a table for. */
export function complicationKeys(set: CodeSetName): readonly string[] {
  const coded = Object.values(CODED).flatMap((sets) => Object.values(sets[set] ?? {}));
  const cause = set === 'icd10-opcs4' ? ['cause.surgical-operation'] : [];
  return ['complication.capsule-rupture', ...cause, ...coded.map(({ key }) => key)];
}

type Coded = Partial<Record<'during' | 'later', Pick<Draft, 'key' | 'rule'>>>;

const HAEMORRHAGE: Readonly<Record<CodeSetName, Coded>> = {
  icd10cm: {
    during: { key: 'complication.haemorrhage', rule: INTRAOPERATIVE },
    later: { key: 'complication.haemorrhage-after', rule: POSTPROCEDURAL },
  },
  'icd10-opcs4': { during: { key: 'complication.haemorrhage', rule: HAEMORRHAGE_UK } },
};
// The code is of fragments that are in the eye after the operation, whenever they were seen.
const FRAGMENT: Partial<Readonly<Record<CodeSetName, Coded>>> = {
  icd10cm: {
    during: { key: 'complication.fragment', rule: POSTPROCEDURAL },
    later: { key: 'complication.fragment', rule: POSTPROCEDURAL },
  },
};
const CODED: Readonly<Record<string, Partial<Readonly<Record<CodeSetName, Coded>>>>> = {
  'suprachoroidal haemorrhage': HAEMORRHAGE,
  hyphaema: HAEMORRHAGE,
  'lens fragment into vitreous': FRAGMENT,
  'retained fragment': FRAGMENT,
};
