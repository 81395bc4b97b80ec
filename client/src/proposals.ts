import * as vscode from 'vscode';
import type { CompletionMiddleware } from 'vscode-languageclient';
import { isChecked } from './documents.ts';
import { inBackground } from './guard.ts';

/** A field that has just got its colon and blank, or the dash of an entry. */
const ASKS = /^\s*(?:(?:- +)*[\w-]+:|-) $/;

/** A blank behind a field has asked, and nothing has been proposed yet. */
let asked = false;

/** Opens the proposals at the cursor as if the editor had done so by itself: then Enter never takes what changes nothing. */
export async function proposeAgain(): Promise<void> {
  await vscode.commands.executeCommand('editor.action.triggerSuggest', { auto: true });
}

/** Asks for the values of a field once its colon and blank are typed. */
export function proposeBehindFields(): vscode.Disposable {
  return vscode.workspace.onDidChangeTextDocument(({ document, contentChanges: [change, ...others] }) => {
    if (change?.text !== ' ' || others.length > 0 || !isChecked(document)) return;
    if (document !== vscode.window.activeTextEditor?.document) return;
    const { text } = document.lineAt(change.range.start.line);
    if (ASKS.test(text) && text.length === change.range.start.character + 1) {
      asked = true;
      inBackground(proposeAgain());
    }
  });
}

/** Whoever types fast is on the next line when the question arrives: nothing must open there by itself. */
export const proposalMiddleware: CompletionMiddleware = {
  provideCompletionItem: (document, position, context, token, next) => {
    const late = asked && document.lineAt(position.line).isEmptyOrWhitespace;
    asked = false;
    return late ? [] : next(document, position, context, token);
  },
};
