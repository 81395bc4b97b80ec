import * as vscode from 'vscode';
import { likelyIndentation } from './indentation.ts';

const ATTEMPTS = 50;

/** The indentation that was asked for before and may still be on its way: the next line takes its own from it. */
let earlier: Promise<void> = Promise.resolve();

/**
 * Tab on a blank line goes straight to the indentation that the line is likely to want; anywhere else it is the
 * editor's own Tab. (Enter itself adds nothing, so that text typed by a scanner, by dictation or by a text expander
 * arrives exactly as it was sent.)
 */
export async function indentBlankLine(): Promise<void> {
  const editor = vscode.window.activeTextEditor;
  if (editor === undefined) return;
  const line = editor.document.lineAt(editor.selection.active.line);
  if (editor.selections.length > 1 || !line.isEmptyOrWhitespace) {
    await vscode.commands.executeCommand('tab');
    return;
  }
  earlier = earlier.then(() => indent(editor, line.lineNumber));
  await earlier;
}

async function indent(editor: vscode.TextEditor, line: number): Promise<void> {
  const quietly = { undoStopAfter: false, undoStopBefore: false };
  // An edit is refused when the surgeon has typed on meanwhile; blanks at the start of that line are right all the same.
  for (let attempt = 0; attempt < ATTEMPTS; attempt += 1) {
    const missing = missingBlanks(editor.document, line);
    if (missing <= 0) {
      await vscode.commands.executeCommand('tab');
      return;
    }
    if (await editor.edit((edit) => edit.insert(new vscode.Position(line, 0), ' '.repeat(missing)), quietly)) return;
  }
}

function missingBlanks(document: vscode.TextDocument, line: number): number {
  const before = document.getText(new vscode.Range(0, 0, line, 0)).split(/\r?\n/);
  return likelyIndentation(before) - document.lineAt(line).firstNonWhitespaceCharacterIndex;
}
