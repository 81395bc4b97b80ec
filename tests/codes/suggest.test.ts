import { codeTable } from '@sideport/schemas/codes/table-schema.ts';
import { codeSets, needingConfirmation, withReplacements } from '@sideport/schemas/codes/table.ts';
import { describe, expect, test } from 'vitest';
import { keysOf, suggestCodes } from '../../server/src/note/codes/suggest.ts';
import { implanted, none, phacoemulsification, scenarios } from './scenarios.ts';

const eye = <S extends 'right' | 'left'>(side: S) => ({ eye: { value: side, from: ['eye'] } });

describe.each(scenarios)('$name ($rule)', ({ facts, ...expected }) => {
  test.each(['right', 'left'] as const)('%s eye', (side) => {
    for (const set of ['icd10cm', 'icd10-opcs4'] as const) {
      const { suggestions } = suggestCodes({ ...facts, ...eye(side) }, set);
      expect(suggestions.map((suggestion) => suggestion.code)).toEqual(expected[side][set]);
      for (const suggestion of suggestions) {
        expect(suggestion.because.length).toBeGreaterThan(0);
        expect(suggestion.rule.source).not.toBe('');
        expect(suggestion.wouldChange).not.toBe('');
      }
    }
  });
});

const usual = {
  ...none,
  ...eye('right'),
  cataract: [{ value: 'nuclear', from: ['diagnosis.cataract'] }],
  extraction: phacoemulsification,
  lensImplanted: implanted,
};

test('a suggestion can be read aloud', () => {
  expect(suggestCodes(usual, 'icd10cm').suggestions[1]).toEqual({
    system: 'ICD-10-PCS',
    edition: 'yearly edition of October; compare with the edition in force on the day of the operation',
    code: '08RJ3JZ',
    title: 'Replacement of lens with synthetic substitute, percutaneous approach',
    status: 'seen',
    codeSource: 'public table of the edition of 2023; the left by the letter of the body part',
    kind: 'procedure',
    key: 'lens.replacement',
    order: 1,
    because: [
      { field: 'lens.placed', value: 'true' },
      { field: 'procedure', value: 'phacoemulsification' },
    ],
    rule: {
      says: 'Putting in a lens takes in the removal of the natural lens: the Replacement alone is coded.',
      source: 'ICD-10-PCS, root operation Replacement; public table of the edition of 2023',
      status: 'seen',
    },
    wouldChange: 'no lens implanted: then the Extraction is coded',
  });
});

test('without the eye nothing is suggested', () => {
  const { eye: _, ...withoutEye } = usual;
  expect(suggestCodes(withoutEye, 'icd10cm')).toMatchObject({
    suggestions: [],
    notCoded: [{ why: 'the note does not say which eye was operated' }],
  });
});

test('what has no certain code is said, not guessed', () => {
  const facts = {
    ...usual,
    cataract: [{ value: 'posterior polar', from: ['diagnosis.cataract'] }],
    complications: [{ value: 'iris prolapse', from: ['complications[0].what'] }],
    expansionRing: { value: true as const, from: ['pupil-aid'] },
  };
  expect(suggestCodes(facts, 'icd10cm').notCoded.map(({ what, why }) => `${what}: ${why}`)).toEqual([
    'posterior polar (diagnosis): a polar cataract may be congenital or acquired, and the note does not say which',
    'iris prolapse (complication): the table has no certain code for it; choose one from the full classification',
    'pupil expansion ring: no code of its own was found in ICD-10-PCS; it is part of the operation (from memory)',
  ]);
  const { lensImplanted: _, ...unsaid } = usual;
  expect(suggestCodes(unsaid, 'icd10cm').notCoded.map(({ why }) => why)).toEqual([
    'the note does not say whether a lens was implanted, and the code depends on it',
  ]);
});

