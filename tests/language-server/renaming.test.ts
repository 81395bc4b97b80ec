import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { TextDocumentEdit, WorkspaceEdit } from 'vscode-languageserver';
import { applied, fullCapabilities, TestEditor } from './editor.ts';
import { MemoryFiles } from './memory-files.ts';

const root = 'file:///set';
const op = `${root}/op.opnote.yaml`;
const fu = `${root}/fu.opnote.yaml`;
const other = `${root}/other.opnote.yaml`;
const department = `${root}/sideport.yaml`;
const lists = 'sideport: 1\nstaff:\n  - ref: S-01\n  - ref: S-02\n';
const operation = 'opnote: 1\nrecord: operation\nid: OP-1\npatient:\n  ref: P-1\nteam:\n  - ref: S-01\n';
const followUp = 'opnote: 1\nrecord: follow-up\nid: FU-1\noperation: OP-1\npatient:\n  ref: P-1\n';
const another = 'opnote: 1\nrecord: operation\nid: OP-2\npatient:\n  ref: P-2\nteam:\n  - ref: S-02\n';

let files: MemoryFiles;
let editor: TestEditor;
const stored = { [department]: lists, [op]: operation, [fu]: followUp, [other]: another };
beforeEach(async () => {
  files = new MemoryFiles(stored);
  editor = await TestEditor.inProcess({ files });
});
afterEach(() => editor.stop());

/** Renames the name with which these words of the open note end. */
const rename = (uri: string, text: string, words: string, newName: string, by = editor) =>
  by.request<WorkspaceEdit>('textDocument/rename', {
    textDocument: { uri },
    position: by.position(uri, text.indexOf(words) + words.length),
    newName,
  });

function textsAfter(edit: WorkspaceEdit): Record<string, string> {
  const changes = (edit.documentChanges ?? []) as TextDocumentEdit[];
  return Object.fromEntries(
    changes.map(({ textDocument: { uri }, edits }) => [uri, applied(files.content.get(uri) ?? '', edits as never)]),
  );
}

describe('a new name', () => {
  it('is written where the old one stands now, also in notes that were written to by something else', async () => {
    await editor.open(op, operation);
    await rename(op, operation, 'OP-1', 'OP-7');
    const visit = followUp.replace('record', '# written again by a colleague\nrecord');
    files.content.set(fu, visit);
    files.content.set(`${root}/late.opnote.yaml`, followUp);
    files.content.delete(other);
    const edit = await rename(op, operation, 'OP-1', 'OP-7');
    expect(textsAfter(edit)).toEqual({
      [op]: operation.replace('OP-1', 'OP-7'),
      [fu]: visit.replace('OP-1', 'OP-7'),
      [`${root}/late.opnote.yaml`]: followUp.replace('OP-1', 'OP-7'),
    });
    await expect(rename(op, operation, 'OP-1', 'OP-2')).resolves.toBeTruthy();
  });

  it('is written in a note that was opened this very moment', async () => {
    await editor.open(op, operation);
    const fresh = `${root}/fresh.opnote.yaml`;
    await editor.connection.sendNotification('textDocument/didOpen', {
      textDocument: { uri: fresh, languageId: 'opnote', version: 5, text: followUp },
    });
    const named = await editor.request<WorkspaceEdit>('textDocument/rename', {
      textDocument: { uri: fresh },
      position: { line: 3, character: 12 },
      newName: 'OP-7',
    });
    expect(named.documentChanges).toContainEqual(expect.objectContaining({ textDocument: { uri: fresh, version: 5 } }));
  });

  it('is not given when the other notes cannot be read', async () => {
    await editor.open(op, operation);
    await rename(op, operation, 'OP-1', 'OP-7');
    files.wait = () => Promise.reject(new Error('away'));
    await expect(rename(op, operation, 'OP-1', 'OP-7')).rejects.toThrow(
      'The other notes of the set cannot be read just now; nothing was renamed.',
    );
  });
});

describe('a name that is in use', () => {
  it.each([
    [
      'OP-1',
      'OP-2',
      '“OP-2” is the id of a note already, in other.opnote.yaml: it and “OP-1” could not be told apart any more. Choose a name that is not in use.',
    ],
    [
      'P-1',
      'P-2',
      '“P-2” is the reference of a patient already, in other.opnote.yaml: it and “P-1” could not be told apart any more. Nothing was renamed. If a note names the wrong patient, put it right in that note alone.',
    ],
  ])('is refused to another note and another patient: %s', async (from, to, message) => {
    await editor.open(op, operation);
    await expect(rename(op, operation, `: ${from}`, to)).rejects.toThrow(message);
  });

  it('is given to staff only once that is confirmed, or is refused where an editor cannot ask', async () => {
    await editor.open(op, operation);
    const edit = await rename(op, operation, 'S-01', 'S-02');
    expect(edit.changeAnnotations).toEqual({
      unclear: {
        label: 'The name is in use',
        needsConfirmation: true,
        description:
          '“S-02” is the name of a member of staff already, in other.opnote.yaml: it and “S-01” could not be told apart any more. Choose a name that is not in use.',
      },
    });
    const edits = (edit.documentChanges ?? []).flatMap((change) => (change as TextDocumentEdit).edits);
    expect(edits).toHaveLength(2);
    expect(edits.every((each) => 'annotationId' in each && each.annotationId === 'unclear')).toBe(true);
    const plain = await TestEditor.inProcess({ files, capabilities: {} });
    await plain.open(op, operation);
    await expect(rename(op, operation, 'S-01', 'S-02', plain)).rejects.toThrow(/already/);
    await plain.stop();
  });

  it('is no other name when it is the same', async () => {
    await editor.open(op, operation);
    expect(textsAfter(await rename(op, operation, 'OP-1', 'OP-1'))[op]).toBe(operation);
  });
});

describe('a signed note', () => {
  const signed = `${followUp}signed:\n  - by: S-02\n    meaning: author\n    at: 2031-04-08T16:48+01:00\n`;

  it('gets another name only once that is confirmed', async () => {
    files.content.set(fu, signed);
    await editor.open(op, operation);
    const edit = await rename(op, operation, 'OP-1', 'OP-7');
    expect(edit.changeAnnotations?.['signed']).toMatchObject({ needsConfirmation: true });
    const marked = (edit.documentChanges as TextDocumentEdit[]).map(({ textDocument: { uri }, edits }) => [
      uri,
      edits.map((each) => ('annotationId' in each ? each.annotationId : undefined)),
    ]);
    expect(marked).toEqual([
      [op, [undefined]],
      [fu, ['signed']],
    ]);
  });

  it('is changed as the others where an editor cannot ask', async () => {
    files.content.set(fu, signed);
    const { changeAnnotationSupport: _none, ...edits } = fullCapabilities.workspace?.workspaceEdit ?? {};
    const capabilities = { ...fullCapabilities, workspace: { workspaceEdit: edits } };
    const plain = await TestEditor.inProcess({ files, capabilities });
    await plain.open(op, operation);
    const edit = await rename(op, operation, 'OP-1', 'OP-7', plain);
    expect(edit.changeAnnotations).toBeUndefined();
    await plain.stop();
  });
});
