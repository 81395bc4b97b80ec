import { describe, expect, test } from 'vitest';
import { MemoryFiles, run } from './memory-world.ts';

// Parts of a divided set are put together again: a missing part would make a report say too little, with a green light.
const note = (id: string): string =>
  `opnote: 1\nrecord: operation\nstatus: final\nid: ${id}\ndate: 2025-01-05\neye: right\nteam:\n  - role: surgeon\n    ref: S-02\n`;
const NAMES = ['a', 'b', 'c', 'd'].map((name) => `notes/${name}.opnote.yaml`);
const set = (): MemoryFiles => new MemoryFiles(Object.fromEntries(NAMES.map((name, at) => [name, note(`OP-${at}`)])));

async function divided(command: string, count: number): Promise<MemoryFiles> {
  const files = set();
  for (let index = 1; index <= count; index++) {
    const words = [...command.split(' '), '--shard', `${index}/${count}`, '--output', `part-${index}.json`];
    expect(await run(words, files)).toMatchObject({ code: 0, err: '' });
  }
  return files;
}

describe.each([
  ['check', 'check notes --format json --fail-on never', 'check --fail-on never --merge'],
  ['audit', 'audit notes --format partial', 'audit --suppress-below 0'],
])('the parts of a %s', (name, command, merge) => {
  const merged = (files: MemoryFiles, ...parts: readonly string[]) => run([...merge.split(' '), ...parts], files);

  test('are put together in any order', async () => {
    const files = await divided(command, 3);
    const { code, out } = await merged(files, 'part-3.json', 'part-1.json', 'part-2.json');
    const whole = await run(
      [
        name,
        'notes',
        ...merge
          .split(' ')
          .slice(1)
          .filter((word) => word !== '--merge'),
      ],
      files,
    );
    expect([code, out]).toEqual([0, whole.out]);
  });
  test.each([
    [['part-1.json', 'part-3.json'], 'Part 2 of 3 is missing: a result without it would say too little.'],
    [['part-2.json'], 'Parts 1, 3 of 3 are missing: a result without them would say too little.'],
    [
      ['part-1.json', 'part-2.json', 'part-3.json', 'part-2.json'],
      'part-2.json and part-2.json are both part 2 of 3: give each part once.',
    ],
  ])('%j is refused', async (parts, message) => {
    const { code, out, err } = await merged(await divided(command, 3), ...parts);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(message);
  });
  test('a part without notes is a part', async () => {
    const files = await divided(command, 6);
    const parts = [1, 2, 3, 4, 5, 6].map((index) => `part-${index}.json`);
    expect((await merged(files, ...parts)).code).toBe(0);
  });
});

describe('check --merge', () => {
  test('needs reports', async () => {
    expect(await run(['check', '--merge'], set())).toMatchObject({
      code: 2,
      out: '',
      err: expect.stringContaining('Say which reports to put together: sideport check --merge part-1.json part-2.json'),
    });
  });
  test('is not a part itself', async () => {
    const { code, err } = await run(['check', '--merge', 'x.json', '--shard', '1/2'], set());
    expect(code).toBe(2);
    expect(err).toContain('--merge puts all parts together; --shard belongs to the runs before.');
  });
});

describe('audit', () => {
  const partial = async (): Promise<MemoryFiles> => {
    const files = set();
    await run(['audit', 'notes', '--format', 'partial', '--output', 'whole.json'], files);
    return files;
  };
  test.each([
    [['whole.json', 'whole.json'], 'OP-0 stands in whole.json and in whole.json: give each note once.'],
    [['whole.json', 'notes'], 'OP-0 stands in whole.json and in the notes: give each note once.'],
  ])('%j counts nothing twice', async (paths, message) => {
    const { code, err } = await run(['audit', ...paths], await partial());
    expect(code).toBe(2);
    expect(err).toContain(message);
  });
  test('a note that cannot be counted is named, and the audit does not pass for whole', async () => {
    const files = set();
    files.content.set('/notes/notes/e.opnote.yaml', 'hello\n');
    const { code, out, err } = await run(['audit', 'notes'], files);
    expect(code).toBe(2);
    expect(out).toContain('1 note could not be read well enough to be counted.');
    expect(err).toBe(
      'notes/e.opnote.yaml: it has no id or is no note, and is not counted. sideport check says what is wrong.\n',
    );
  });
  test.each([
    ['sideport.yaml', 'There is no note to audit: only a department file.'],
    ['empty', 'empty: there is no such file or folder.'],
  ])('nothing to count is not an empty report: %s', async (path, message) => {
    const files = set();
    files.content.set('/notes/sideport.yaml', 'sideport: 1\n');
    const { code, out, err } = await run(['audit', path], files);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(message);
  });
});
