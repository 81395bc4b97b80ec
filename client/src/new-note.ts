import * as vscode from 'vscode';
import { askServer, type NewNote } from '@sideport/server/language-server/own-requests.ts';
import type { NoteClient } from './note-client.ts';

/** Makes a note from what the department usually does, in the folder of the file in view, and walks its places by Tab. */
export async function newNote(client: NoteClient): Promise<void> {
  const folder = await folderForNote();
  if (folder === undefined) {
    void vscode.window.showInformationMessage('Open the folder in which the notes are kept, then make the note.');
    return;
  }
  const note = await client.ask<NewNote>(askServer.newNote, { folder: folder.toString(), today: today(new Date()) });
  if (note === null) {
    void vscode.window.showErrorMessage(
      'The note could not be made, because nothing is checking notes. Start checking again.',
    );
    return;
  }
  const uri = vscode.Uri.joinPath(folder, note.fileName);
  if (await isTaken(uri)) {
    void vscode.window.showErrorMessage(
      `${note.fileName} is in the folder already and was left as it is. Make the note again: it then gets another name.`,
    );
    return;
  }
  await makeFile(uri);
  const editor = await vscode.window.showTextDocument(uri);
  await editor.insertSnippet(new vscode.SnippetString(note.snippet));
}

/** Makes an empty file. Fails where something stands there by now: an edit that creates a file empties none. */
async function makeFile(uri: vscode.Uri): Promise<void> {
  const edit = new vscode.WorkspaceEdit();
  edit.createFile(uri, { overwrite: false, ignoreIfExists: false });
  if (!(await vscode.workspace.applyEdit(edit))) throw new Error('No file was made');
}

async function isTaken(uri: vscode.Uri): Promise<boolean> {
  try {
    await vscode.workspace.fs.stat(uri);
    return true;
  } catch (error) {
    if (error instanceof vscode.FileSystemError && error.code === 'FileNotFound') return false;
    throw error;
  }
}

async function folderForNote(): Promise<vscode.Uri | undefined> {
  const active = vscode.window.activeTextEditor?.document.uri;
  if (active !== undefined && vscode.workspace.getWorkspaceFolder(active) !== undefined) {
    return vscode.Uri.joinPath(active, '..');
  }
  const folders = vscode.workspace.workspaceFolders ?? [];
  if (folders.length <= 1) return folders[0]?.uri;
  return (await vscode.window.showWorkspaceFolderPick({ placeHolder: 'Where should the note stand?' }))?.uri;
}

function today(now: Date): string {
  const parts = [now.getFullYear(), now.getMonth() + 1, now.getDate()];
  return parts.map((part) => String(part).padStart(2, '0')).join('-');
}
