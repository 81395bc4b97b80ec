import * as vscode from 'vscode';

/** Lets work go on by itself. That it failed is not passed on: an editor logs such errors, and they may carry words of a note. */
export function inBackground(work: Thenable<unknown>): void {
  work.then(undefined, () => undefined);
}

/**
 * Registers a command whose failure tells the surgeon in one plain sentence that it did not work. The error itself is
 * not shown: it could carry words of the note.
 */
export function registerCommand(
  id: string,
  run: (...args: unknown[]) => Promise<void>,
  failed: string,
): vscode.Disposable {
  return vscode.commands.registerCommand(id, async (...args: unknown[]) => {
    try {
      await run(...args);
    } catch {
      void vscode.window.showErrorMessage(failed);
    }
  });
}
