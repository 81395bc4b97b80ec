import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { nodeFiles } from '../../server/src/command-line/node-files.ts';
import type { ReportedNote, ReportedRemark } from '../../server/src/note/reports/report-input.ts';
import { formatText } from '../../server/src/note/editing/format.ts';
import { run } from '../checking/memory-world.ts';

const faulty = resolve('samples/faulty');
const files = (folder: string) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.yaml'));

test('sound samples are silent, today as on any later day', async () => {
  for (const now of [new Date(), new Date(2045, 5, 1)]) {
    const folder = process.cwd();
    expect(await run(['check', 'samples/sound', '--fail-on', 'warning'], nodeFiles, { folder, now: () => now })).toEqual({
      code: 0,
      out: '',
      err: '',
    });
  }
});

// A day after every sample: otherwise a date would be remarked as not having come yet.
const around = { folder: faulty, now: () => new Date(2031, 0, 1) };
const ran = await run(['check', '.', '--format', 'json'], nodeFiles, around);
const { notes } = JSON.parse(ran.out) as { readonly notes: readonly ReportedNote[] };

test('every faulty sample is reported, and each makes at least one remark', () => {
  expect(ran).toMatchObject({ code: 1, err: '' });
  const expected = files(faulty).filter((file) => file !== 'sideport.yaml');
  expect(notes.filter(({ remarks }) => remarks.length > 0).map(({ file }) => file)).toEqual(expected.toSorted());
});

// What is written beside a sample is what a person is told there: read it aloud before changing it (vitest -u writes it).
test.each(notes.filter(({ file }) => file !== 'sideport.yaml'))(
  'faulty/$file makes exactly the remarks beside it',
  async (note) => {
    const beside = `${faulty}/${note.file.replace(/(?:\.opnote)?\.yaml$/u, '')}.remarks.txt`;
    expect(existsSync(beside), `${basename(beside)} is missing`).toBe(true);
    await expect(note.remarks.map(written).join('')).toMatchFileSnapshot(beside);
  },
);

function written({ range, severity, check, message, related }: ReportedRemark): string {
  const places = related.map(({ file, range: { start }, message: said }) => {
    const where = file === undefined ? '' : `${file}:`;
    return `    ${where}${start.line}:${start.column} ${said}\n`;
  });
  return `${range.start.line}:${range.start.column} ${severity} ${check}\n    ${message}\n${places.join('')}`;
}

test('a note checked alone makes the same remarks as with all the others', async () => {
  for (const note of notes) {
    const { out } = await run(['check', note.file, '--format', 'json'], nodeFiles, around);
    expect(JSON.parse(out)).toMatchObject({ notes: [note] });
  }
});

test.each(files('samples/sound'))('sound/%s is laid out tidily', (file) => {
  const text = readFileSync(`samples/sound/${file}`, 'utf8');
  expect(formatText(text, file === 'sideport.yaml' ? 'department' : undefined)).toBe(text);
});
