import { spawn, spawnSync } from 'node:child_process';
import {
  chmodSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { nodeFiles } from '../../server/src/command-line/node-files.ts';
import { textOf } from '../../server/src/command-line/whole-file.ts';
import { FileProblem } from '../../server/src/command-line/world.ts';
import { run } from '../checking/memory-world.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'sideport-text-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

const sideport = (...words: string[]) => run(words, nodeFiles, { folder });
const put = (name: string, text: string, encoding: BufferEncoding = 'utf8') =>
  writeFileSync(join(folder, name), Buffer.from(text, encoding));

const untidy = 'opnote: 1\nrecord: operation\nfindings:   Rétine à plat, µ\n';
const said = (file: string) =>
  `${file}: it is not UTF-8, so not every letter can be read; open it in an editor, see that every letter is right, and save it as UTF-8.\n`;

// ISO 8859-1 writes é as the byte E9, UTF-16 every letter as two bytes: neither is UTF-8 (RFC 3629).
describe.each(['latin1', 'utf16le'] as const)('a note in %s', (encoding) => {
  test('is left byte for byte as it is, and the person is told what to do', async () => {
    put('a.opnote.yaml', untidy, encoding);
    put('b.opnote.yaml', untidy);
    const before = readFileSync(join(folder, 'a.opnote.yaml'));
    expect(await sideport('format', '.')).toEqual({
      code: 2,
      out: 'b.opnote.yaml\n',
      err: said('a.opnote.yaml'),
    });
    expect(readFileSync(join(folder, 'a.opnote.yaml')).equals(before)).toBe(true);
    expect(readFileSync(join(folder, 'b.opnote.yaml'), 'utf8')).toBe(untidy.replace('   ', ' '));
  });

  test('is said to be unreadable by a check, which ends with 2', async () => {
    put('a.opnote.yaml', untidy, encoding);
    const { code, err } = await sideport('check', '.');
    expect([code, err]).toEqual([2, said('a.opnote.yaml')]);
  });
});

test('a department file that is not UTF-8 is said once, and no note is checked without it', async () => {
  put('sideport.yaml', 'sideport: 1\ndepartment: Hôpital, invented\n', 'latin1');
  for (const name of ['a', 'b', 'c']) put(`${name}.opnote.yaml`, untidy);
  expect(await sideport('check', 'a.opnote.yaml', 'b.opnote.yaml')).toEqual({
    code: 2,
    out: '',
    err: said('sideport.yaml'),
  });
  expect((await sideport('check', '.', '--jobs', '1', '--no-cache')).err).toBe(said('sideport.yaml'));
  expect((await sideport('show', 'a.opnote.yaml')).err).toBe(said('sideport.yaml'));
});

test('a byte order mark is kept', async () => {
  put('a.opnote.yaml', `\uFEFF${untidy}`);
  await sideport('format', 'a.opnote.yaml');
  expect(readFileSync(join(folder, 'a.opnote.yaml'), 'utf8')).toBe(`\uFEFF${untidy.replace('   ', ' ')}`);
});

test('text that comes in through a pipe is held to the same', () => {
  expect(() => textOf(Buffer.from('Rétine', 'latin1'), 'send it as UTF-8')).toThrow(
    'it is not UTF-8, so not every letter can be read; send it as UTF-8',
  );
  expect(textOf(Buffer.from('Rétine'), 'send it as UTF-8')).toBe('Rétine');
});

describe('writing a file', () => {
  const path = () => join(folder, 'a.opnote.yaml');

  test('that fails leaves what was there, and nothing beside it', () => {
    put('a.opnote.yaml', untidy);
    const unwritable = new Proxy(new Uint8Array(4), {
      get: () => {
        throw new Error('no bytes');
      },
    });
    expect(() => nodeFiles.write(path(), unwritable)).toThrow(FileProblem);
    expect(readFileSync(path(), 'utf8')).toBe(untidy);
    expect(readdirSync(folder)).toEqual(['a.opnote.yaml']);
  });

  test('puts another file in its place, with the same rights', () => {
    put('a.opnote.yaml', untidy);
    chmodSync(path(), 0o640);
    const before = statSync(path());
    nodeFiles.write(path(), 'new');
    const after = statSync(path());
    expect(after.ino).not.toBe(before.ino);
    expect(after.mode).toBe(before.mode);
    expect([readFileSync(path(), 'utf8'), readdirSync(folder)]).toEqual(['new', ['a.opnote.yaml']]);
  });

  test('makes the folders above it', () => {
    nodeFiles.write(join(folder, '2031/03/a.opnote.yaml'), 'new');
    expect(readFileSync(join(folder, '2031/03/a.opnote.yaml'), 'utf8')).toBe('new');
  });

  test('goes through a link, which stays one', () => {
    mkdirSync(join(folder, 'real'));
    put('real/a.opnote.yaml', untidy);
    symlinkSync(join(folder, 'real/a.opnote.yaml'), path());
    nodeFiles.write(path(), 'new');
    expect(lstatSync(path()).isSymbolicLink()).toBe(true);
    expect(readFileSync(join(folder, 'real/a.opnote.yaml'), 'utf8')).toBe('new');
  });

  test('into a pipe hands it to whoever reads there, and leaves the pipe', async () => {
    const pipe = join(folder, 'pipe');
    spawnSync('mkfifo', [pipe]);
    const reader = spawn('cat', [pipe], { stdio: ['ignore', 'pipe', 'ignore'] });
    let read = '';
    reader.stdout.on('data', (data: Buffer) => (read += data.toString()));
    const ended = new Promise((done) => reader.once('close', done));
    nodeFiles.write(pipe, 'new');
    await ended;
    expect(read).toBe('new');
    expect(statSync(pipe).isFIFO()).toBe(true);
  });
});
