import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { makeYear } from '../../tools/year/make-year.ts';
import { buildCommandLine, folderWith, runBuilt } from '../checking/built.ts';

// The program in a process of its own, writing where nothing can be written.
let built: Awaited<ReturnType<typeof buildCommandLine>>;
beforeAll(async () => {
  built = await buildCommandLine();
}, 120_000);
afterAll(() => built.remove());

const FULL = '/dev/full';

test
  .runIf(existsSync(FULL))
  .each([
    'check samples/faulty',
    'check samples/faulty --format json',
    'export samples/sound --as ndjson',
    'show samples/sound/routine-right.opnote.yaml',
    'audit samples/sound',
  ])('a full disk behind standard output is said: sideport %s', (words) => {
  const { status, stderr } = spawnSync(
    'sh',
    ['-c', `"${process.execPath}" "${built.program}" ${words} --department samples/sound/sideport.yaml > ${FULL}`],
    { encoding: 'utf8' },
  );
  expect(stderr).toBe('Standard output could not be written: the disk is full. What arrived there is not whole.\n');
  expect(status).toBe(2);
});

test.each([
  ['check samples/sound --output', 'taken/report.txt', 'taken/report.txt'],
  ['audit samples/sound --output', 'taken/report.txt', 'taken/report.txt'],
  ['show samples/sound/routine-right.opnote.yaml --output', 'taken/report.txt', 'taken/report.txt'],
  ['export samples/sound --as ndjson --output', 'taken/notes.ndjson', 'taken/notes.ndjson'],
  ['export samples/sound --as csv --output', 'taken', 'taken/operations.csv'],
  ['export samples/sound --as parquet --output', 'taken', 'taken/operations.parquet'],
  ['export samples/sound --as fhir --output', 'taken', 'taken/document-0001.json'],
])('where something cannot be written, the message names the file: sideport %s %s', (words, output, named) => {
  const folder = folderWith([{ file: 'taken', text: 'not a folder' }]);
  symlinkSync(join(process.cwd(), 'samples'), join(folder, 'samples'));
  const { code, err } = runBuilt(built.program, [...words.split(' '), output], folder);
  expect(err).toMatch(new RegExp(`^${named}: \\S.*\\.$`, 'mu'));
  expect(code).toBe(2);
});

test('a file in the place of the cache is no fault: nothing is kept', () => {
  const folder = folderWith(makeYear({ operations: 60 }));
  const file = join(folder, '.sideport-cache');
  const before = runBuilt(built.program, ['check', '.', '--no-cache', '--fail-on', 'never'], folder);
  writeFileSync(file, 'not a folder');
  expect(runBuilt(built.program, ['check', '.', '--fail-on', 'never'], folder)).toEqual(before);
  expect(readFileSync(file, 'utf8')).toBe('not a folder');
}, 60_000);
