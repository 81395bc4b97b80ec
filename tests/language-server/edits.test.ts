import { afterEach, beforeEach, expect, it } from 'vitest';
import type { Hover, SelectionRange } from 'vscode-languageserver';
import { TestEditor } from './editor.ts';

/**
 * Language Server Protocol 3.17, TextDocumentContentChangeEvent: changes are applied one after the other; their places
 * are lines and UTF-16 units of the text after the change before.
 */
const note = 'file:///set/a.opnote.yaml';
let editor: TestEditor;
beforeEach(async () => {
  editor = await TestEditor.inProcess();
});
afterEach(() => editor.stop());

const at = (line: number, from: number, to: number, text: string) => ({
  range: { start: { line, character: from }, end: { line, character: to } },
  text,
});

/** The lines as the server has them: the one that is asked about holds an unknown word. */
async function wordAt(expected: string): Promise<{ line: number; from: number; to: number }> {
  await editor.until(note, (checks) => checks.includes('unknown-word'));
  const remark = editor.diagnostics(note).find(({ code }) => code === 'unknown-word');
  expect(remark?.message).toContain(`“${expected}”`);
  const { start, end } = remark!.range;
  expect(start.line).toBe(end.line);
  return { line: start.line, from: start.character, to: end.character };
}

it.each([
  ['LF', '\n'],
  ['CRLF', '\r\n'],
])('a part of a text with %s is changed, and the rest stays', async (_, eol) => {
  const text = ['opnote: 1', 'record: operation', 'place: "🏥 é"', 'eye: left', ''].join(eol);
  await editor.open(note, text);
  await editor.change(note, [at(3, 5, 9, 'lefft')], text.replace('left', 'lefft'));
  expect(await wordAt('lefft')).toEqual({ line: 3, from: 5, to: 10 });
});

it('several changes follow each other, across line ends and surrogate pairs', async () => {
  const text = 'opnote: 1\r\nrecord: operation\r\nplace: 🏥🏥 x\r\neye: left\r\n';
  await editor.open(note, text);
  await editor.change(
    note,
    [
      // The second emoji goes, then a line is put in above, then the line end above `eye` is written anew.
      at(2, 9, 11, ''),
      at(1, 0, 0, 'status: draft\r\n'),
      {
        range: { start: { line: 3, character: 11 }, end: { line: 4, character: 5 } },
        text: '\r\n# 👁\r\neye: lef',
      },
      at(5, 8, 12, ''),
    ],
    'opnote: 1\r\nstatus: draft\r\nrecord: operation\r\nplace: 🏥 x\r\n# 👁\r\neye: lef\r\n',
  );
  expect(await wordAt('lef')).toEqual({ line: 5, from: 5, to: 8 });
  const [place] = await editor.request<SelectionRange[]>('textDocument/selectionRange', {
    textDocument: { uri: note },
    positions: [{ line: 3, character: 8 }],
  });
  expect(place?.range).toEqual({ start: { line: 3, character: 7 }, end: { line: 3, character: 11 } });
});

it('what was answered for the text before does not change under it', async () => {
  const text = 'opnote: 1\nrecord: operation\neye: left\n';
  await editor.open(note, text);
  const asked = editor.request<Hover>('textDocument/hover', {
    textDocument: { uri: note },
    position: { line: 2, character: 1 },
  });
  await editor.change(note, [at(0, 0, 0, '# one\n# two\n')], `# one\n# two\n${text}`);
  expect((await asked).range?.start.line).toBe(2);
});
