import { afterEach, describe, expect, it } from 'vitest';
import type { CodeAction } from 'vscode-languageserver';
import type { NewNote } from '../../server/src/language-server/own-requests.ts';
import { TestEditor } from './editor.ts';
import { MemoryFiles } from './memory-files.ts';

const root = 'file:///set';
const operation = 'opnote: 1\nrecord: operation\nid: OP-1\npatient:\n  ref: P-1\n';
const today = '2031-03-20';
const first = 'operation-2031-03-20.opnote.yaml';

let editor: TestEditor;
afterEach(() => editor.stop());

const newNote = (folder = root) => editor.request<NewNote | null>('sideport/newNote', { folder, today });

describe('the name of a new note', () => {
  it('is that of the day where nothing stands under it', async () => {
    editor = await TestEditor.inProcess({ files: new MemoryFiles({ [`${root}/inner/${first}`]: operation }) });
    expect((await newNote())?.fileName).toBe(first);
  });

  it.each([
    ['a note', operation],
    ['a text that is no note', 'Dictated in theatre, to be put into fields\n'],
    ['a list', '- opnote: 1\n'],
    ['an empty file', ''],
    ['a file that is no text', null],
  ])('is another one where %s stands under it', async (_what, text) => {
    editor = await TestEditor.inProcess({ files: new MemoryFiles({ [`${root}/${first}`]: text }) });
    expect((await newNote())?.fileName).toBe('operation-2031-03-20-2.opnote.yaml');
  });

  it('is another one where a link or a name in capitals stands there, or an open document does', async () => {
    const files = new MemoryFiles({ [`${root}/OPERATION-2031-03-20-2.opnote.yaml`]: operation });
    files.links.add(`${root}/${first}`);
    editor = await TestEditor.inProcess({ files });
    await editor.open(`${root}/operation-2031-03-20-3.opnote.yaml`, '');
    expect((await newNote())?.fileName).toBe('operation-2031-03-20-4.opnote.yaml');
  });

  it('is free however deep the folder is', async () => {
    const deep = `${root}/a/b/c/d/e/f/g/h/i/j/k/l/m`;
    const files = new MemoryFiles({ [`${root}/sideport.yaml`]: 'sideport: 1\n', [`${deep}/${first}`]: operation });
    editor = await TestEditor.inProcess({ files });
    expect((await newNote(deep))?.fileName).toBe('operation-2031-03-20-2.opnote.yaml');
  });

  it('is not made up where it cannot be said what stands there', async () => {
    const files = new MemoryFiles();
    files.wait = () => Promise.reject(new Error('away'));
    editor = await TestEditor.inProcess({ files });
    expect(await newNote()).toBeNull();
  });
});

describe('the follow-up file beside a note', () => {
  const op = `${root}/op%201.opnote.yaml`;

  async function addressOffered(): Promise<string | undefined> {
    await editor.open(op, operation);
    const position = { line: 2, character: 4 };
    const actions = await editor.request<CodeAction[]>('textDocument/codeAction', {
      textDocument: { uri: op },
      range: { start: position, end: position },
      context: { diagnostics: [] },
    });
    const change = actions.find(({ title }) => title === 'Add the follow-up file')?.edit?.documentChanges?.[0];
    return change !== undefined && 'kind' in change && change.kind === 'create' ? change.uri : undefined;
  }

  it('has the name of the note, and a number where that is taken by anything', async () => {
    const files = new MemoryFiles({ [op]: operation });
    editor = await TestEditor.inProcess({ files });
    expect(await addressOffered()).toBe(`${root}/op%201.follow-up.opnote.yaml`);
    files.content.set(`${root}/op%201.follow-up.opnote.yaml`, 'no note');
    files.links.add(`${root}/op%201.follow-up-2.opnote.yaml`);
    await editor.close(op);
    expect(await addressOffered()).toBe(`${root}/op%201.follow-up-3.opnote.yaml`);
  });

  it('is not offered where it cannot be said what stands there', async () => {
    const files = new MemoryFiles();
    files.wait = () => Promise.reject(new Error('away'));
    editor = await TestEditor.inProcess({ files });
    expect(await addressOffered()).toBeUndefined();
  });
});
