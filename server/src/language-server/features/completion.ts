import {
  CompletionItemKind,
  InsertTextFormat,
  InsertTextMode,
  MarkupKind,
  type CompletionItem,
  type CompletionParams,
} from 'vscode-languageserver';
import { complete } from '../../note/editing/complete.ts';
import { escaped } from '../../note/editing/explanation-text.ts';
import { lineAt } from '../../note/edits/lines.ts';
import type { Proposal, ProposalKind } from '../../note/editing/proposal.ts';
import type { ClientCan } from '../client-can.ts';
import { forNote, type Server } from '../handlers.ts';
import type { OpenNote } from '../note-book.ts';
import { editorCommands } from '../own-requests.ts';

/** A blank asks behind “: ” and “- ”, a bracket in a list. A colon never asks: the line below would be swallowed. */
export function completionTriggers(can: ClientCan): string[] {
  return can.commands.has(editorCommands.proposeAgain) ? ['['] : [' ', '['];
}

const KINDS: Readonly<Record<ProposalKind, CompletionItemKind>> = {
  field: CompletionItemKind.Field,
  section: CompletionItemKind.Module,
  'whole section': CompletionItemKind.Snippet,
  word: CompletionItemKind.EnumMember,
  value: CompletionItemKind.Value,
  unit: CompletionItemKind.Unit,
  reference: CompletionItemKind.Reference,
  absence: CompletionItemKind.Constant,
};

export function completion(server: Server): void {
  server.connection.onCompletion(
    forNote<CompletionParams, CompletionItem[]>(server, 'textDocument/completion', [], (note, params) => {
      const offset = note.lines.offsetAt(params.position);
      if (params.context?.triggerCharacter === ' ' && isIndenting(note, offset)) return [];
      const can = server.can();
      return complete(note.around, offset)
        .filter(({ snippet }) => snippet !== true || can.snippets)
        .map((proposal, index) => itemOf(proposal, index, offset, note, can));
    }),
  );
}

/** Blanks typed to indent a line are no question. */
function isIndenting({ lines: { text } }: OpenNote, offset: number): boolean {
  return text.slice(lineAt(text, offset).start, offset).trim() === '';
}

function itemOf(proposal: Proposal, index: number, offset: number, note: OpenNote, can: ClientCan): CompletionItem {
  const { label, kind, detail, explanation, insert, snippet, replace, filter, more } = proposal;
  const range = note.lines.rangeOf(replace);
  const typed = note.lines.rangeOf({ start: replace.start, end: offset });
  const item: CompletionItem = {
    label,
    kind: KINDS[kind],
    // Editors differ in how they order; all of them take this.
    sortText: String(index).padStart(4, '0'),
    textEdit: can.insertReplace ? { newText: insert, insert: typed, replace: range } : { newText: insert, range },
  };
  if (detail !== undefined) item.detail = detail;
  if (filter !== undefined && filter !== label) item.filterText = filter;
  if (snippet === true) item.insertTextFormat = InsertTextFormat.Snippet;
  if (can.insertTextModes && insert.includes('\n')) item.insertTextMode = InsertTextMode.asIs;
  if (explanation !== undefined) {
    item.documentation = can.markdownCompletion
      ? { kind: MarkupKind.Markdown, value: escaped(explanation) }
      : explanation;
  }
  // The next proposals open by themselves.
  if (more && can.commands.has(editorCommands.proposeAgain)) {
    item.command = { title: 'Propose values', command: editorCommands.proposeAgain };
  }
  return item;
}
