import { beforeEach, describe, expect, test } from 'vitest';
import { contentHash } from '../../server/src/command-line/checking/content-hash.ts';
import { makeYear } from '../../tools/year/make-year.ts';
import { MemoryFiles, run } from './memory-world.ts';

const NOTES_CACHE = '/notes/.sideport-cache/check.ndjson';
const RUN_CACHE = '/notes/.sideport-cache/run.json';

class CachedFiles extends MemoryFiles {
  get cached(): string {
    return this.content.get(NOTES_CACHE) ?? '';
  }

  /** Changes what a file of the cache says, with a sum that fits. */
  tamper(file: string, change: (body: string) => string): void {
    const [header = '', key = '', , ...lines] = (this.content.get(file) ?? '').split('\n');
    const body = change(lines.join('\n'));
    this.write(file, [header, key, contentHash(body), body].join('\n'));
  }
}

const YEAR = Object.fromEntries([...makeYear({ operations: 34 })].map(({ file, text }) => [file, text]));
const OPERATION = Object.keys(YEAR).find((file) => file.includes('OP-')) ?? '';
const FOLLOW_UP = Object.keys(YEAR).find((file) => file.includes('FU-')) ?? '';
const CHECK = ['check', '.', '--format', 'json', '--fail-on', 'never'];

let files: CachedFiles;
let program: string;

beforeEach(() => {
  files = new CachedFiles(YEAR);
  program = 'build 1';
});

function check(extra: readonly string[] = [], now = new Date(2025, 1, 1)): Promise<{ out: string; code: number }> {
  return run([...CHECK, ...extra], files, { program: () => program, now: () => now });
}

describe('the cache', () => {
  test('gives the same report, byte for byte, and is used', async () => {
    const first = await check();
    const kept = files.cached;
    expect(kept.split('\n').length).toBeGreaterThan(60);
    const second = await check();
    expect(second.out).toBe(first.out);
  });

  test.each<[string, string, () => void]>([
    ['a run over the same files', RUN_CACHE, () => undefined],
    [
      'the notes that are the same',
      NOTES_CACHE,
      () => files.write(`/notes/${OPERATION}`, `${YEAR[OPERATION] ?? ''}# a comment\n`),
    ],
  ])('is used for %s', async (_what, file, change) => {
    await check();
    files.tamper(file, (body) => body.replaceAll('"severity":"error"', '"severity":"info"'));
    change();
    const severities = (out: string): number => out.split('"severity": "error"').length;
    expect(severities((await check()).out)).toBeLessThan(severities((await check(['--no-cache'])).out));
  });

  test('hides itself from version control', async () => {
    await check();
    expect(files.content.get('/notes/.sideport-cache/.gitignore')).toBe('*\n');
  });

  test.each<[string, () => void]>([
    [
      'a note was edited',
      () => files.write(`/notes/${OPERATION}`, (YEAR[OPERATION] ?? '').replace(/^eye: .*$/m, 'eye: both')),
    ],
    [
      'the operation of a follow-up was edited',
      () =>
        files.write(
          `/notes/${FOLLOW_UP.replace('FU-', 'OP-')}`,
          (YEAR[FOLLOW_UP.replace('FU-', 'OP-')] ?? '').replace('eye: right', 'eye: left'),
        ),
    ],
    ['another note took the same id', () => files.write('/notes/2024-01/twin.opnote.yaml', YEAR[OPERATION] ?? '')],
    ['a note was taken away', () => files.content.delete(`/notes/${OPERATION}`)],
    [
      'the department file changed',
      () => files.write('/notes/sideport.yaml', (YEAR['sideport.yaml'] ?? '').replace('model: HX-1', 'model: HX-9')),
    ],
    ['the department file went', () => files.content.delete('/notes/sideport.yaml')],
    ['another build runs', () => void (program = 'build 2')],
    ...[NOTES_CACHE, RUN_CACHE].flatMap((file): [string, () => void][] => {
      const text = (): string => {
        if (file === NOTES_CACHE) files.content.delete(RUN_CACHE);
        return files.content.get(file) ?? '';
      };
      return [
        [`${file} was cut off in the middle`, () => files.write(file, text().slice(0, text().length / 2))],
        [`${file} holds nonsense`, () => files.write(file, text().replaceAll('{"', '{'))],
        [`one letter of ${file} is another`, () => files.write(file, text().replace('"severity":"e', '"severity":"E'))],
        [`${file} went`, () => text() && files.content.delete(file)],
      ];
    }),
  ])('is right after %s', async (_what, change) => {
    await check();
    change();
    const anew = await check(['--no-cache']);
    // Once to find out what is no longer true, once from what was kept of that.
    expect((await check()).out).toBe(anew.out);
    expect((await check()).out).toBe(anew.out);
  });

  test('is right on another day', async () => {
    await check();
    const later = new Date(2027, 0, 1);
    expect((await check([], later)).out).toBe((await check(['--no-cache'], later)).out);
  });

  test('is right for another department file', async () => {
    await check();
    files.write('/other.yaml', (YEAR['sideport.yaml'] ?? '').replace('model: HX-1', 'model: HX-9'));
    const given = ['--department', '/other.yaml'];
    expect((await check(given)).out).toBe((await check([...given, '--no-cache'])).out);
  });

  test('keeps no whole run while another note of the set is being written', async () => {
    const only = ['check', OPERATION, '--jobs', '1', '--format', 'json', '--fail-on', 'never'];
    const read = files.read.bind(files);
    let looked = 0;
    files.read = (file) => {
      if (file === `/notes/${FOLLOW_UP}`) looked += 1;
      return file === `/notes/${FOLLOW_UP}` && looked > 1 ? read(file).replace('eye: right', 'eye: left') : read(file);
    };
    await run(only, files, { program: () => program });
    expect(looked).toBeGreaterThan(1);
    expect(files.content.has(RUN_CACHE)).toBe(false);
    files.read = read;
    await run(only, files, { program: () => program });
    expect(files.content.has(RUN_CACHE)).toBe(true);
  });

  test('is not written for a few notes, nor with --no-cache', async () => {
    await run(['check', OPERATION], files, { program: () => program });
    await check(['--no-cache']);
    expect(files.cached).toBe('');
  });
});
