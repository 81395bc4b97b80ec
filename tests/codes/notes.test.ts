import { describe, expect, test } from 'vitest';
import { amendment, department, folderOf, operation, tablesOf } from '../export/leaving-notes.ts';

/** A usual case; the lines take the place of the same fields. */
const USUAL: Readonly<Record<string, string>> = {
  procedure: 'phacoemulsification with lens',
  patient: '{ born: 1951 }',
  diagnosis: '{ cataract: [nuclear] }',
  nucleus: '{ technique: divide and conquer }',
  lens: '{ placed: capsular bag }',
  complications: 'none',
};

function note(fields: Readonly<Record<string, string | undefined>> = {}): string {
  const all = Object.entries({ ...USUAL, ...fields }).filter(([, value]) => value !== undefined);
  return operation(all.map(([key, value]) => `${key}: ${value}\n`).join(''));
}

interface Coded {
  readonly codes: readonly string[];
  /** What is not coded, with the reason. */
  readonly without: readonly string[];
  readonly compared: readonly string[];
}

async function coded(
  notes: Readonly<Record<string, string>>,
  set: string,
  ...words: readonly string[]
): Promise<Coded> {
  const { table } = await tablesOf(folderOf({ sideport: department, ...notes }), '--codes', set, ...words);
  return {
    codes: table('codes').map((row) => row['code'] ?? ''),
    without: table('not-coded').map((row) => `${row['what']}: ${row['why']}`),
    compared: table('codes-compared').map((row) => `${row['code']}: ${row['verdict']}`),
  };
}

const one = (fields: Parameters<typeof note>[0], set = 'icd10cm') => coded({ op: note(fields) }, set);

test('the usual case', async () => {
  expect((await one({})).codes).toEqual(['H25.11', '08RJ3JZ']);
  expect((await one({}, 'icd10-opcs4')).codes).toEqual(['H25.1', 'C75.1', 'C71.2', 'Z94.2']);
});

// ICD-10-PCS Official Guidelines, B3.3: a procedure that was discontinued is coded to what was done. The Extraction of a
// lens (08D) and the codes C71 to C74 say that it was taken out.
describe('an operation that was broken off', () => {
  const early = {
    complications: '[{ what: abandoned, when: anaesthesia }]',
    capsulotomy: 'not done',
    nucleus: 'not done',
    cortex: 'not done',
    lens: '{ placed: none }',
  };
  test.each([
    ['before the lens was taken out', early, 'the note says that the lens was not taken out'],
    [
      'and nothing says how far it came',
      { ...early, nucleus: undefined },
      'the operation was abandoned, and the note does not say whether the lens was taken out',
    ],
    [
      'before a lens exchange',
      { ...early, procedure: 'lens exchange', nucleus: undefined },
      'the operation was abandoned',
    ],
  ])('%s', async (_, fields, why) => {
    for (const set of ['icd10cm', 'icd10-opcs4']) {
      const { codes, without } = await one(fields, set);
      expect(codes.filter((code) => /^(?:08|C|Z)/u.test(code))).toEqual([]);
      expect(without.join('\n')).toContain(`the operation as it is named: ${why}`);
    }
  });
  test('after the lens was taken out: the extraction is coded, and no lens', async () => {
    const fields = { complications: '[{ what: abandoned }]', lens: '{ placed: none }' };
    expect((await one(fields)).codes).toEqual(['H25.11', '08DJ3ZZ']);
    expect((await one(fields, 'icd10-opcs4')).codes).toEqual(['H25.1', 'C71.2', 'Z94.2']);
  });
  test('the lens that was meant for it was not implanted', async () => {
    const { codes, without } = await one({ complications: '[{ what: abandoned }]', lens: '{ power: +21.5 D }' });
    expect(codes).toEqual(['H25.11']);
    expect(without.join('\n')).toContain('the note does not say whether a lens was implanted');
  });
});

describe('complications', () => {
  // ICD-10-CM: H59.11- intraoperative, H59.31- postprocedural haemorrhage of eye and adnexa (public code files).
  test.each([
    ['{ what: hyphaema }', 'H59.111'],
    ['{ what: hyphaema, when: closure }', 'H59.111'],
    ['{ what: hyphaema, when: after the operation }', 'H59.311'],
  ])('%s', async (complication, code) => {
    expect((await one({ complications: `[${complication}]` })).codes).toEqual(['H25.11', code, '08RJ3JZ']);
  });
  test('in ICD-10 a haemorrhage after the operation is left to the coder', async () => {
    const { codes, without } = await one(
      { complications: '[{ what: hyphaema, when: after the operation }]' },
      'icd10-opcs4',
    );
    expect(codes).toEqual(['H25.1', 'C75.1', 'C71.2', 'Z94.2']);
    expect(without).toContain(
      'hyphaema (complication): it was found after the operation, and the table has no certain code for that',
    );
  });

  // NCCS ICD-10 2026, DCS.XIX.7: a rupture documented as a complication takes T81.2 with Y60.0.
  const TORN = '{ posterior: torn }';
  const RUPTURE = '[{ what: posterior capsule rupture }]';
  test.each([
    ['documented as a complication', { 'capsule-state': TORN, complications: RUPTURE }, true, ''],
    ['listed alone', { complications: RUPTURE }, true, ''],
    ['no complication', { 'capsule-state': TORN }, false, 'the capsule is recorded as torn, and not as a complication'],
    [
      'beside another complication',
      { 'capsule-state': TORN, complications: '[{ what: vitreous loss }]' },
      false,
      'the capsule is recorded as torn, and not as a complication',
    ],
    [
      'torn before the operation',
      { 'capsule-state': '{ posterior: torn, before: [posterior capsule] }', complications: RUPTURE },
      false,
      'the capsule was torn before the operation',
    ],
    [
      'found after the operation',
      { complications: '[{ what: posterior capsule rupture, when: after the operation }]' },
      false,
      'it was found after the operation',
    ],
  ])('a torn capsule: %s', async (_, fields, isCoded, why) => {
    for (const [set, code] of [
      ['icd10cm', 'H59.211'],
      ['icd10-opcs4', 'T81.2'],
    ] as const) {
      const { codes, without } = await one(fields, set);
      expect(codes.includes(code)).toBe(isCoded);
      expect(codes.includes('Y60.0')).toBe(isCoded && set === 'icd10-opcs4');
      const said = without.filter((line) => line.startsWith('torn posterior capsule'));
      expect(said.map((line) => line.includes(why))).toEqual(isCoded ? [] : [true]);
    }
  });
});

