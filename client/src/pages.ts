import * as vscode from 'vscode';
import { askServer, editorCommands, type Page } from '@sideport/server/language-server/own-requests.ts';
import type { NoteClient } from './note-client.ts';

const SCHEME = 'sideport';
const SETTLE_MS = 300;
const PAGE_OPENS_MS = 10_000;

/** The address of the page of a check. The pages come from the server that stands beside the extension: no network. */
function checkPage(check: string): vscode.Uri {
  return vscode.Uri.from({ scheme: SCHEME, path: `/checks/${check}.md` });
}

/** The address of the page that lists what was computed from a note. */
function computedPage(note: vscode.Uri): vscode.Uri {
  return vscode.Uri.from({ scheme: SCHEME, path: '/computed values.md', query: note.toString() });
}

/** The address of the page that says a note as prose. */
function prosePage(note: vscode.Uri): vscode.Uri {
  return vscode.Uri.from({ scheme: SCHEME, path: '/note as prose.md', query: note.toString() });
}

/** The check's name in hover and Problems becomes a link to its page. */
export function linkToPage(diagnostic: vscode.Diagnostic): vscode.Diagnostic {
  const id = checkOf(diagnostic);
  if (id === undefined) return diagnostic;
  const target = vscode.Uri.from({
    scheme: 'command',
    path: editorCommands.explainCheck,
    query: JSON.stringify([id]),
  });
  diagnostic.code = { value: id, target };
  return diagnostic;
}

function checkOf({ code }: vscode.Diagnostic): string | undefined {
  const value = typeof code === 'object' ? code.value : code;
  return typeof value === 'string' ? value : undefined;
}

/** Shows pages of the server as rendered text, and renews those of a note while it is edited. */
export class Pages implements vscode.TextDocumentContentProvider, vscode.Disposable {
  readonly #client: NoteClient;
  readonly #changed = new vscode.EventEmitter<vscode.Uri>();
  readonly #disposables: vscode.Disposable[];
  readonly onDidChange = this.#changed.event;
  #settle: ReturnType<typeof setTimeout> | undefined;

  constructor(client: NoteClient) {
    this.#client = client;
    this.#disposables = [
      this.#changed,
      vscode.workspace.registerTextDocumentContentProvider(SCHEME, this),
      vscode.workspace.onDidChangeTextDocument(({ document }) => {
        clearTimeout(this.#settle);
        this.#settle = setTimeout(() => {
          for (const page of [computedPage(document.uri), prosePage(document.uri)]) this.#changed.fire(page);
        }, SETTLE_MS);
      }),
    ];
  }

  async provideTextDocumentContent(uri: vscode.Uri): Promise<string> {
    const page = await this.#pageAt(uri);
    return (
      page?.markdown ?? 'This page could not be made. If notes are not being checked, use **Start checking again**.'
    );
  }

  #pageAt(uri: vscode.Uri): Promise<Page | null> {
    if (uri.path.startsWith('/checks/')) {
      return this.#client.ask<Page>(askServer.explainCheck, {
        check: uri.path.slice('/checks/'.length, -'.md'.length),
      });
    }
    const asked = uri.path === prosePage(uri).path ? askServer.prose : askServer.computedValues;
    return this.#client.ask<Page>(asked, { uri: uri.query });
  }

  async explain(check: unknown): Promise<void> {
    const id = typeof check === 'string' ? check : await pickCheckAtCursor();
    if (id !== undefined) await showBeside(checkPage(id));
  }

  showComputed(note: unknown): Promise<void> {
    return this.#show(note, computedPage);
  }

  showProse(note: unknown): Promise<void> {
    return this.#show(note, prosePage);
  }

  async #show(note: unknown, page: (note: vscode.Uri) => vscode.Uri): Promise<void> {
    const uri = typeof note === 'string' ? vscode.Uri.parse(note, true) : vscode.window.activeTextEditor?.document.uri;
    if (uri !== undefined) await showBeside(page(uri));
  }

  dispose(): void {
    clearTimeout(this.#settle);
    for (const disposable of this.#disposables) disposable.dispose();
  }
}

/** Shows a page beside the text, and gives the keyboard back to the text. */
async function showBeside(page: vscode.Uri): Promise<void> {
  const editor = vscode.window.activeTextEditor;
  // The page takes the keyboard some time after the command has ended.
  const taken = keyboardTaken();
  await vscode.commands.executeCommand('markdown.showPreviewToSide', page);
  if (editor === undefined || !(await taken)) return;
  const { document, viewColumn, selection } = editor;
  await vscode.window.showTextDocument(document, viewColumn === undefined ? { selection } : { selection, viewColumn });
}

/** True once no text has the keyboard any more; false when another text has it, or when nothing happens for long. */
function keyboardTaken(): Promise<boolean> {
  return new Promise((resolve) => {
    const heard = vscode.window.onDidChangeActiveTextEditor((editor) => settle(editor === undefined));
    const patience = setTimeout(() => settle(false), PAGE_OPENS_MS);
    function settle(taken: boolean): void {
      heard.dispose();
      clearTimeout(patience);
      resolve(taken);
    }
  });
}

async function pickCheckAtCursor(): Promise<string | undefined> {
  const editor = vscode.window.activeTextEditor;
  if (editor === undefined) return undefined;
  const { line } = editor.selection.active;
  const here = vscode.languages
    .getDiagnostics(editor.document.uri)
    .filter(({ range }) => range.start.line <= line && line <= range.end.line);
  const checks = here.flatMap((diagnostic) => {
    const id = checkOf(diagnostic);
    return id === undefined ? [] : [{ label: id, detail: diagnostic.message }];
  });
  if (checks.length === 0) {
    void vscode.window.showInformationMessage('No remark stands on this line.');
    return undefined;
  }
  if (checks.length === 1) return checks[0]?.label;
  const picked = await vscode.window.showQuickPick(checks, { placeHolder: 'Which check should be explained?' });
  return picked?.label;
}