test('a lens fixed to the sclera takes the code of sutures only when it was sutured', () => {
  const fixed = (value: 'sutured' | 'sutures not stated') =>
    suggestCodes({ ...usual, scleralFixation: { value, from: ['lens.placed'] } }, 'icd10-opcs4');
  const open = fixed('sutures not stated');
  expect(open.suggestions.map(({ code }) => code)).toEqual(['H25.1', 'C71.2', 'Z94.2']);
  expect(open.suggestions.find(({ code }) => code === 'C71.2')?.rule.says).toContain(
    'insertion of the lens stands first',
  );
  expect(open.notCoded[0]).toEqual({
    what: 'insertion of a lens fixed to the sclera',
    why: 'the code depends on sutures, and the note does not say whether the lens was sutured. Sutured: C75.4 (from memory); it is suggested once the lens is placed as “sutured to the sclera”. Not sutured, as with flanged haptics: confirm a code locally',
    fields: ['lens.placed'],
  });
  const sutured = fixed('sutured');
  expect(sutured.suggestions.map(({ code }) => code)).toEqual(['H25.1', 'C75.4', 'C71.2', 'Z94.2']);
  expect(sutured.notCoded.map(({ what }) => what)).toEqual(['type of lens']);
});

const chosen = (system: string, code: string, hasWords = false) => [
  { value: { system, code, hasWords }, from: ['codes[0]'] },
];

describe("the coder's own codes", () => {
  test.each([
    ['ICD-10-PCS', '08RJ3JZ', 'same', '08RJ3JZ is also suggested.'],
    ['ICD-10-CM', 'H2511', 'same', 'H2511 is also suggested.'],
    [
      'ICD-10-PCS',
      '08RK3JZ',
      'other side',
      '08RK3JZ is a code of the left eye, and the note says right (eye). For the right eye it would be 08RJ3JZ.',
    ],
    [
      'ICD-10-CM',
      'H26.8',
      'not suggested',
      "H26.8 is the coder's own choice; nothing in the note led to it here. It stands.",
    ],
    // ICD-10-CM Official Guidelines, I.B.13: a cataract of both eyes has the bilateral code at the operation on the
    // first eye, and the code of one eye at the second.
    [
      'ICD-10-CM',
      'H25.13',
      'both sides',
      'H25.13 is a code of both eyes, and the note says right (eye). It stands for a diagnosis at the operation on the first eye while the other still has it, and not at the second (ICD-10-CM Official Guidelines, I.B.13).',
    ],
    // LOINC panel 62679-6: 66067-0 is the axial length of the left eye.
    [
      'LOINC',
      '66067-0',
      'other side',
      '66067-0 is a code of the left eye, and the note says right (eye). For the right eye it would be 64742-0.',
    ],
  ])('%s %s', (system, code, verdict, message) => {
    const { compared } = suggestCodes({ ...usual, chosen: chosen(system, code) }, 'icd10cm');
    expect(compared[0]).toEqual({ system, code, verdict, message });
  });
  test('a code of both eyes has no place at the second', () => {
    const second = { value: 'second' as const, from: ['which-eye'] };
    const facts = { ...usual, whichEye: second, chosen: chosen('ICD-10-CM', 'H2513') };
    expect(suggestCodes(facts, 'icd10cm').compared[0]).toMatchObject({
      verdict: 'both sides',
      message: expect.stringContaining('Each operation has the code of its own eye.') as string,
    });
  });
  // OPCS-4.11, quoted second-hand in public coding guides: Z94.1 is bilateral, Z94.2 right, Z94.3 left.
  test('Z94.1 is named as a code of both eyes', () => {
    const { compared } = suggestCodes({ ...usual, chosen: chosen('OPCS-4', 'Z94.1') }, 'icd10-opcs4');
    expect(compared[0]).toMatchObject({ verdict: 'both sides' });
  });
  test.each([
    ['CPT', '66984', true, ['licensed words']],
    ['CPT', '66984', false, []],
    ['local', '66984', true, []],
    ['LOINC', '64742-0', false, []],
  ])('%s %s with words: %s', (system, code, hasWords, verdicts) => {
    const { compared } = suggestCodes({ ...usual, chosen: chosen(system, code, hasWords) }, 'icd10cm');
    expect(compared.map(({ verdict }) => verdict)).toEqual(verdicts);
  });
  test('a suggestion the coder left out is named', () => {
    const { compared } = suggestCodes({ ...usual, chosen: chosen('OPCS-4', 'C71.2') }, 'icd10-opcs4');
    expect(compared.map(({ verdict, message }) => `${verdict}: ${message}`)).toEqual([
      'same: C71.2 is also suggested.',
      "left out: C75.1 (Insertion of prosthetic replacement for lens NEC) is suggested from lens.placed, and the note's own codes do not have it.",
      "left out: Z94.2 (Side of operation) is suggested from eye, and the note's own codes do not have it.",
    ]);
  });
});