describe('kinds of cataract', () => {
  test.each([
    ['[nuclear, posterior polar]', 'H25.11', ['posterior polar (diagnosis)']],
    ['[nuclear, white]', 'H25.11', ['white (diagnosis)']],
    ['[nuclear, other]', 'H25.11', ['other (diagnosis)']],
    ['[traumatic, nuclear]', 'H26.101', ['nuclear (diagnosis)']],
    ['[traumatic, congenital]', 'H26.101', ['congenital (diagnosis)']],
    ['[white, other]', 'H26.9', ['other (diagnosis)']],
  ])('%s: what has no part in the code is said', async (cataract, code, without) => {
    const found = await one({ diagnosis: `{ cataract: ${cataract} }` });
    expect(found.codes).toEqual([code, '08RJ3JZ']);
    expect(found.without.map((line) => line.split(':')[0])).toEqual(without);
  });

  // ICD-10, H25 is senile cataract and H26.0 infantile, juvenile and presenile cataract (titles from memory).
  test.each([
    [2025, '[nuclear]'],
    [2019, '[nuclear, cortical]'],
  ])('a child born %d has no age-related cataract', async (born, cataract) => {
    const { codes, without } = await one({ patient: `{ born: ${born} }`, diagnosis: `{ cataract: ${cataract} }` });
    expect(codes).toEqual(['08RJ3JZ']);
    expect(without[0]).toContain(`the patient was ${2031 - born} years old`);
  });
  test.each(['[nuclear]', '[nuclear, cortical]'])(
    '%s of a patient of 32 is coded with a word of caution',
    async (cataract) => {
      const folder = folderOf({ op: note({ patient: '{ born: 1999 }', diagnosis: `{ cataract: ${cataract} }` }) });
      const { table } = await tablesOf(folder, '--codes', 'icd10cm');
      expect(table('codes')[0]?.['would_change']).toContain(
        'The patient was 32 years old, and the code says age-related',
      );
    },
  );
  test('a congenital cataract of a child is coded', async () =>
    expect((await one({ patient: '{ born: 2029 }', diagnosis: '{ cataract: [congenital] }' })).codes[0]).toBe('Q12.0'));
});

describe('a note that was amended', () => {
  const change = (field: string, now: string): string =>
    amendment(`changes:\n  - field: ${field}\n    was: not recorded\n    now: ${now}\n    reason: a slip\n`);
  const amended = (text: string) => coded({ op: note(), am: text }, 'icd10cm');

  test('nothing is suggested for an eye that an amendment changes', async () => {
    const { codes, without } = await amended(change('eye', 'left'));
    expect(codes).toEqual([]);
    expect(without).toEqual([
      'the whole operation: an amendment changes the eye: codes have a side, and none is suggested for either',
    ]);
  });
  test('a suggestion that rests on a changed field is withheld', async () => {
    const { codes, without } = await amended(change('diagnosis.cataract[0]', 'cortical'));
    expect(codes).toEqual(['08RJ3JZ']);
    expect(without[0]).toContain('ICD-10-CM H25.11: it would be suggested from diagnosis.cataract[0]');
  });
  test('a field that came by an amendment is named', async () => {
    const { codes, without } = await amended(change('vitrectomy.approach', 'anterior'));
    expect(codes).toEqual(['H25.11', '08RJ3JZ']);
    expect(without[0]).toContain('what an amendment changes: codes depend on it');
  });
  test('an addendum in words is named', async () => {
    const { without } = await amended(amendment('text: the ring was taken out again\n', { kind: 'addendum' }));
    expect(without).toEqual(['an amendment in words: what it says is in no field: read it before coding']);
  });
  test('a change that no code depends on changes nothing', async () => {
    const { codes, without } = await amended(change('lens.serial', '"0040719052"'));
    expect(codes).toEqual(['H25.11', '08RJ3JZ']);
    expect(without).toEqual([]);
  });
});

test("the coder's own codes leave in a table, compared", async () => {
  const codes = '[{ system: ICD-10-PCS, code: 08RK3JZ }, { system: CPT, code: "66984", reason: words beside it }]';
  expect((await one({ codes })).compared).toEqual([
    '08RK3JZ: other side',
    '66984: licensed words',
    '08RJ3JZ: left out',
  ]);
});
