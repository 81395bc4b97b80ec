import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { MemoryFiles, run, type Ran } from '../checking/memory-world.ts';

const dictation = 'Left eye. Phaco and IOL. Vacuum four hundred. Gorbel frobnicated. Lens plus twenty one in the bag.';

async function memoryRun(
  words: readonly string[],
  content: Readonly<Record<string, string>>,
  stdin = '',
): Promise<Ran & { readonly files: ReadonlyMap<string, string> }> {
  const files = new MemoryFiles(content);
  const ran = await run(words, files, { stdin: () => Promise.resolve(stdin) });
  return { ...ran, files: new Map([...files.content].map(([path, text]) => [path.replace('/notes/', ''), text])) };
}

describe('sideport dictate', () => {
  it('gives every value with its place, its words and the hash of the text, as JSON', async () => {
    const { code, out, err } = await memoryRun(['dictate', 'said.txt', '--format', 'json'], { 'said.txt': dictation });
    const result = JSON.parse(out) as {
      readonly version: number;
      readonly dictation: object;
      readonly values: readonly { readonly start: number; readonly end: number; readonly text: string }[];
      readonly unmatched: readonly object[];
    };
    expect([code, err]).toEqual([0, '']);
    expect(result.version).toBe(1);
    expect(result.dictation).toEqual({
      sha256: createHash('sha256').update(dictation).digest('hex'),
      length: dictation.length,
    });
    for (const { start, end, text } of result.values) expect(dictation.slice(start, end)).toBe(text);
    expect(result.values).toContainEqual(expect.objectContaining({ path: ['eye'], value: 'left', state: 'proposed' }));
    expect(result.values).toContainEqual(
      expect.objectContaining({ path: ['nucleus', 'steps', 0, 'vacuum'], value: '400 mmHg', state: 'filled' }),
    );
    const lost = 'Gorbel frobnicated';
    const start = dictation.indexOf(lost);
    expect(result.unmatched).toEqual([{ start, end: start + lost.length, text: lost }]);
  });

  it('gives the note, and says in counts what asks for a look', async () => {
    const { code, out, err } = await memoryRun(['dictate', '-'], {}, dictation);
    expect(code).toBe(0);
    expect(out).toContain('eye: left # proposed from the dictation: “Left eye”\n');
    expect(out).toContain('dictation: >-\n  Left eye.');
    expect(err).toBe(
      '3 proposed values ask for confirmation; each carries a mark.\n1 stretch of the dictation went into no field; sideport check names them in the note.\n',
    );
    expect(err).not.toContain('Gorbel');
  });

  it('takes the dictation of a note, completes another note, and writes to a file', async () => {
    const note = 'opnote: 1\nrecord: operation\nstatus: draft\neye: left\n';
    const own = await memoryRun(['dictate', 'a.opnote.yaml'], {
      'a.opnote.yaml': `${note}dictation: Left eye. Vacuum four hundred.\n`,
    });
    expect(own.out).toContain('    - vacuum: 400 mmHg\n');
    const into = await memoryRun(['dictate', 'said.txt', '--into', 'a.opnote.yaml', '--output', 'b.opnote.yaml'], {
      'said.txt': dictation,
      'a.opnote.yaml': note,
    });
    expect([into.code, into.out]).toEqual([0, '']);
    expect(into.files.get('b.opnote.yaml')).toContain('eye: left\n');
    expect(into.files.get('a.opnote.yaml')).toBe(note);
  });

  it('says what is missing, with 2', async () => {
    expect(await memoryRun(['dictate'], {})).toMatchObject({
      code: 2,
      err: expect.stringContaining('Say which one dictation') as string,
    });
    expect(await memoryRun(['dictate', 'gone.txt'], {})).toMatchObject({
      code: 2,
      err: 'gone.txt: there is no such file.\n',
    });
    expect(
      await memoryRun(['dictate', 'a.opnote.yaml'], { 'a.opnote.yaml': 'opnote: 1\nrecord: operation\n' }),
    ).toMatchObject({
      code: 2,
      err: 'a.opnote.yaml: this note holds no dictation.\n',
    });
  });
});
