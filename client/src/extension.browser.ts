import * as vscode from 'vscode';
import {
  BrowserMessageReader,
  BrowserMessageWriter,
  LanguageClient,
  type MessageTransports,
} from 'vscode-languageclient/browser';
import { activateWith } from './activate.ts';

/** Entry for an editor in a browser: the server runs in a worker. */
export async function activate(context: vscode.ExtensionContext): Promise<void> {
  const address = vscode.Uri.joinPath(context.extensionUri, 'dist', 'language-server.worker.js').toString(true);
  let worker: Worker | undefined;
  context.subscriptions.push({ dispose: () => worker?.terminate() });
  // The editor replaces the class of workers by one of its own, which the client would not know for a worker.
  const start = async (): Promise<MessageTransports> => {
    worker?.terminate();
    worker = new Worker(address);
    return { reader: new BrowserMessageReader(worker), writer: new BrowserMessageWriter(worker) };
  };
  await activateWith(context, (options) => new LanguageClient('sideport', 'Sideport', start, options));
}
