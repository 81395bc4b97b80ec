import {
  FoldingRangeKind,
  SemanticTokensBuilder,
  SymbolKind,
  type DocumentSymbol,
  type DocumentSymbolParams,
  type FoldingRange,
  type FoldingRangeParams,
  type SelectionRange,
  type SelectionRangeParams,
  type SemanticTokens,
  type SemanticTokensParams,
  type SemanticTokensRangeParams,
  type SymbolInformation,
} from 'vscode-languageserver';
import { folds } from '../../note/editing/folds.ts';
import { outline, type OutlineEntry } from '../../note/editing/outline.ts';
import { selectionsAt } from '../../note/editing/selections.ts';
import { tokenKinds, tokens, type TokenKind } from '../../note/editing/tokens.ts';
import { forNote, type Server } from '../handlers.ts';
import type { OpenNote } from '../note-book.ts';

/** The protocol's own token types, so that every colour theme has a colour for each. */
const TOKEN_TYPES: Readonly<Record<TokenKind, string>> = {
  field: 'property',
  side: 'type',
  quantity: 'number',
  term: 'enumMember',
  identifier: 'variable',
  date: 'string',
  absence: 'keyword',
  allowance: 'macro',
  mark: 'decorator',
};

export const tokenLegend = { tokenTypes: tokenKinds.map((kind) => TOKEN_TYPES[kind]), tokenModifiers: [] };

const SYMBOLS = {
  section: SymbolKind.Module,
  list: SymbolKind.Array,
  entry: SymbolKind.Object,
  field: SymbolKind.Field,
} as const;

/** Outline, folding, growing selections and colours. */
export function structure(server: Server): void {
  const { connection } = server;
  connection.onDocumentSymbol(
    forNote<DocumentSymbolParams, DocumentSymbol[] | SymbolInformation[]>(
      server,
      'textDocument/documentSymbol',
      [],
      (note) => {
        const entries = outline(note.reading);
        return server.can().nestedSymbols
          ? entries.map((entry) => symbolOf(entry, note))
          : entries.flatMap((entry) => flatSymbols(entry, note));
      },
    ),
  );
  connection.onFoldingRanges(
    forNote<FoldingRangeParams, FoldingRange[]>(server, 'textDocument/foldingRange', [], (note) =>
      folds(note.reading).map(({ span, kind }) => {
        const { start, end } = note.lines.rangeOf(span);
        return {
          startLine: start.line,
          endLine: end.line,
          kind: kind === 'comment' ? FoldingRangeKind.Comment : FoldingRangeKind.Region,
        };
      }),
    ),
  );
  connection.onSelectionRanges(
    forNote<SelectionRangeParams, SelectionRange[]>(server, 'textDocument/selectionRange', [], (note, { positions }) =>
      positions.map((position) => selectionOf(note, note.lines.offsetAt(position))),
    ),
  );
  connection.languages.semanticTokens.on(
    forNote<SemanticTokensParams, SemanticTokens>(server, 'textDocument/semanticTokens/full', { data: [] }, (note) =>
      tokensOf(note, 0, note.lines.text.length),
    ),
  );
  connection.languages.semanticTokens.onRange(
    forNote<SemanticTokensRangeParams, SemanticTokens>(
      server,
      'textDocument/semanticTokens/range',
      { data: [] },
      (note, { range }) => tokensOf(note, note.lines.offsetAt(range.start), note.lines.offsetAt(range.end)),
    ),
  );
}

function symbolOf(entry: OutlineEntry, note: OpenNote): DocumentSymbol {
  return {
    name: entry.name,
    detail: entry.detail,
    kind: SYMBOLS[entry.kind],
    range: note.lines.rangeOf(entry.span),
    selectionRange: note.lines.rangeOf(entry.head),
    children: entry.children.map((child) => symbolOf(child, note)),
  };
}

function flatSymbols(entry: OutlineEntry, note: OpenNote, container?: string): SymbolInformation[] {
  const symbol: SymbolInformation = {
    name: entry.name,
    kind: SYMBOLS[entry.kind],
    location: { uri: note.uri, range: note.lines.rangeOf(entry.span) },
    ...(container === undefined ? {} : { containerName: container }),
  };
  return [symbol, ...entry.children.flatMap((child) => flatSymbols(child, note, entry.name))];
}

function selectionOf(note: OpenNote, offset: number): SelectionRange {
  const [innermost, ...outer] = selectionsAt(note.reading, offset);
  const range = note.lines.rangeOf(innermost ?? { start: offset, end: offset });
  const parent = outer.reduceRight<SelectionRange | undefined>(
    (above, span) => ({ range: note.lines.rangeOf(span), ...(above === undefined ? {} : { parent: above }) }),
    undefined,
  );
  return parent === undefined ? { range } : { range, parent };
}

function tokensOf(note: OpenNote, start: number, end: number): SemanticTokens {
  const builder = new SemanticTokensBuilder();
  for (const { span, kind } of tokens(note.reading)) {
    if (span.end < start || span.start > end) continue;
    const { line, character } = note.lines.positionAt(span.start);
    builder.push(line, character, span.end - span.start, tokenKinds.indexOf(kind), 0);
  }
  return builder.build();
}
