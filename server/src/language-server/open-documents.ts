import { TextDocument } from 'vscode-languageserver-textdocument';
import { decoded } from './addresses.ts';
import type { Connection } from 'vscode-languageserver';
import { attempt } from './guard.ts';
import type { FaultLog } from './guard.ts';

export interface DocumentEvents {
  changed(document: TextDocument): void;
  saved(document: TextDocument): void;
  closed(uri: string): void;
}

/** The documents the editor has open, each in its latest version; a document is replaced, never altered, by an edit. */
export class OpenDocuments {
  readonly #open = new Map<string, TextDocument>();

  get(uri: string): TextDocument | undefined {
    return this.#open.get(decoded(uri));
  }

  all(): readonly TextDocument[] {
    return [...this.#open.values()];
  }

  listen(connection: Connection, log: FaultLog, events: DocumentEvents): void {
    connection.onDidOpenTextDocument(({ textDocument: { uri, languageId, version, text } }) =>
      attempt('textDocument/didOpen', log, () => {
        this.#set(TextDocument.create(uri, languageId, version, text), events);
      }),
    );
    connection.onDidChangeTextDocument(({ textDocument: { uri, version }, contentChanges }) =>
      attempt('textDocument/didChange', log, () => {
        const before = this.#open.get(decoded(uri));
        if (before === undefined) return;
        const edited = TextDocument.update(copyOf(before), contentChanges, version);
        this.#set(edited, events);
      }),
    );
    connection.onDidSaveTextDocument(({ textDocument: { uri } }) =>
      attempt('textDocument/didSave', log, () => {
        const document = this.#open.get(decoded(uri));
        if (document !== undefined) events.saved(document);
      }),
    );
    connection.onDidCloseTextDocument(({ textDocument: { uri } }) =>
      attempt('textDocument/didClose', log, () => {
        this.#open.delete(decoded(uri));
        events.closed(uri);
      }),
    );
  }

  #set(document: TextDocument, events: DocumentEvents): void {
    this.#open.set(decoded(document.uri), document);
    events.changed(document);
  }
}

/** What was answered for one version must not change under it when the next arrives. */
function copyOf(document: TextDocument): TextDocument {
  return TextDocument.create(document.uri, document.languageId, document.version, document.getText());
}
