import * as vscode from 'vscode';
import { isChecked } from './documents.ts';
import type { NoteClient } from './note-client.ts';

/** Says for the note in view how many remarks it has, or that nothing is checking it. */
export class StatusItem implements vscode.Disposable {
  readonly #client: NoteClient;
  readonly #item = vscode.window.createStatusBarItem('checking', vscode.StatusBarAlignment.Left, 10);
  readonly #disposables: vscode.Disposable[];

  constructor(client: NoteClient) {
    this.#client = client;
    this.#item.name = 'Note checking';
    const show = (): void => this.#show();
    this.#disposables = [
      this.#item,
      client.onChanged(show),
      vscode.window.onDidChangeActiveTextEditor(show),
      vscode.languages.onDidChangeDiagnostics(show),
    ];
    show();
  }

  dispose(): void {
    for (const disposable of this.#disposables) disposable.dispose();
  }

  #show(): void {
    // While a page or the picture has the focus no editor is active; then it speaks of the note beside it.
    const beside = (): vscode.TextEditor | undefined =>
      vscode.window.visibleTextEditors.find(({ document }) => isChecked(document));
    const document = (vscode.window.activeTextEditor ?? beside())?.document;
    if (document === undefined || !isChecked(document)) {
      this.#item.hide();
      return;
    }
    const state = stateOf(this.#client, document.uri);
    this.#item.text = state.text;
    this.#item.tooltip = state.tooltip;
    this.#item.command = state.command;
    this.#item.backgroundColor = state.warn ? new vscode.ThemeColor('statusBarItem.warningBackground') : undefined;
    this.#item.accessibilityInformation = { label: state.tooltip };
    this.#item.show();
  }
}

interface Shown {
  readonly text: string;
  readonly tooltip: string;
  readonly command: string;
  readonly warn: boolean;
}

function stateOf(client: NoteClient, uri: vscode.Uri): Shown {
  const problems = { command: 'workbench.actions.view.problems', warn: false };
  if (client.checking === 'not checking') {
    const tooltip = 'This note is not being checked. Click to start checking again.';
    return { text: '$(circle-slash) Not checking', tooltip, command: 'sideport.restart', warn: true };
  }
  if (client.checking === 'starting' || !client.hasChecked(uri)) {
    return { text: '$(sync~spin) Checking', tooltip: 'The note is being checked for the first time', ...problems };
  }
  const remarks = vscode.languages.getDiagnostics(uri).filter(({ source }) => source === 'sideport');
  const errors = remarks.filter(({ severity }) => severity === vscode.DiagnosticSeverity.Error).length;
  const words = remarks.length === 0 ? 'no remarks' : withOthers(errors, remarks.length - errors);
  const icon = errors > 0 ? 'error' : remarks.length > 0 ? 'warning' : 'pass';
  return { text: `$(${icon}) Note: ${words}`, tooltip: `The note has been checked: ${words}`, ...problems };
}

function withOthers(errors: number, others: number): string {
  const counted = [count(errors, 'error'), count(others, errors > 0 ? 'other remark' : 'remark')];
  return counted.filter((part) => !part.startsWith('0 ')).join(', ');
}

function count(number: number, noun: string): string {
  return `${number} ${noun}${number === 1 ? '' : 's'}`;
}
