import { expect, test } from 'vitest';
import { makeYear } from '../../tools/year/make-year.ts';
import { MemoryFiles, run } from '../checking/memory-world.ts';

test('of several notes of one patient only the one with another year of birth is asked', async () => {
  const year = Object.fromEntries([...makeYear({ operations: 8 })].map(({ file, text }) => [file, text]));
  const operation = Object.keys(year).find((file) => file.includes('OP-')) ?? '';
  const copies = ['a', 'b', 'c'].map((name) => [
    `${name}.opnote.yaml`,
    (year[operation] ?? '')
      .replace(/^id: .*$/mu, `id: OP-${name}`)
      .replace(/born: \d+/u, name === 'b' ? 'born: 1915' : 'born: 1951'),
  ]);
  const files = new MemoryFiles({ 'sideport.yaml': year['sideport.yaml'] ?? '', ...Object.fromEntries(copies) });
  const { out } = await run(['check', '.', '--format', 'json', '--fail-on', 'never'], files);
  const { notes } = JSON.parse(out) as {
    notes: readonly { file: string; remarks: readonly { check: string; message: string }[] }[];
  };
  const asked = notes.filter(({ remarks }) => remarks.some(({ check }) => check === 'patient-data-differ'));
  expect(asked.map(({ file }) => file)).toEqual(['b.opnote.yaml']);
  const [remark] = asked[0]?.remarks.filter(({ check }) => check === 'patient-data-differ') ?? [];
  expect(remark?.message).toMatch(/was born in 1915 here, but in 1951 in a\.opnote\.yaml and 1 more/u);
});
