import * as vscode from 'vscode';
import {
  askEditor,
  type FileParams,
  type FolderEntry,
  type FolderParams,
  type StoredFile,
} from '@sideport/server/language-server/own-requests.ts';
import type { NoteClient } from './note-client.ts';

/** What is no passing trouble: asked again, the answer is the same. */
const NOT_THERE = ['FileNotFound', 'FileIsADirectory', 'FileNotADirectory', 'NoPermissions'];

/** Lets the server read the files of a set, and its own pages, where it has no disk of its own, as in a browser. */
export function answerForFiles(client: NoteClient, extension: vscode.Uri): void {
  client.answer(askEditor.listFolder, ({ folder }: FolderParams) => list(vscode.Uri.parse(folder, true)));
  client.answer(askEditor.readFile, ({ uri }: FileParams) => read(vscode.Uri.parse(uri, true)));
  client.answer(
    askEditor.readCheckPages,
    async () => (await read(vscode.Uri.joinPath(extension, 'dist', 'check-pages.json')))?.text ?? null,
  );
  client.answer(askEditor.apartAddress, async () => vscode.Uri.joinPath(extension, 'dist', 'apart.js').toString(true));
}

async function list(folder: vscode.Uri): Promise<readonly FolderEntry[]> {
  const entries = await whereThere(() => vscode.workspace.fs.readDirectory(folder));
  return (entries ?? []).map(([name, type]) => ({ name, kind: kindOf(type) }));
}

function kindOf(type: vscode.FileType): FolderEntry['kind'] {
  if (type === vscode.FileType.Directory) return 'folder';
  return type === vscode.FileType.File ? 'file' : 'other';
}

async function read(uri: vscode.Uri): Promise<StoredFile | null> {
  const bytes = await whereThere(() => vscode.workspace.fs.readFile(uri));
  return bytes === null ? null : { text: textOf(bytes) };
}

function textOf(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return null;
  }
}

async function whereThere<T>(ask: () => Thenable<T>): Promise<T | null> {
  try {
    return await ask();
  } catch (error) {
    if (error instanceof vscode.FileSystemError && NOT_THERE.includes(error.code)) return null;
    throw error;
  }
}
