import * as vscode from 'vscode';
import { askServer, type Picture, type PictureParams } from '@sideport/server/language-server/own-requests.ts';
import { isNote } from '../documents.ts';
import { inBackground } from '../guard.ts';
import type { NoteClient } from '../note-client.ts';
import type { FromPage, ToPage } from './messages.ts';
import { pageFrame } from './page-frame.ts';

const SETTLE_MS = 120;

/** The picture beside the text: it follows the cursor, and a part of it leads back to its line. */
export class PicturePanel implements vscode.Disposable {
  readonly #client: NoteClient;
  readonly #extension: vscode.Uri;
  readonly #following: vscode.Disposable;
  #panel: vscode.WebviewPanel | undefined;
  /** The note that is drawn; it stays when the surgeon turns to another kind of file or to the picture itself. */
  #editor: vscode.TextEditor | undefined;
  #settle: ReturnType<typeof setTimeout> | undefined;
  #asked = 0;

  constructor(client: NoteClient, extension: vscode.Uri) {
    this.#client = client;
    this.#extension = extension;
    this.#following = vscode.Disposable.from(
      vscode.window.onDidChangeActiveTextEditor((editor) => this.#turnTo(editor)),
      vscode.window.onDidChangeTextEditorSelection(({ textEditor }) => this.#turnTo(textEditor)),
      vscode.workspace.onDidChangeTextDocument(({ document }) => {
        if (document === this.#editor?.document) this.#drawSoon();
      }),
      client.onChanged(() => this.#drawSoon()),
    );
  }

  async show(): Promise<void> {
    this.#turnTo(vscode.window.activeTextEditor);
    if (this.#panel !== undefined) {
      this.#panel.reveal(undefined, true);
      return;
    }
    const dist = vscode.Uri.joinPath(this.#extension, 'dist');
    const beside = { viewColumn: vscode.ViewColumn.Beside, preserveFocus: true };
    const panel = vscode.window.createWebviewPanel('sideport.picture', 'Picture of the eye', beside, {
      enableScripts: true,
      localResourceRoots: [dist],
    });
    panel.onDidDispose(() => (this.#panel = undefined));
    panel.webview.onDidReceiveMessage((message: FromPage) => inBackground(this.#hear(message)));
    const script = panel.webview.asWebviewUri(vscode.Uri.joinPath(dist, 'picture-page.js'));
    panel.webview.html = pageFrame(script.toString(), panel.webview.cspSource);
    this.#panel = panel;
  }

  dispose(): void {
    clearTimeout(this.#settle);
    this.#following.dispose();
    this.#panel?.dispose();
  }

  #turnTo(editor: vscode.TextEditor | undefined): void {
    if (!isNote(editor?.document)) return;
    this.#editor = editor;
    this.#drawSoon();
  }

  #drawSoon(): void {
    clearTimeout(this.#settle);
    if (this.#panel !== undefined) this.#settle = setTimeout(() => inBackground(this.#draw()), SETTLE_MS);
  }

  async #draw(): Promise<void> {
    const asked = (this.#asked += 1);
    const picture = this.#editor === undefined ? null : await this.#ask(this.#editor);
    // An older answer that comes late would draw an eye that is no longer written.
    if (asked === this.#asked) await this.#panel?.webview.postMessage({ picture } satisfies ToPage);
  }

  #ask({ document, selection }: vscode.TextEditor): Promise<Picture | null> {
    const { line, character } = selection.active;
    const params: PictureParams = { uri: document.uri.toString(), line, character };
    return this.#client.ask<Picture>(askServer.picture, params);
  }

  async #hear(message: FromPage): Promise<void> {
    if (message.kind === 'ready') {
      await this.#draw();
      return;
    }
    if (this.#editor === undefined) return;
    const place = new vscode.Position(message.line, message.character);
    const { document, viewColumn } = this.#editor;
    await vscode.window.showTextDocument(document, {
      selection: new vscode.Range(place, place),
      ...(viewColumn === undefined ? {} : { viewColumn }),
    });
  }
}
