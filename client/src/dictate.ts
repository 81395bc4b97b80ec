import * as vscode from 'vscode';
import { placeForDictation, unindentedLines } from './dictation-place.ts';
import { rewritingSwitches, systemDictation, whatLeaves, type DictationSettings } from './dictation-privacy.ts';
import { isNote } from './documents.ts';
import { inBackground } from './guard.ts';

const START = 'workbench.action.editorDictation.start';

/** Puts the cursor where dictated words belong, and starts the dictation that there is. */
export async function dictate(): Promise<void> {
  const editor = vscode.window.activeTextEditor;
  if (editor === undefined || !isNote(editor.document)) {
    void vscode.window.showInformationMessage('Open the note that the dictation belongs to, then dictate.');
    return;
  }
  const own = await hasOwnDictation();
  if (own && !(await agreesToWhatLeaves())) return;
  if (!(await goToDictation(editor))) return;
  keepInBlock(editor.document);
  if (own) await vscode.commands.executeCommand(START);
  else void vscode.window.showInformationMessage(`${systemDictation(platform())} The words go where the cursor is.`);
}

async function goToDictation(editor: vscode.TextEditor): Promise<boolean> {
  const { document } = editor;
  const place = placeForDictation(document.getText(), document.eol === vscode.EndOfLine.CRLF ? '\r\n' : '\n');
  if (place === undefined) {
    void vscode.window.showInformationMessage(
      'This note has a dictation on one line. Put it below its name, behind “dictation: |-”, so that more can be added.',
    );
    return false;
  }
  const at = document.positionAt(place.at);
  await editor.edit((edit) => edit.insert(at, place.insert));
  const end = document.positionAt(place.at + place.insert.length);
  editor.selection = new vscode.Selection(end, end);
  editor.revealRange(new vscode.Range(end, end));
  return true;
}

/** The editor's own dictation: where it is switched on, or something that understands speech is installed. */
async function hasOwnDictation(): Promise<boolean> {
  const commands = await vscode.commands.getCommands(true);
  if (!commands.includes(START)) return false;
  const enabled = vscode.workspace.getConfiguration('dictation').get<boolean>('enabled') === true;
  return enabled || vscode.extensions.all.some(({ packageJSON }) => offersSpeech(packageJSON));
}

function offersSpeech(manifest: unknown): boolean {
  const contributes = property(manifest, 'contributes');
  const providers = property(contributes, 'speechProviders');
  return Array.isArray(providers) && providers.length > 0;
}

function property(value: unknown, name: string): unknown {
  return typeof value === 'object' && value !== null ? (value as Record<string, unknown>)[name] : undefined;
}

/** Says what would leave the machine, and lets the surgeon choose. */
async function agreesToWhatLeaves(): Promise<boolean> {
  const settings = settingsNow();
  const leaves = whatLeaves(settings);
  if (leaves.length === 0) return true;
  const off = 'Turn the rewriting off and dictate';
  const anyway = 'Dictate all the same';
  const rewriting = rewritingSwitches(settings.switches);
  const chosen = await vscode.window.showWarningMessage(
    'The dictation of this editor does not stay on this machine.',
    { modal: true, detail: [...leaves, 'Sideport itself sends nothing.'].join('\n\n') },
    ...(rewriting.length > 0 ? [off] : []),
    anyway,
  );
  if (chosen !== off) return chosen === anyway;
  for (const name of rewriting) {
    await vscode.workspace.getConfiguration().update(name, false, vscode.ConfigurationTarget.Global);
  }
  // What is left to be said is said again: the words themselves may still be sent.
  return agreesToWhatLeaves();
}

function settingsNow(): DictationSettings {
  const dictation = vscode.workspace.getConfiguration('dictation');
  return {
    model: dictation.get<string>('model'),
    switches: switchesOn('dictation', vscode.workspace.getConfiguration().get('dictation')),
    browser: vscode.env.uiKind === vscode.UIKind.Web,
  };
}

/** The full names of all switches below a setting that are on. */
function switchesOn(name: string, value: unknown): readonly string[] {
  if (value === true) return [name];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, below]) => switchesOn(`${name}.${key}`, below));
}

function platform(): string {
  const { userAgent } = globalThis.navigator;
  return /Windows|Win32/i.test(userAgent) ? 'win32' : /Mac|Darwin/i.test(userAgent) ? 'darwin' : 'linux';
}

let keeping: vscode.Disposable | undefined;

/** A new line that is dictated stays in the block; until the cursor leaves it. */
function keepInBlock(document: vscode.TextDocument): void {
  keeping?.dispose();
  const changes = vscode.workspace.onDidChangeTextDocument((event) => {
    if (event.document !== document) return;
    for (const { rangeOffset, text } of event.contentChanges) {
      const starts = unindentedLines(text).map((start) => document.positionAt(rangeOffset + start));
      if (starts.length > 0) inBackground(indent(document, starts));
    }
  });
  const moves = vscode.window.onDidChangeTextEditorSelection(({ textEditor, selections: [selection] }) => {
    if (textEditor.document !== document || selection === undefined) return;
    if (!isInDictation(document, selection.active.line)) keeping?.dispose();
  });
  keeping = vscode.Disposable.from(changes, moves);
}

async function indent(document: vscode.TextDocument, starts: readonly vscode.Position[]): Promise<void> {
  const edit = new vscode.WorkspaceEdit();
  for (const start of starts) edit.insert(document.uri, start, '  ');
  await vscode.workspace.applyEdit(edit);
}

/** Whether the nearest field above a line is the dictation. */
function isInDictation(document: vscode.TextDocument, line: number): boolean {
  for (let at = line; at >= 0; at--) {
    const { text } = document.lineAt(at);
    if (/^[\w-]+:/.test(text)) return text.startsWith('dictation:');
  }
  return false;
}
