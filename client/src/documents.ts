import * as vscode from 'vscode';

/** The language of a note and of a department file, as the manifest names them. */
const languages = { note: 'opnote', department: 'opnote-department' } as const;

interface Document {
  readonly languageId: string;
  readonly uri: { readonly scheme: string };
}

const PLACES = ['file', 'untitled', 'vscode-vfs', 'vscode-remote'];

/**
 * Where notes are written: on disk, in a new document, on another machine, and wherever the open folders are. A former
 * version of a note, as one side of a comparison shows it, is in none of these places: it is not checked, because its
 * set is that of another time.
 */
function places(): ReadonlySet<string> {
  return new Set([...PLACES, ...(vscode.workspace.workspaceFolders ?? []).map(({ uri }) => uri.scheme)]);
}

/** The documents that are checked. */
export function documentSelector(): { language: string; scheme: string }[] {
  return Object.values(languages).flatMap((language) => [...places()].map((scheme) => ({ language, scheme })));
}

export function isChecked(document: Document | undefined): boolean {
  return (
    document !== undefined &&
    documentSelector().some(
      ({ language, scheme }) => language === document.languageId && scheme === document.uri.scheme,
    )
  );
}

/** Whether a document is a note that is checked, and no department file. */
export function isNote(document: Document | undefined): boolean {
  return document?.languageId === languages.note && isChecked(document);
}
