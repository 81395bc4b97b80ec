import { TextDocument } from 'vscode-languageserver-textdocument';
import type { Position, Range } from 'vscode-languageserver-textdocument';

/**
 * The only place where offsets become lines and columns. Everything inside counts UTF-16 units from the start of the
 * text; a line ends at CRLF, LF or a lone CR, as the protocol says; a byte order mark is the first unit of the first line.
 */
export interface LineIndex {
  readonly text: string;
  offsetAt(position: Position): number;
  positionAt(offset: number): Position;
  rangeOf(span: { readonly start: number; readonly end: number }): Range;
}

export function lineIndexOf(document: TextDocument): LineIndex {
  return {
    text: document.getText(),
    offsetAt: (position) => document.offsetAt(position),
    positionAt: (offset) => document.positionAt(offset),
    rangeOf: ({ start, end }) => ({ start: document.positionAt(start), end: document.positionAt(end) }),
  };
}

export function lineIndex(text: string): LineIndex {
  return lineIndexOf(TextDocument.create('', '', 0, text));
}
