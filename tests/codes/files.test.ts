import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { emptyFolder, run, SOUND } from '../export/run.ts';

const NOTE = join(SOUND, 'routine-right.opnote.yaml');

async function withFile(option: '--code-table' | '--code-map', text: string) {
  const file = join(emptyFolder(), option === '--code-map' ? 'own-map.csv' : 'own-table.json');
  writeFileSync(file, text);
  return { file, ...(await run('export', NOTE, '--codes', 'icd10cm', option, file)) };
}

const table = (key: string, codes: object = {}): string =>
  JSON.stringify({
    system: 'ICD-10-CM',
    edition: 'our edition',
    terms: '',
    codes: [{ key, right: 'X01.1', left: 'X01.2', title: 'Own title', status: 'confirmed locally', ...codes }],
  });

describe("the department's own table", () => {
  test('takes the place of an entry', async () => {
    const { code, out } = await withFile('--code-table', table('cataract.combined'));
    expect(code).toBe(0);
    expect(out).toContain('"code":"X01.1"');
  });
  test('a misspelt entry is named, and what was probably meant', async () => {
    const { code, out, err, file } = await withFile('--code-table', table('cataract.combind'));
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(
      `${file}: no rule for ICD-10-CM asks for “cataract.combind” (did you mean “cataract.combined”?). The names of entries are: aphakia, cataract.combined,`,
    );
  });
});

describe('your own map', () => {
  test('a line that no code leads to is named', async () => {
    const { code, err, file } = await withFile(
      '--code-map',
      'ICD-10-PCS,08RJ3JZ,"CPT",66984\nICD-10-PCS,08RJ3JX,CPT,66982\n',
    );
    expect(code).toBe(0);
    expect(err).toContain(`${file}: no code that can be suggested here is mapped by ICD-10-PCS 08RJ3JX.`);
  });
  test('what it leads to stands without quotes', async () => {
    const { out } = await withFile('--code-map', 'ICD-10-PCS,08RJ3JZ,"CPT",66984\n');
    expect(out).toContain('"system":"CPT"');
  });
});