test('one code that two complications lead to names both', () => {
  const facts = {
    ...usual,
    complications: [
      { value: 'lens fragment into vitreous', from: ['complications[0].what'] },
      { value: 'retained fragment', from: ['complications[1].what'] },
    ],
  };
  const fragment = suggestCodes(facts, 'icd10cm').suggestions.filter(({ code }) => code === 'H59.021');
  expect(fragment.map(({ because }) => because.map(({ field }) => field))).toEqual([
    ['complications[0].what', 'complications[1].what'],
  ]);
});

describe('the tables', () => {
  test.each(['icd10cm', 'icd10-opcs4'] as const)('%s: every entry is one that a rule asks for', (set) => {
    const asked = keysOf(set);
    for (const role of ['diagnoses', 'procedures'] as const) {
      expect(codeSets[set][role].codes.map(({ key }) => key).filter((key) => !asked[role].includes(key))).toEqual([]);
    }
  });
  test.each(['icd10cm', 'icd10-opcs4'] as const)('%s: the rules ask for nothing but these keys', (set) => {
    const asked = keysOf(set);
    for (const { facts } of scenarios) {
      const { suggestions } = suggestCodes({ ...facts, ...eye('right') }, set);
      for (const { kind, key } of suggestions) {
        expect(asked[kind === 'diagnosis' ? 'diagnoses' : 'procedures']).toContain(key);
      }
    }
  });

  const tables = Object.values(codeSets).flatMap((set) => [set.diagnoses, set.procedures]);
  test.each(tables)('$system keeps to the schema of code tables', (table) => {
    expect(codeTable.parse(table)).toEqual(table);
  });
  test.each(tables)('$system: right and left differ by one character or not at all', (table) => {
    for (const { right, left } of table.codes) {
      const differing = Array.from(right).filter((character, at) => character !== left.charAt(at));
      expect(right).toHaveLength(left.length);
      expect(differing.length).toBeLessThanOrEqual(1);
    }
  });
  // ICD-10-PCS body part characters: lens J right, K left; vitreous 4, 5; iris C, D (public table 08Q of 2025).
  test('the letter of the body part follows the side', () => {
    const pairs = codeSets.icd10cm.procedures.codes.map(({ right, left }) => right.charAt(3) + left.charAt(3));
    expect(new Set(pairs)).toEqual(new Set(['JK', '45', 'CD']));
  });
  // ICD-10-CM puts 1 for right and 2 for left in its last place wherever it has sides (official guidelines, from memory).
  test('sided diagnoses end in 1 for right and 2 for left', () => {
    for (const { right, left } of codeSets.icd10cm.diagnoses.codes.filter((entry) => entry.right !== entry.left)) {
      expect(right.slice(-1) + left.slice(-1)).toBe('12');
    }
  });
  test('keys stand once, and a seen code names where', () => {
    for (const table of tables) {
      expect(new Set(table.codes.map((entry) => entry.key)).size).toBe(table.codes.length);
      for (const entry of table.codes) expect(entry.source !== undefined || entry.status === 'from memory').toBe(true);
    }
  });
  test('codes from memory are named for confirmation', () => {
    expect(needingConfirmation(codeSets['icd10-opcs4'].procedures).map((entry) => entry.right)).toEqual([
      'C75.4',
      'C71.9',
      'C72.9',
      'C75.3',
      'C75.2',
    ]);
  });
  test('a department replaces a code by its key', () => {
    const { diagnoses, procedures } = codeSets['icd10-opcs4'];
    const own = codeTable.parse({
      system: 'OPCS-4',
      edition: 'OPCS-4.12',
      terms: '',
      codes: [
        { key: 'lens.extracapsular', right: 'C71.8', left: 'C71.8', title: 'Own title', status: 'confirmed locally' },
      ],
    });
    const facts = { ...usual, extraction: { value: 'extracapsular' as const, from: ['procedure'] } };
    const { suggestions } = suggestCodes(facts, 'icd10-opcs4', {
      diagnoses,
      procedures: withReplacements(procedures, own),
    });
    expect(suggestions.find((suggestion) => suggestion.code === 'C71.8')).toMatchObject({
      status: 'confirmed locally',
      edition: 'OPCS-4.12',
    });
  });
});
