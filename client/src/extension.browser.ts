import * as vscode from 'vscode';
import { LanguageClient } from 'vscode-languageclient/browser';
import { activateWith } from './activate.ts';

/** Entry for an editor in a browser: the server runs in a worker. */
export async function activate(context: vscode.ExtensionContext): Promise<void> {
  const address = vscode.Uri.joinPath(context.extensionUri, 'dist', 'language-server.worker.js').toString(true);
  const makeWorker = async (): Promise<Worker> => new Worker(address);
  await activateWith(context, (options) => new LanguageClient('sideport', 'Sideport', makeWorker, options));
}
