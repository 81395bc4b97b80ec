import { beforeEach, expect, test, vi } from 'vitest';
import type { NoteClient } from '../../client/src/note-client.ts';
import { newNote } from '../../client/src/new-note.ts';

/** As much of the editor as making a note needs: its files in memory, and what it was told. */
const editor = vi.hoisted(() => ({
  files: new Map<string, string>(),
  errors: [] as string[],
  shown: [] as string[],
  inserted: [] as string[],
  /** Whether a file that is looked for seems not to be there, as one that is made at that very moment. */
  blind: false,
}));

vi.mock('vscode', () => {
  class FileSystemError extends Error {
    readonly code = 'FileNotFound';
  }
  class WorkspaceEdit {
    readonly made: { uri: string; options: { overwrite?: boolean; ignoreIfExists?: boolean } }[] = [];
    createFile(uri: string, options: { overwrite?: boolean; ignoreIfExists?: boolean }): void {
      this.made.push({ uri, options });
    }
  }
  return {
    FileSystemError,
    WorkspaceEdit,
    SnippetString: class {
      constructor(readonly value: string) {}
    },
    Uri: { joinPath: (folder: string, name: string) => `${folder}/${name}` },
    workspace: {
      workspaceFolders: [{ uri: 'file:///set' }],
      fs: {
        stat: async (uri: string) => {
          if (editor.blind || !editor.files.has(uri)) throw new FileSystemError();
          return {};
        },
        writeFile: async (uri: string) => void editor.files.set(uri, ''),
      },
      // As the interface says of WorkspaceEdit.createFile: without `overwrite` a file that exists makes the edit fail.
      applyEdit: async ({ made }: WorkspaceEdit) =>
        made.every(({ uri, options: { overwrite, ignoreIfExists } }) => {
          if (editor.files.has(uri) && overwrite !== true) return ignoreIfExists === true;
          editor.files.set(uri, '');
          return true;
        }),
    },
    window: {
      showErrorMessage: (message: string) => void editor.errors.push(message),
      showTextDocument: async (uri: string) => {
        editor.shown.push(uri);
        return { insertSnippet: async ({ value }: { value: string }) => void editor.inserted.push(value) };
      },
    },
  };
});

const client = { ask: async () => ({ snippet: 'opnote: 1', fileName: 'a.opnote.yaml' }) } as unknown as NoteClient;

beforeEach(() => {
  editor.files.clear();
  for (const list of [editor.errors, editor.shown, editor.inserted]) list.length = 0;
  editor.blind = false;
});

test('a new note is an empty file, into which the snippet is written', async () => {
  await newNote(client);
  expect([...editor.files]).toEqual([['file:///set/a.opnote.yaml', '']]);
  expect(editor.inserted).toEqual(['opnote: 1']);
});

test('a file that is there already keeps every letter, and the surgeon is told', async () => {
  editor.files.set('file:///set/a.opnote.yaml', 'Dictated in theatre');
  await newNote(client);
  expect([...editor.files.values()]).toEqual(['Dictated in theatre']);
  expect(editor.shown).toEqual([]);
  expect(editor.errors).toEqual([
    'a.opnote.yaml is in the folder already and was left as it is. Make the note again: it then gets another name.',
  ]);
});

test('a file that is made at the same moment keeps every letter too', async () => {
  editor.files.set('file:///set/a.opnote.yaml', 'Dictated in theatre');
  editor.blind = true;
  await expect(newNote(client)).rejects.toThrow('No file was made');
  expect([...editor.files.values()]).toEqual(['Dictated in theatre']);
  expect(editor.inserted).toEqual([]);
});
