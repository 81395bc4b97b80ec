import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { CodeAction, Diagnostic, TextDocumentEdit, TextEdit } from 'vscode-languageserver';
import { allChecks } from '../../server/src/note/checks/all-checks.ts';
import { applied, TestEditor } from './editor.ts';

const note = 'file:///set/a.opnote.yaml';
const text = 'opnote: 1\nrecord: operation\nstatus: draft\npreop:\n  pupil: 7,5 mm\n';

let editor: TestEditor;
beforeEach(async () => {
  editor = await TestEditor.inProcess();
});
afterEach(async () => {
  vi.restoreAllMocks();
  await editor.stop();
});

const ofCheck = (check: string) => editor.diagnostics(note).filter(({ code }) => code === check);

const actionsFor = (diagnostics: readonly Diagnostic[], only?: readonly string[]) =>
  editor.request<CodeAction[]>('textDocument/codeAction', {
    textDocument: { uri: note },
    range: diagnostics[0]?.range ?? { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } },
    context: { diagnostics, ...(only !== undefined && { only }) },
  });

function editsOf(action: CodeAction | undefined): readonly TextEdit[] {
  return action?.edit?.documentChanges?.flatMap((change) => (change as TextDocumentEdit).edits as TextEdit[]) ?? [];
}

const versionOf = (action: CodeAction | undefined) =>
  (action?.edit?.documentChanges?.[0] as TextDocumentEdit | undefined)?.textDocument.version;

describe('the fix of a remark', () => {
  const longer = text.replace('status', 'id: OP-1\nstatus');
  const line = { start: { line: 2, character: 0 }, end: { line: 2, character: 0 } };

  it('is made where its words stand now, though the remark is one about the text before', async () => {
    await editor.open(note, text);
    const before = ofCheck('decimal-comma');
    await editor.change(note, [{ range: line, text: 'id: OP-1\n' }], longer);
    // The editor has moved the remark with its words.
    const moved = before.map((remark) => ({
      ...remark,
      range: { start: { line: 5, character: 9 }, end: { line: 5, character: 15 } },
    }));
    const [fix] = await actionsFor(moved);
    expect(fix?.title).toBe('Write “7.5 mm”');
    expect(versionOf(fix)).toBe(2);
    expect(applied(longer, editsOf(fix))).toBe(longer.replace('7,5', '7.5'));
  });

  it('is not offered for a text in which the remark is no longer made there', async () => {
    await editor.open(note, text);
    const before = ofCheck('decimal-comma');
    await editor.change(note, [{ range: line, text: 'id: OP-1\n' }], longer);
    expect(await actionsFor(before)).toEqual([]);
  });

  it('is found again where the editor kept nothing but the remark', async () => {
    await editor.open(note, text);
    const plain = ofCheck('decimal-comma').map(({ data: _data, ...remark }) => remark);
    const [fix] = await actionsFor(plain);
    expect(applied(text, editsOf(fix))).toBe(text.replace('7,5', '7.5'));
  });

  it('is done by a key without looking only where it cannot change what is meant', async () => {
    const both = text.replace('preop', 'urgency: electiv\npreop');
    await editor.open(note, both);
    const [unsafe] = await actionsFor(ofCheck('unknown-word'));
    expect(unsafe).toMatchObject({ title: 'Write “elective”', isPreferred: false });
    const [safe] = await actionsFor(ofCheck('decimal-comma'));
    expect(safe).toMatchObject({ isPreferred: true });
  });
});

describe('every safe fix at once', () => {
  const all = 'source.fixAll.sideport';

  it('leaves out what has to be looked at', async () => {
    const both = text.replace('preop', 'id: 0031\nurgency: electiv\npreop');
    await editor.open(note, both);
    const actions = await actionsFor([], [all]);
    expect(actions.map(({ title, kind }) => [title, kind])).toEqual([['Do every safe fix', all]]);
    expect(applied(both, editsOf(actions[0]))).toBe(both.replace('7,5', '7.5').replace('0031', '"0031"'));
  });

  it('does only the first of two that touch the same words', async () => {
    const at = { start: text.indexOf('7,5'), end: text.indexOf('7,5') + '7,5 mm'.length };
    const edits = [{ span: { ...at, start: at.start + 2 }, text: 'x' }];
    vi.spyOn(allChecks.at(-1)!, 'run').mockImplementation((_context, say) =>
      say({ at, message: 'Another remark', fixes: [{ title: 'Write x', safety: 'safe', edits }] }),
    );
    await editor.open(note, text);
    const titles = editor.diagnostics(note).filter(({ message }) => message === 'Another remark');
    expect(titles).toHaveLength(1);
    const [fix] = await actionsFor([], [all]);
    expect(editsOf(fix)).toHaveLength(1);
  });

  it('is no action where there is none', async () => {
    await editor.open(note, text.replace('7,5', '7.5'));
    expect(await actionsFor([], [all])).toEqual([]);
  });
});
