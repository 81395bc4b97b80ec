import type { InitializeParams } from 'vscode-languageserver';
import type { EditorOptions } from './own-requests.ts';

/** What the editor understands; everything missing is taken as no. */
export interface ClientCan {
  readonly markdownHover: boolean;
  readonly markdownCompletion: boolean;
  readonly snippets: boolean;
  readonly insertReplace: boolean;
  readonly insertTextModes: boolean;
  readonly relatedPlaces: boolean;
  readonly codeLinks: boolean;
  readonly codeActions: boolean;
  readonly versionedEdits: boolean;
  readonly createFiles: boolean;
  readonly confirmEdits: boolean;
  readonly settings: boolean;
  readonly refreshHints: boolean;
  readonly refreshLenses: boolean;
  readonly nestedSymbols: boolean;
  readonly watchFiles: boolean;
  /** It answers for files itself. */
  readonly files: boolean;
  readonly commands: ReadonlySet<string>;
  readonly folders: readonly string[];
}

export function clientCan({ capabilities, initializationOptions, workspaceFolders }: InitializeParams): ClientCan {
  const { textDocument, workspace } = capabilities;
  const item = textDocument?.completion?.completionItem;
  const edits = workspace?.workspaceEdit;
  const options = optionsIn(initializationOptions);
  return {
    markdownHover: textDocument?.hover?.contentFormat?.includes('markdown') === true,
    markdownCompletion: item?.documentationFormat?.includes('markdown') === true,
    snippets: item?.snippetSupport === true,
    insertReplace: item?.insertReplaceSupport === true,
    insertTextModes: item?.insertTextModeSupport !== undefined,
    relatedPlaces: textDocument?.publishDiagnostics?.relatedInformation === true,
    codeLinks: textDocument?.publishDiagnostics?.codeDescriptionSupport === true,
    codeActions: textDocument?.codeAction?.codeActionLiteralSupport !== undefined,
    versionedEdits: edits?.documentChanges === true,
    createFiles: edits?.documentChanges === true && edits.resourceOperations?.includes('create') === true,
    confirmEdits: edits?.documentChanges === true && edits.changeAnnotationSupport !== undefined,
    settings: workspace?.configuration === true,
    refreshHints: workspace?.inlayHint?.refreshSupport === true,
    refreshLenses: workspace?.codeLens?.refreshSupport === true,
    nestedSymbols: textDocument?.documentSymbol?.hierarchicalDocumentSymbolSupport === true,
    watchFiles: workspace?.didChangeWatchedFiles?.dynamicRegistration === true,
    files: options.files === true,
    commands: new Set(options.commands),
    folders: (workspaceFolders ?? []).map(({ uri }) => uri),
  };
}

/** Options come from outside: only what has the right shape counts. */
function optionsIn(options: unknown): EditorOptions {
  if (typeof options !== 'object' || options === null) return {};
  const commands = 'commands' in options && Array.isArray(options.commands) ? options.commands : [];
  return {
    commands: commands.filter((command): command is string => typeof command === 'string'),
    files: 'files' in options && options.files === true,
  };
}
