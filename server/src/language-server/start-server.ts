import {
  DidChangeConfigurationNotification,
  DidChangeWatchedFilesNotification,
  TextDocumentSyncKind,
  type Connection,
  type InitializeParams,
  type PublishDiagnosticsParams,
  type ServerCapabilities,
} from 'vscode-languageserver';
import { checkPageOf } from './check-pages.ts';
import { clientCan, type ClientCan } from './client-can.ts';
import { diagnosticsOf } from './diagnostics.ts';
import { ApartLoader } from './apart-loader.ts';
import { DictationLoader } from './dictation-loader.ts';
import { editorFiles, filesOf } from './editor-files.ts';
import { codeActionKinds, codeActions } from './features/code-actions.ts';
import { completion, completionTriggers } from './features/completion.ts';
import { computedValues } from './features/computed-values.ts';
import { formatting } from './features/formatting.ts';
import { hover } from './features/hover.ts';
import { navigation } from './features/navigation.ts';
import { ownRequests } from './features/own.ts';
import { renaming } from './features/renaming.ts';
import { structure, tokenLegend } from './features/structure.ts';
import { workspaceSymbols } from './features/workspace-symbols.ts';
import { attempt, attemptSteps, faultLine, guardWith } from './guard.ts';
import type { Server } from './handlers.ts';
import { latestWins } from './latest-wins.ts';
import type { LiveSet } from './live-set.ts';
import { NoteBook } from './note-book.ts';
import { NoteSets } from './note-sets.ts';
import { OpenDocuments } from './open-documents.ts';
import { Practice } from './practice.ts';
import type { Runtime } from './runtime.ts';
import { Settings } from './settings.ts';

const FEATURES = [
  completion,
  hover,
  computedValues,
  structure,
  formatting,
  codeActions,
  navigation,
  renaming,
  workspaceSymbols,
  ownRequests,
];

/** Serves one editor over a connection: the only place that knows the protocol. Returns when it listens. */
export function startNoteServer(connection: Connection, runtime: Runtime): void {
  const log = (line: string) => connection.console.log(line);
  const documents = new OpenDocuments();
  const notes = new NoteBook(documents, runtime.today);
  const settings = new Settings(connection);
  const apart = new ApartLoader(connection, runtime, () => can.files);
  const dictation = new DictationLoader(apart);
  const practice = new Practice(runtime.practice ?? 0);
  let can: ClientCan = clientCan({ processId: null, rootUri: null, capabilities: {} });
  const server: Server = {
    connection,
    guard: guardWith(log, () => reviews.question()),
    notes,
    settings,
    apart,
    dictation,
    today: runtime.today,
    checkPage: checkPageOf(connection, runtime, () => can.files),
    can: () => can,
  };

  /** What was last said about each note, so that a set that changes nothing is not heard. */
  const said = new Map<string, string>();
  const reviews = latestWins<string>(runtime.later, (uri) => attemptSteps('review', log, publishing(uri)));

  /** Reads a note, then checks it and says what is to be said; a question is let in between the steps. */
  function* publishing(uri: string, onlyNews = false): Generator<void, void> {
    // First what the others know of it, so that no review is made from what it said before.
    const reading = notes.reading(uri);
    const set = notes.sets?.of(uri) ?? null;
    if (dictation.isMissingFor(reading)) void loadDictation();
    if (reading !== undefined && set?.noteChanged(uri, reading) === true) tellOthers(uri, set);
    yield;
    const note = notes.note(uri);
    if (note === undefined) return;
    const diagnostics = diagnosticsOf(note, can);
    const words = JSON.stringify(diagnostics);
    if (!onlyNews || said.get(uri) !== words) tell({ uri, version: note.version, diagnostics });
    said.set(uri, words);
    yield;
    // Editors ask next for what stands beside the lines.
    notes.compute(uri);
    if (!onlyNews) reviews.meanwhile(attemptSteps('practice', log, practice.on(note)));
  }

  function tell(params: PublishDiagnosticsParams): void {
    // An editor that has gone cannot be told.
    void connection.sendDiagnostics(params).catch(() => undefined);
  }

  /** Notes with a dictation are checked again once it is understood. */
  async function loadDictation(): Promise<void> {
    if (notes.dictation !== null) return;
    notes.dictation = await dictation.load();
    if (notes.dictation !== null) setChanged();
  }

  /** Notes of a set that are open are checked again when one of them says something that concerns the others. */
  function tellOthers(uri: string, set: LiveSet): void {
    for (const other of documents.all()) {
      if (other.uri !== uri && notes.sets?.of(other.uri) === set) reviews.ask(other.uri);
    }
  }

  function setChanged(): void {
    attempt('review of a set', log, () => {
      for (const { uri } of documents.all()) finish(publishing(uri, true));
      if (can.refreshHints) void connection.languages.inlayHint.refresh().catch(() => undefined);
      if (can.refreshLenses) void connection.sendRequest('workspace/codeLens/refresh').catch(() => undefined);
    });
  }

  connection.onInitialize((params: InitializeParams) => {
    can = clientCan(params);
    settings.canAsk = can.settings;
    const files = filesOf(runtime.files, can.files ? editorFiles(connection) : undefined);
    notes.sets = new NoteSets({ files, open: notes, folders: can.folders, log, changed: setChanged });
    return { capabilities: capabilities(can), serverInfo: { name: 'Sideport' } };
  });
  connection.onInitialized(() => {
    if (can.settings) void connection.client.register(DidChangeConfigurationNotification.type).catch(() => undefined);
    if (can.watchFiles) {
      const watchers = ['**/*.opnote.yaml', '**/sideport.yaml'].map((globPattern) => ({ globPattern }));
      void connection.client.register(DidChangeWatchedFilesNotification.type, { watchers }).catch(() => undefined);
    }
  });
  connection.onDidChangeConfiguration(() => {
    settings.forget();
    setChanged();
  });
  function readAgain(uris: readonly string[]): void {
    void notes.sets?.filesChanged(uris).catch((fault: unknown) => log(faultLine('reading changed files', fault)));
  }
  connection.onDidChangeWatchedFiles(({ changes }) => readAgain(changes.map(({ uri }) => uri)));
  documents.listen(connection, log, {
    changed: ({ uri }) => reviews.ask(uri),
    saved: (document) => notes.sets?.saved(document.uri, document.getText()),
    closed: (uri) => {
      reviews.drop(uri);
      said.delete(uri);
      notes.forget(uri);
      settings.forget(uri);
      tell({ uri, diagnostics: [] });
      // From now on what is stored counts, with or without what was written here.
      readAgain([uri]);
    },
  });
  for (const feature of FEATURES) feature(server);
  connection.listen();
}

function finish(steps: Iterator<void>): void {
  while (steps.next().done !== true);
}

function capabilities(can: ClientCan): ServerCapabilities {
  return {
    textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental, save: true },
    completionProvider: { triggerCharacters: completionTriggers(can) },
    hoverProvider: true,
    inlayHintProvider: true,
    codeLensProvider: {},
    documentSymbolProvider: true,
    foldingRangeProvider: true,
    selectionRangeProvider: true,
    semanticTokensProvider: { legend: tokenLegend, full: true, range: true },
    documentFormattingProvider: true,
    documentRangeFormattingProvider: true,
    documentOnTypeFormattingProvider: { firstTriggerCharacter: '\n' },
    codeActionProvider: { codeActionKinds },
    definitionProvider: true,
    referencesProvider: true,
    documentHighlightProvider: true,
    documentLinkProvider: {},
    renameProvider: { prepareProvider: true },
    workspaceSymbolProvider: true,
  };
}
