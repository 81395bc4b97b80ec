import * as vscode from 'vscode';
import { isChecked } from './documents.ts';

/**
 * An editor that was restored before the extension was known has the indentation of plain text; it is given the one
 * that the settings ask for in a note.
 */
export function applyIndentationSettings(): void {
  for (const editor of vscode.window.visibleTextEditors) {
    if (!isChecked(editor.document)) continue;
    const settings = vscode.workspace.getConfiguration('editor', editor.document);
    const tabSize = settings.get<number>('tabSize');
    const insertSpaces = settings.get<boolean>('insertSpaces');
    if (tabSize !== undefined && insertSpaces !== undefined) editor.options = { tabSize, insertSpaces };
  }
}
