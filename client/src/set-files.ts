import * as vscode from 'vscode';
import { askEditor, type FileParams, type FolderParams } from '@sideport/server/language-server/own-requests.ts';
import type { NoteClient } from './note-client.ts';

const NOTE = /\.opnote\.yaml$/;
const DEPARTMENT = 'sideport.yaml';
const PASSED_OVER = new Set(['node_modules', '.git']);
const DEEPEST = 12;

/** Lets the server read the files of a set, and its own pages, where it has no disk of its own, as in a browser. */
export function answerForFiles(client: NoteClient, extension: vscode.Uri): void {
  client.answer(askEditor.listSet, ({ folder, deep }: FolderParams) =>
    listBelow(vscode.Uri.parse(folder, true), deep ? DEEPEST : 0),
  );
  client.answer(askEditor.readFile, ({ uri }: FileParams) => read(vscode.Uri.parse(uri, true)));
  client.answer(askEditor.readCheckPages, () => read(vscode.Uri.joinPath(extension, 'dist', 'check-pages.json')));
  client.answer(askEditor.dictationAddress, async () =>
    vscode.Uri.joinPath(extension, 'dist', 'dictation.js').toString(true),
  );
}

async function listBelow(folder: vscode.Uri, depth: number): Promise<readonly string[]> {
  const entries = await vscode.workspace.fs.readDirectory(folder).then(
    (found) => found,
    () => [],
  );
  const lists = await Promise.all(
    entries.map(async ([name, type]) => {
      const uri = vscode.Uri.joinPath(folder, name);
      // A linked folder is not followed: it could lead back to a folder above.
      if (type === vscode.FileType.Directory) {
        return depth > 0 && !PASSED_OVER.has(name) ? await listBelow(uri, depth - 1) : [];
      }
      return NOTE.test(name) || name === DEPARTMENT ? [uri.toString()] : [];
    }),
  );
  return lists.flat();
}

async function read(uri: vscode.Uri): Promise<string | null> {
  try {
    return new TextDecoder('utf-8', { ignoreBOM: true }).decode(await vscode.workspace.fs.readFile(uri));
  } catch {
    return null;
  }
}
