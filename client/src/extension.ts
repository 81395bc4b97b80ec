import * as vscode from 'vscode';
import { LanguageClient, TransportKind } from 'vscode-languageclient/node';
import { activateWith } from './activate.ts';

/** Entry for an editor with Node: the server runs as a process of its own. */
export async function activate(context: vscode.ExtensionContext): Promise<void> {
  const module = vscode.Uri.joinPath(context.extensionUri, 'dist', 'language-server.cjs').fsPath;
  const server = { module, transport: TransportKind.ipc };
  await activateWith(context, (options) => new LanguageClient('sideport', 'Sideport', server, options));
}
