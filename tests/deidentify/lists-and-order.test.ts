import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import * as z from 'zod';
import { emptyFolder, exportedAnyway, SOUND } from '../export/run.ts';

// What a de-identified export must not tell by what it leaves out or by the order in which it comes.
const sound = readFileSync(join(SOUND, 'routine-right.opnote.yaml'), 'utf8');
const key = join(emptyFolder(), 'key');
writeFileSync(key, '0123456789abcdef0123456789abcdef');

const record = z.looseObject({
  id: z.string(),
  patient: z.looseObject({ allergies: z.unknown().optional() }),
  codes: z.array(z.looseObject({ system: z.string().optional(), code: z.string().optional() })).optional(),
});

async function recordsOf(notes: Readonly<Record<string, string>>, ...more: readonly string[]) {
  const folder = join(emptyFolder(), 'notes');
  mkdirSync(folder);
  for (const [name, text] of Object.entries(notes)) writeFileSync(join(folder, `${name}.opnote.yaml`), text);
  const { out, err } = await exportedAnyway(folder, '--as', 'ndjson', '--deidentify', '--key', key, ...more);
  const lines = out.trimEnd().split('\n');
  return {
    records: lines.map((line) => record.parse(z.looseObject({ note: z.unknown() }).parse(JSON.parse(line)).note)),
    out,
    err,
  };
}

const withAllergies = (allergies: string): string => sound.replace(/^( {2}allergies:).*$/mu, `$1 ${allergies}`);

describe('a withheld list', () => {
  test.each([
    ['[penicillin, latex]', undefined],
    ['none', { said: 'none' }],
  ])('allergies: %s', async (written, expected) => {
    const { records } = await recordsOf({ a: withAllergies(written) });
    expect(records[0]?.patient.allergies).toEqual(expected);
  });
  test('is kept where text is', async () => {
    const { records } = await recordsOf({ a: withAllergies('[penicillin]') }, '--keep-text');
    expect(records[0]?.patient.allergies).toEqual(['penicillin']);
  });
});

describe('codes', () => {
  const codes = (entries: string): string => `${sound}codes:\n${entries}`;
  test.each([
    ['local', '  - system: local\n    code: K4711\n', undefined],
    ['of no system', '  - code: K4711\n    reason: x\n', undefined],
    ['ICD-10', '  - system: ICD-10\n    code: H25.1\n', 'H25.1'],
  ])('%s', async (_, entries, expected) => {
    const { records, out, err } = await recordsOf({ a: codes(entries) });
    expect(records[0]?.codes?.[0]?.code).toBe(expected);
    expect(out).not.toContain('K4711');
    if (expected === undefined) expect(err).toContain('codes.code');
  });
  test('nor in what is compared with the suggestions', async () => {
    const { out } = await recordsOf({ a: codes('  - system: local\n    code: K4711\n') }, '--codes', 'icd10cm');
    expect(out).not.toContain('K4711');
  });
});

describe('the order of records', () => {
  const ids = Array.from({ length: 12 }, (_, at) => `OP-2025-${String(at + 1).padStart(4, '0')}`);
  const notes = Object.fromEntries(ids.map((id) => [id, sound.replace(/^id: .*$/mu, `id: ${id}`)]));
  let told: readonly string[];
  beforeAll(async () => {
    told = (await recordsOf(notes)).records.map(({ id }) => id);
  });
  test('is that of the pseudonyms', () => {
    expect(told).toHaveLength(ids.length);
    expect(told).toEqual(told.toSorted());
  });
  test('does not depend on the names of the files', async () => {
    const turned = Object.fromEntries(
      Object.values(notes)
        .toReversed()
        .map((text, at) => [`n${at}`, text]),
    );
    expect((await recordsOf(turned)).records.map(({ id }) => id)).toEqual(told);
  });
  test('is another one than that of the ids', async () => {
    const each = await Promise.all(ids.map(async (id) => (await recordsOf({ a: notes[id] ?? '' })).records[0]?.id));
    expect(new Set(each)).toEqual(new Set(told));
    expect(each).not.toEqual(told);
  });
});
