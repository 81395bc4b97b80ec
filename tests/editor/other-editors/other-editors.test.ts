import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { remarksOnCommandLine } from '../support/command-line.ts';
import { sample } from '../support/samples.ts';
import { runEditor } from './set-up.ts';

const folder = mkdtempSync(join(tmpdir(), 'set-'));
afterAll(() => rmSync(folder, { recursive: true }));

const note = join(folder, 'one.opnote.yaml');
const right = '  power: +5.5 D\n  pieces';
const faulty = sample('sound/long-eye-ring.opnote.yaml').replace(right, '  power: +6.5 D\n  pieces');
writeFileSync(note, faulty);
const lineOf = (words: string): number => faulty.slice(0, faulty.indexOf(words)).split('\n').length - 1;

const job = {
  note,
  hover: { line: lineOf('    axial-length: 29.60'), character: 6 },
  completion: { line: lineOf('eye: left\nwhich-eye'), character: 'eye: '.length },
  edit: { line: lineOf('  power: +6.5 D'), text: '  power: +5.5 D' },
};

describe.each([
  ['Neovim', 'lua'],
  ['Emacs', 'elisp'],
] as const)('%s, set up as documented', (_, language) => {
  const seen = runEditor(language, job);

  test('knows a note by its name', () => {
    expect(seen.problem).toBeUndefined();
    expect(seen.filetype ?? seen.mode).toMatch(/^opnote/);
  });

  test('shows the remarks that the command line makes', () => {
    const expected = remarksOnCommandLine(note);
    expect(expected.length).toBeGreaterThan(0);
    for (const { message, range } of expected) {
      expect(seen.remarks).toContainEqual(
        expect.objectContaining({ line: range.start.line - 1, message: expect.stringContaining(message) }),
      );
    }
    expect(seen.remarks).toHaveLength(expected.length);
  });

  test('completes', () => {
    expect(seen.completion).toEqual(expect.arrayContaining(['right', 'left']));
  });

  test('explains what is under the cursor, with what was computed from it', () => {
    expect(seen.hover).toMatch(/axial length/i);
    expect(seen.hover).toMatch(/source/i);
  });

  test('takes the remark away when the fault is mended', () => {
    expect(seen.remarksAfterEdit.length).toBeLessThan(seen.remarks.length);
  });
});
