import { isScalar, visit, type Document, type YAMLError } from 'yaml';
import { lineAt } from '../edits/lines.ts';
import type { TreeFault } from './tree.ts';

export interface Mend {
  /** The text with the slip set aside; as long as before, so that every offset stays right. */
  readonly source: string;
  readonly fault: TreeFault;
}

/**
 * Sets one slip of writing aside so that it does not swallow its neighbours: a half-typed field, a value that
 * holds “: ”, a quote that is not closed. Answers undefined when the slip does no harm to the lines around it.
 */
export function mend(source: string, error: YAMLError, document: Document | undefined): Mend | undefined {
  const [start, end] = error.pos;
  if (error.code === 'MULTILINE_IMPLICIT_KEY') return halfTyped(source, start);
  if (error.code === 'BLOCK_AS_IMPLICIT_KEY') return secondColon(source, start) ?? halfTyped(source, start);
  if (error.code === 'UNEXPECTED_TOKEN') return markInFront(source, start);
  if (error.code === 'MISSING_CHAR' && /quote/u.test(error.message)) return openQuote(source, end, document);
  return undefined;
}

function halfTyped(source: string, at: number): Mend | undefined {
  const line = lineAt(source, at);
  const text = source.slice(line.start, line.end);
  // The line has a value of its own: then it is the next line that is indented below a finished value.
  if (/:(?:\s|$)/u.test(text)) {
    const lineEnd = source.indexOf('\n', line.end);
    const next = lineAt(source, lineEnd + 1);
    if (lineEnd < 0 || source.slice(next.start, next.end).trim() === '') return undefined;
    return blank(
      source,
      next,
      'This line is indented below a field that already has a value. Move it to the column of the fields around it.',
    );
  }
  return blank(source, line, `Expected “: ” and a value behind “${text.trim()}”.`);
}

function secondColon(source: string, at: number): Mend | undefined {
  const line = lineAt(source, at);
  const colon = source.slice(at, line.end).search(/:(?:\s|$)/u);
  if (colon < 0) return undefined;
  const position = at + colon;
  const value = source.slice(at, line.end).trimEnd();
  return {
    source: `${source.slice(0, position)}\u2236${source.slice(position + 1)}`,
    fault: {
      check: 'text-not-readable',
      message: `The value holds “: ”, which begins a field. Put the value in double quotes: "${value.replace(/"/gu, "'")}".`,
      span: { start: at, end: at + value.length },
    },
  };
}

/** A value that begins with a sign which begins a text of several lines, as “>3 min”. */
function markInFront(source: string, at: number): Mend | undefined {
  const line = lineAt(source, at);
  const before = /^\s*(?:- +)*(?:[\w.-]+: +)?(?=[>|])/u.exec(source.slice(line.start, line.end))?.[0];
  if (before === undefined || before.trim() === '') return undefined;
  const start = line.start + before.length;
  const value = source.slice(start, line.end).replace(/ #.*$/u, '').trimEnd();
  return blank(source, { start, end: line.end }, beginsText(value), start + value.length);
}

/** What is said of a value whose first sign begins a text of several lines. */
export function beginsText(value: string): string {
  return `“${value[0] ?? ''}” at the beginning of a value begins a text of several lines. Write the value without it, or put it in double quotes: "${value}".`;
}

function openQuote(source: string, end: number, document: Document | undefined): Mend | undefined {
  let opened: number | undefined;
  if (document !== undefined) {
    visit(document, {
      Scalar: (_, node) => {
        if (isScalar(node) && String(node.type).startsWith('QUOTE') && (node.range?.[1] ?? -1) >= end - 1)
          opened = node.range?.[0];
      },
    });
  }
  if (opened === undefined) return undefined;
  const line = lineAt(source, opened);
  return blank(source, { start: opened, end: line.end }, 'The quote that opens here is not closed.');
}

function blank(
  source: string,
  range: { start: number; end: number },
  message: string,
  saidTo?: number,
): Mend | undefined {
  const text = source.slice(range.start, range.end);
  const from = range.start + (text.length - text.trimStart().length);
  const to = range.start + text.trimEnd().length;
  if (to <= from) return undefined;
  return {
    source: source.slice(0, from) + ' '.repeat(to - from) + source.slice(to),
    fault: { check: 'text-not-readable', message, span: { start: from, end: saidTo ?? to } },
  };
}
