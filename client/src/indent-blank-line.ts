import * as vscode from 'vscode';
import { likelyIndentation } from './indentation.ts';

const ATTEMPTS = 50;

/**
 * Tab on a blank line goes straight to the indentation that the line is likely to want; anywhere else it is the
 * editor's own Tab. (Enter itself adds nothing, so that text typed by a scanner, by dictation or by a text expander
 * arrives exactly as it was sent.)
 */
export async function indentBlankLine(): Promise<void> {
  const editor = vscode.window.activeTextEditor;
  if (editor === undefined) return;
  const { document, selections } = editor;
  const line = document.lineAt(editor.selection.active.line);
  const before = document.getText(new vscode.Range(0, 0, line.lineNumber, 0)).split(/\r?\n/);
  const missing = likelyIndentation(before) - line.text.length;
  if (selections.length > 1 || !line.isEmptyOrWhitespace || missing <= 0) {
    await vscode.commands.executeCommand('tab');
    return;
  }
  // An edit is refused when the surgeon has typed on meanwhile; blanks at the start of that line are right all the same.
  for (let attempt = 0; attempt < ATTEMPTS; attempt += 1) {
    const quietly = { undoStopAfter: false, undoStopBefore: false };
    if (await editor.edit((edit) => edit.insert(line.range.start, ' '.repeat(missing)), quietly)) return;
  }
}
