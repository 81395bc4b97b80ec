import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { MemoryFiles, run } from '../checking/memory-world.ts';

const sample = (name: string): string => readFileSync(new URL(`../../samples/sound/${name}`, import.meta.url), 'utf8');
const NOTE = 'routine-right.opnote.yaml';

const set = () =>
  new MemoryFiles({
    [NOTE]: sample(NOTE),
    'sideport.yaml': sample('sideport.yaml'),
    [`${NOTE}.seal.json`]: '{"version":1,"seals":[]}',
    allowed_signers: 'S-05 ssh-ed25519 AAAA\n',
    'speech.txt': 'Right eye.',
    'part.json': '{}',
    'our-codes.json': '{}',
  });

const COMMANDS = [
  'check .',
  'check . --format sarif',
  `show ${NOTE}`,
  `show ${NOTE} --as html`,
  'export . --as ndjson',
  'export . --as csv',
  'export . --as fhir',
  'audit .',
  'audit . --format partial',
  'dictate speech.txt',
];

describe('what was made from notes is not written over', () => {
  test.each(
    [
      [NOTE, 'a note'],
      [`./${NOTE}`, 'a note'],
      ['/notes/sideport.yaml', 'a department file'],
      [`${NOTE}.seal.json`, 'a file of seals'],
      ['allowed_signers', 'a register of signers'],
    ].flatMap(([file = '', kind = '']) => COMMANDS.map((command) => [kind, command, file] as const)),
  )('%s: sideport %s --output %s', async (kind, command, file) => {
    const files = set();
    const before = new Map(files.content);
    const { code, out, err } = await run([...command.split(' '), '--output', file], files);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(
      `--output ${file} has the name of ${kind}: what is written would take its place or be read as one. Name another file.`,
    );
    expect(files.content).toEqual(before);
  });

  test.each([
    ['audit part.json', 'part.json'],
    ['check --merge part.json', './part.json'],
    ['export . --codes icd10-opcs4 --code-table our-codes.json', 'our-codes.json'],
  ])('a file that is read: sideport %s --output %s', async (command, file) => {
    const files = set();
    const before = new Map(files.content);
    const { code, err } = await run([...command.split(' '), '--output', file], files);
    expect(code).toBe(2);
    expect(err).toContain(`--output ${file} is one of the files that are read, which would be lost.`);
    expect(files.content).toEqual(before);
  });
});

describe('a note made from a dictation', () => {
  test('goes to a new file', async () => {
    const files = set();
    expect((await run(['dictate', 'speech.txt', '--output', 'new.opnote.yaml'], files)).code).toBe(0);
    expect(files.content.get('/notes/new.opnote.yaml')).toContain('eye:');
  });
  test('takes the place of the note that it completes, unless that one is sealed', async () => {
    const files = set();
    const words = ['dictate', 'speech.txt', '--into', NOTE, '--output', NOTE];
    const refused = await run(words, files);
    expect(refused.code).toBe(2);
    expect(refused.err).toContain('this note is sealed and stays as it is. Write an amendment: sideport amend.');
    files.content.delete(`/notes/${NOTE}.seal.json`);
    expect((await run(words, files)).code).toBe(0);
  });
});
