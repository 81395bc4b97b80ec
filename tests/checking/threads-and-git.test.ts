import { readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { makeYear } from '../../tools/year/make-year.ts';
import { buildCommandLine, folderWith, git, runBuilt } from './built.ts';

let built: Awaited<ReturnType<typeof buildCommandLine>>;
let folder: string;

beforeAll(async () => {
  built = await buildCommandLine();
  folder = folderWith(makeYear({ operations: 40 }));
  git(folder, 'init', '--quiet');
  git(folder, 'add', '.');
  git(folder, 'commit', '--quiet', '-m', 'A year');
}, 120_000);

afterAll(() => {
  built.remove();
  rmSync(folder, { recursive: true, force: true });
});

function check(...words: readonly string[]): { code: number | null; out: string; err: string } {
  return runBuilt(built.program, ['check', '.', '--format', 'json', '--fail-on', 'never', ...words], folder);
}

function path(file: string): string {
  return join(folder, file);
}

function checkedFiles(out: string): readonly string[] {
  const report: { notes: { file: string }[] } = JSON.parse(out);
  return report.notes.map((note) => note.file);
}

describe('threads', () => {
  test('one, two and three give the same report, byte for byte', () => {
    const one = check('--no-cache', '--jobs', '1');
    expect(one).toMatchObject({ code: 0, err: '' });
    expect(check('--no-cache', '--jobs', '2')).toEqual(one);
    expect(check('--no-cache', '--jobs', '3')).toEqual(one);
  }, 120_000);

  test('with the cache they do too, and git never sees the cache', () => {
    const anew = check('--no-cache', '--jobs', '1');
    expect(check('--jobs', '2')).toEqual(anew);
    expect(check('--jobs', '1')).toEqual(anew);
    expect(git(folder, 'status', '--porcelain')).toBe('');
  }, 120_000);

  test('a department file that is not there is said and ends with 2, before any note is checked', () => {
    const { code, out, err } = check('--jobs', '2', '--department', 'gone.yaml');
    expect({ code, out, err }).toEqual({ code: 2, out: '', err: 'gone.yaml: there is no such file.\n' });
  }, 60_000);

  test('a file that cannot be read is said and ends with 2', () => {
    const { code, err } = runBuilt(built.program, ['check', '.', 'gone.opnote.yaml', '--jobs', '2'], folder);
    expect(err).toBe('gone.opnote.yaml: there is no such file or folder.\n');
    expect(code).toBe(2);
  }, 120_000);
});

describe('changes since a revision', () => {
  const operation = '2024-01/OP-2024-00001.opnote.yaml';
  test('nothing changed: nothing is checked, which is no fault', () => {
    const { code, out } = check('--changed-since', 'HEAD');
    expect(checkedFiles(out)).toEqual([]);
    expect(code).toBe(0);
  }, 60_000);

  test('a changed operation brings the follow-up that points to it, and an untracked note counts', () => {
    writeFileSync(
      path(operation),
      readFileSync(path(operation), 'utf8').replace('place: Theatre 1', 'place: Theatre 2'),
    );
    writeFileSync(path('2024-01/later.opnote.yaml'), 'opnote: 1\nrecord: amendment\nid: AM-1\namends: FU-2024-00001\n');
    const followUp = operation.replace('OP-', 'FU-');
    expect(checkedFiles(check('--changed-since', 'HEAD').out)).toEqual([
      followUp,
      operation,
      '2024-01/later.opnote.yaml',
    ]);
    git(folder, 'checkout', '--quiet', '.');
    rmSync(path('2024-01/later.opnote.yaml'));
  }, 60_000);

  test('a note that was taken away or renamed brings those that pointed to its id', () => {
    renameSync(path(operation), path('2024-01/renamed.opnote.yaml'));
    expect(checkedFiles(check('--changed-since', 'HEAD').out)).toEqual([
      '2024-01/FU-2024-00001.opnote.yaml',
      '2024-01/renamed.opnote.yaml',
    ]);
    rmSync(path('2024-01/renamed.opnote.yaml'));
    expect(checkedFiles(check('--changed-since', 'HEAD').out)).toEqual(['2024-01/FU-2024-00001.opnote.yaml']);
    git(folder, 'checkout', '--quiet', '.');
  }, 60_000);

  test('a changed department file brings its whole set', () => {
    writeFileSync(path('sideport.yaml'), `${readFileSync(path('sideport.yaml'), 'utf8')}# changed\n`);
    expect(checkedFiles(check('--changed-since', 'HEAD').out).length).toBeGreaterThan(70);
    git(folder, 'checkout', '--quiet', '.');
  }, 60_000);

  test.each(['no-such-branch', '--output=x'])('an unknown revision %s is said and ends with 2', (revision) => {
    const { code, err } = check(`--changed-since=${revision}`);
    expect(err).toContain(`git knows no revision ${revision}.`);
    expect(code).toBe(2);
  });
});
