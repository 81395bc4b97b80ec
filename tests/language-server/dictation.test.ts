import type { CodeAction, Hover, InlayHint, TextDocumentEdit, WorkspaceEdit } from 'vscode-languageserver';
import { describe, expect, it } from 'vitest';
import { readNote } from '../../server/src/note/reading/read-note.ts';
import { applied, TestEditor } from './editor.ts';

const uri = 'file:///notes/dictated.opnote.yaml';
const note = `opnote: 1
record: operation
status: draft
eye: left
dye: none
dictation: >-
  Left eye. Lens plus twenty one in the bag.
  Gorbel frobnicated. Trypan blue.
free-text: Vacuum was four hundred, bottle eighty.
`;

function editsIn(edit: WorkspaceEdit | undefined) {
  return edit?.documentChanges?.flatMap((change) => (change as TextDocumentEdit).edits) ?? [];
}

async function actionsAt(editor: TestEditor, from: string, to = from.slice(0, 0)): Promise<CodeAction[]> {
  const start = note.indexOf(from);
  const end = to === '' ? start : note.indexOf(to) + to.length;
  return editor.request<CodeAction[]>('textDocument/codeAction', {
    textDocument: { uri },
    range: { start: editor.position(uri, start), end: editor.position(uri, end) },
    context: { diagnostics: [] },
  });
}

describe('a note with a dictation', () => {
  it('is understood once what understands it is loaded: lost words are marked, contradictions named', async () => {
    const editor = await TestEditor.inProcess();
    await editor.open(uri, note);
    await editor.until(uri, (checks) => checks.includes('dictated-words-in-no-field'));
    const messages = editor
      .diagnostics(uri)
      .map(({ code, message }) => `${String(code)}: ${typeof message === 'string' ? message : ''}`);
    expect(messages).toContain(
      'dictated-words-in-no-field: “Gorbel frobnicated” was dictated and is in no field (place 1 of 1). Write it where it belongs, or leave it in the dictation.',
    );
    expect(messages).toContain(
      'note-differs-from-dictation: Dye: the note says none, but trypan blue was dictated (“Trypan blue”). Which is right?',
    );
    await editor.stop();
  });

  it('offers the fields as one change, and as a change whose parts are looked at first', async () => {
    const editor = await TestEditor.inProcess();
    await editor.open(uri, note);
    const actions = await actionsAt(editor, 'dictation');
    const [all, looked] = ['Write what was dictated', 'Look at what was dictated'].map((title) =>
      actions.find((action) => action.title.startsWith(title)),
    );
    const text = applied(note, editsIn(all?.edit) as never);
    expect(text).toContain('lens:\n  power: +21 D # proposed from the dictation: “plus twenty one”\n');
    expect(readNote(text).tree.faults).toEqual([]);
    expect(looked?.edit?.changeAnnotations).toEqual({
      'part-0': { label: 'Lens: +21 D, capsular bag', needsConfirmation: true },
    });
    expect(editsIn(looked?.edit)).toEqual([expect.objectContaining({ annotationId: 'part-0' })]);
    await editor.stop();
  });

  it('offers selected words of other prose, and no preview to an editor that cannot show one', async () => {
    const editor = await TestEditor.inProcess({
      capabilities: {
        textDocument: { codeAction: { codeActionLiteralSupport: { codeActionKind: { valueSet: [] } } } },
      },
    });
    await editor.open(uri, note);
    const titles = (await actionsAt(editor, 'Vacuum was', 'bottle eighty')).map(({ title }) => title);
    expect(titles).toContain('Write the selected words into the fields (2 values)');
    expect(titles.filter((title) => title.startsWith('Look at'))).toEqual([]);
    await editor.stop();
  });

  it('says at a field which words it came from, and beside the dictation how much of it is written', async () => {
    const editor = await TestEditor.inProcess();
    await editor.open(uri, note);
    await editor.until(uri, (checks) => checks.includes('dictated-words-in-no-field'));
    const hover = await editor.request<Hover>('textDocument/hover', {
      textDocument: { uri },
      position: editor.position(uri, note.indexOf('left')),
    });
    expect(JSON.stringify(hover.contents)).toContain('Dictated as “Left eye” (characters 1 to 8).');
    const hints = await editor.request<InlayHint[]>('textDocument/inlayHint', {
      textDocument: { uri },
      range: { start: { line: 0, character: 0 }, end: { line: 20, character: 0 } },
    });
    expect(hints.map(({ label }) => label)).toContain('2 values to write · 1 to decide · 1 place in no field');
    await editor.stop();
  });
});
