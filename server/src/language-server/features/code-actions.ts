import {
  CodeActionKind,
  type CodeAction,
  type CodeActionParams,
  type Diagnostic,
  type Range,
  type TextEdit,
  type WorkspaceEdit,
} from 'vscode-languageserver';
import type { Action } from '../../note/editing/actions/action.ts';
import { actionsAt } from '../../note/editing/actions/all-actions.ts';
import type { DictationOffer } from '../../note/dictation/offers.ts';
import { NOTE_ENDING } from '../../note/set/set-layout.ts';
import { folderOf, hasPlace, inFolder, nameOf } from '../addresses.ts';
import type { ClientCan } from '../client-can.ts';
import { carried, diagnosticsOf, SOURCE, type Carried, type CarriedFix } from '../diagnostics.ts';
import { forNote, type Server } from '../handlers.ts';
import type { OpenNote } from '../note-book.ts';
import { freeName } from '../free-name.ts';
import { editorCommands } from '../own-requests.ts';
import { textEdits } from './formatting.ts';

export const codeActionKinds = [
  CodeActionKind.QuickFix,
  CodeActionKind.RefactorRewrite,
  `${CodeActionKind.SourceFixAll}.${SOURCE}`,
];

export function codeActions(server: Server): void {
  server.connection.onCodeAction(
    forNote<CodeActionParams, CodeAction[]>(server, 'textDocument/codeAction', [], async (note, params) => {
      const can = server.can();
      if (!can.codeActions) return [];
      const { only, diagnostics } = params.context;
      const all = [
        ...diagnostics.filter(({ source }) => source === SOURCE).flatMap((each) => fixes(each, note, can)),
        ...(await rewrites(note, params.range, server)),
        ...(await dictated(server, note, params.range)),
        ...(only?.some((kind) => kind.startsWith(CodeActionKind.SourceFixAll)) === true ? fixAll(note, can) : []),
      ];
      return all.filter(
        ({ kind }) => only === undefined || only.some((wanted) => kind === wanted || kind?.startsWith(`${wanted}.`)),
      );
    }),
  );
}

/** What the dictation, or selected words, give to the fields. A selection is reason enough to load what understands it. */
async function dictated({ dictation, can }: Server, note: OpenNote, range: Range): Promise<CodeAction[]> {
  const span = { start: note.lines.offsetAt(range.start), end: note.lines.offsetAt(range.end) };
  const wanted = dictation.isMissingFor(note.reading) || span.end - span.start >= SHORTEST_DICTATION;
  const understood = wanted ? await dictation.load() : dictation.ready;
  const offers = understood?.offers(note.reading, span) ?? [];
  return offers.flatMap(({ title, parts, preview }): CodeAction[] => {
    if (preview && !can().confirmEdits) return [];
    const kind = CodeActionKind.RefactorRewrite;
    if (!preview)
      return [
        {
          title,
          kind,
          edit: editOf(
            note,
            parts.flatMap(({ edits }) => textEdits(edits, note)),
            can(),
          ),
        },
      ];
    return [{ title, kind, edit: confirmedEdit(note, parts) }];
  });
}

/** Fewer characters are no dictation. */
const SHORTEST_DICTATION = 12;

/** An edit whose parts the editor shows before it makes them, each to be ticked. */
function confirmedEdit({ uri, version, lines }: OpenNote, parts: DictationOffer['parts']): WorkspaceEdit {
  const edits = parts.flatMap((part, at) =>
    part.edits.map(({ span, text }) => ({ range: lines.rangeOf(span), newText: text, annotationId: `part-${at}` })),
  );
  return {
    documentChanges: [{ textDocument: { uri, version }, edits }],
    changeAnnotations: Object.fromEntries(
      parts.map(({ label }, at) => [`part-${at}`, { label, needsConfirmation: true }]),
    ),
  };
}

function fixes(diagnostic: Diagnostic, note: OpenNote, can: ClientCan): CodeAction[] {
  const known = fixesOf(diagnostic, note, can);
  const safe = known.filter(({ safety }) => safety === 'safe');
  const actions = known.map((fix): CodeAction => ({
    title: fix.title,
    kind: CodeActionKind.QuickFix,
    diagnostics: [diagnostic],
    // Only what cannot change the meaning may be done by a key without looking.
    isPreferred: fix.safety === 'safe' && safe.length === 1,
    edit: editOf(note, fix.edits, can),
  }));
  return [...actions, ...explain(diagnostic, can)];
}

