import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { nodeFiles } from '../../server/src/command-line/node-files.ts';
import { run } from '../checking/memory-world.ts';

// The program as it is shipped (`npm test` builds first), in a process of its own.
function sideport(
  words: readonly string[],
  { program = 'server', input = '' }: { readonly program?: string; readonly input?: string | Buffer } = {},
) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [resolve(program, 'bin/sideport.cjs'), ...words], {
    input,
    encoding: 'utf8',
  });
  return { code: status, out: stdout, err: stderr };
}

let fresh = '';
beforeAll(() => {
  fresh = mkdtempSync(join(tmpdir(), 'sideport-'));
  for (const part of ['bin', 'dist']) cpSync(join('server', part), join(fresh, part), { recursive: true });
  rmSync(join(fresh, 'dist/sideport.cjs.compiled'));
});
afterAll(() => rmSync(fresh, { recursive: true }));

test('sound samples are silent', () => {
  expect(sideport(['check', 'samples/sound'])).toEqual({ code: 0, out: '', err: '' });
});

test('the shipped program reports what the source reports, with and without kept code', async () => {
  const words = ['check', 'samples/faulty', '--format', 'json'];
  const { out } = await run(words, nodeFiles, { folder: process.cwd(), now: () => new Date() });
  expect(sideport(words)).toEqual({ code: 1, out, err: '' });
  expect(sideport(words, { program: fresh })).toEqual({ code: 1, out, err: '' });
});

test('a missing path ends with 2', () => {
  expect(sideport(['check', 'samples/nowhere'])).toEqual({
    code: 2,
    out: '',
    err: 'samples/nowhere: there is no such file or folder.\n',
  });
});

test('a note comes through standard input', () => {
  const { code, out } = sideport(['check', '-'], { input: 'opnote: 1\nrecord: amendment\neye: lef\n' });
  expect(code).toBe(1);
  expect(out).toContain('-:3:6: error: Operated eye: “lef” is not a known side. Expected one of: right, left.');
});

test('what comes through standard input and is not UTF-8 is not printed with letters missing', () => {
  const input = Buffer.from('opnote: 1\nrecord: operation\nfindings: Rétine\n', 'latin1');
  expect(sideport(['format', '-'], { input })).toEqual({
    code: 2,
    out: '',
    err: '-: it is not UTF-8, so not every letter can be read; send it as UTF-8.\n',
  });
});

test('whoever stops reading ends the program without a fault', () => {
  const program = resolve('server/bin/sideport.cjs');
  const piped = spawnSync('sh', ['-c', `"${process.execPath}" "${program}" check samples/faulty | head -n 1`], {
    encoding: 'utf8',
  });
  expect(piped.stderr).toBe('');
  expect(piped.stdout.split('\n')).toHaveLength(2);
});
