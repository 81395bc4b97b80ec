import { expect, test } from 'vitest';
import { nodeFiles } from '../../server/src/command-line/node-files.ts';
import { runCommand } from '../../server/src/command-line/run-command.ts';
import { reviewNote } from '../../server/src/note/review.ts';
import { TestEditor } from '../language-server/editor.ts';

// A note with remarks of every severity, written out of order.
const faulty = [
  'opnote: 1',
  'record: operation',
  'status: planned',
  'eye: left',
  'findings: deep # lax',
  'capsulotomy:',
  '  diameter: 5,1 mm',
  'dye:',
  'urgency: soon',
  '',
].join('\n');
const severities = { 1: 'error', 2: 'warning', 3: 'info' } as const;

test('architecture invariant: the language server keeps severity, words and order of every remark', async () => {
  const said = reviewNote(faulty, { today: '2031-03-20', file: 'note.opnote.yaml' }).remarks;
  expect(new Set(said.map(({ severity }) => severity))).toEqual(new Set(['error', 'warning', 'info']));
  const editor = await TestEditor.inProcess();
  const shown = await editor.open('file:///set/note.opnote.yaml', faulty);
  await editor.stop();
  expect(shown.map(({ code, severity, message }) => [code, severities[severity as 1 | 2 | 3], message])).toEqual(
    said.map(({ check, severity, message }) => [check, severity, message]),
  );
});

test('architecture invariant: the command line keeps severity, words and order of every remark', async () => {
  const said = reviewNote(faulty, { today: '2031-03-20' }).remarks;
  let out = '';
  const sink = { colour: false, write: (data: string | Uint8Array) => void (out += String(data)) };
  const world = {
    stdin: async () => faulty,
    stdout: sink,
    stderr: { colour: false, write: () => undefined },
    files: nodeFiles,
    folder: process.cwd(),
    now: () => new Date(2031, 2, 20, 12),
  };
  expect(await runCommand(['check', '-', '--format', 'json'], world)).toBe(1);
  const report = JSON.parse(out) as { notes: { remarks: { check: string; severity: string; message: string }[] }[] };
  expect(report.notes[0]?.remarks.map(({ check, severity, message }) => [check, severity, message])).toEqual(
    said.map(({ check, severity, message }) => [check, severity, message]),
  );
});