/**
 * The fixes that the diagnostic carries, where they are for the text as it is now. Where they are for an earlier one, or
 * the editor did not keep them: those of the same remark of the text as it is now, if it is still made.
 */
function fixesOf(diagnostic: Diagnostic, note: OpenNote, can: ClientCan): readonly CarriedFix[] {
  const data: unknown = diagnostic.data;
  if (isCarried(data) && data.version === note.version) return data.fixes;
  const index = diagnosticsOf(note, can).findIndex(
    ({ code, message, range }) =>
      code === diagnostic.code &&
      message === diagnostic.message &&
      JSON.stringify(range) === JSON.stringify(diagnostic.range),
  );
  return note.remarks[index]?.fixes.map((fix) => carried(fix, note.lines)) ?? [];
}

function isCarried(data: unknown): data is Carried {
  return typeof data === 'object' && data !== null && 'version' in data && 'fixes' in data && Array.isArray(data.fixes);
}

function explain({ code }: Diagnostic, can: ClientCan): CodeAction[] {
  if (typeof code !== 'string' || !can.commands.has(editorCommands.explainCheck)) return [];
  const command = { title: `Explain “${code}”`, command: editorCommands.explainCheck, arguments: [code] };
  return [{ title: command.title, kind: CodeActionKind.QuickFix, command }];
}

async function rewrites(note: OpenNote, range: Range, server: Server): Promise<CodeAction[]> {
  const actions = actionsAt(note.around, note.lines.offsetAt(range.start));
  return (await Promise.all(actions.map((action) => rewrite(action, note, server)))).flat();
}

async function rewrite(action: Action, note: OpenNote, server: Server): Promise<CodeAction[]> {
  const { title, edits, newFile } = action;
  const can = server.can();
  const kind = CodeActionKind.RefactorRewrite;
  if (newFile === undefined) return [{ title, kind, edit: editOf(note, textEdits(edits, note), can) }];
  const uri = can.createFiles ? await freeAddress(note.uri, newFile.suffix, server) : undefined;
  if (uri === undefined) return [];
  const start = { line: 0, character: 0 };
  return [
    {
      title,
      kind,
      edit: {
        documentChanges: [
          { kind: 'create', uri, options: { ignoreIfExists: false } },
          { textDocument: { uri, version: null }, edits: [{ range: { start, end: start }, newText: newFile.text }] },
        ],
      },
    },
  ];
}

/** Beside the note, under its own name with a suffix; undefined where it cannot be said what stands there. */
async function freeAddress(uri: string, suffix: string, { notes }: Server): Promise<string | undefined> {
  const folder = hasPlace(uri) ? folderOf(uri) : undefined;
  if (folder === undefined) return undefined;
  const isTaken = await notes.sets?.takenIn(folder).catch(() => undefined);
  if (isTaken === undefined) return undefined;
  const name = freeName(`${nameOf(uri).replace(NOTE_ENDING, '')}.${suffix}`, isTaken);
  return inFolder(folder, name);
}

/** Every safe fix at once. */
function fixAll(note: OpenNote, can: ClientCan): CodeAction[] {
  const taken: { start: number; end: number }[] = [];
  const edits = note.remarks
    .flatMap(({ fixes: all }) => all.filter(({ safety }) => safety === 'safe').slice(0, 1))
    .flatMap((fix) => {
      const overlaps = fix.edits.some(({ span }) =>
        taken.some(({ start, end }) => span.start <= end && start <= span.end),
      );
      if (overlaps) return [];
      taken.push(...fix.edits.map(({ span }) => span));
      return fix.edits;
    });
  if (edits.length === 0) return [];
  const kind = `${CodeActionKind.SourceFixAll}.${SOURCE}`;
  return [{ title: 'Do every safe fix', kind, edit: editOf(note, textEdits(edits, note), can) }];
}

function editOf({ uri, version }: OpenNote, edits: readonly TextEdit[], can: ClientCan): WorkspaceEdit {
  if (!can.versionedEdits) return { changes: { [uri]: [...edits] } };
  return { documentChanges: [{ textDocument: { uri, version }, edits: [...edits] }] };
}
