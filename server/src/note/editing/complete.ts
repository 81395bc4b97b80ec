import { planAt, type Path, type Plan } from '@sideport/schemas';
import type { NoteReading } from '../reading/note-reading.ts';
import { readTree } from '../reading/read-tree.ts';
import type { Tree } from '../reading/tree.ts';
import type { Around } from './around.ts';
import { levelsAt, type Level } from './levels.ts';
import { lineBehindMark, nextWritten, STEP } from '../edits/lines.ts';
import type { Proposals } from './proposal.ts';
import { proposeAllowances } from './propose-allowances.ts';
import { proposeEntry, proposeFields, type FieldLine } from './propose-fields.ts';
import { proposeValues, type ValueLine } from './propose-values.ts';
import { allSpots, planFor, type Spot } from './spots.ts';

/** A field with its colon and at least one blank behind it, and what follows. */
const FIELD = /^([ \t]*(?:- +)*)([\w-]+):([ \t]+)(.*)$/u;
/** Nothing, or the beginning of a field or of an entry. */
const BEGUN = /^([ \t]*(?:- +)*)([^\s:#[\]{}'"|>&*!%@`-][^:#]*)?$/u;

/**
 * What could be written at a place: fields only on a line that is blank otherwise, values only behind “: ” or the dash
 * of a list. The line being written is taken out of the text before it is read, so that its half-typed state cannot
 * confuse the lines around it. Never throws.
 */
export function complete(around: Around, offset: number): Proposals {
  const { text } = around.reading;
  // Half a line end is the end of a line for editors and not for the reader.
  if (text[offset - 1] === '\r') return [];
  const line = lineBehindMark(text, offset);
  const written = text.slice(line.start, line.end);
  if (text.slice(line.start, offset).includes('#') && commentBegins(written, offset - line.start)) {
    return proposeAllowances(text, line.start, offset);
  }
  const field = FIELD.exec(written);
  if (field !== null) return valuesBehind(around, offset, line.start, field);
  const begun = BEGUN.exec(written);
  return begun === null ? [] : linesAt(around, offset, line.start, begun);
}

function commentBegins(written: string, column: number): boolean {
  const hash = /(?:^|\s)#/u.exec(written);
  return hash !== null && hash.index < column;
}

function valuesBehind(around: Around, offset: number, lineStart: number, match: RegExpExecArray): Proposals {
  const [, before = '', key = '', blanks = '', rest = ''] = match;
  const keyStart = lineStart + before.length;
  const start = keyStart + key.length + 1 + blanks.length;
  if (offset < start) return [];
  const spot = spotOfKey(around.reading, keyStart, lineStart, lineStart + match[0].length);
  if (spot?.plan === undefined) return [];
  const value = withoutComment(rest);
  if (value.trim() === '' && hasLinesBelow(around.reading.text, lineStart, before.length)) return [];
  const bracket = insideBrackets(value, offset - start);
  if (value.startsWith('[')) return bracket === undefined ? [] : inBrackets(around, spot, start, bracket);
  // Quotes, blocks of prose and the like are the writer's own.
  if (/^["'|>{&*!]/u.test(value)) return [];
  return proposeValues(spot.plan, valueLine(spot.path, start, value, offset), around);
}

/** Whether the lines below a field belong to it: then a value on its own line would part them from it. */
function hasLinesBelow(text: string, lineStart: number, column: number): boolean {
  const next = nextWritten(text, lineStart);
  const written = next === undefined ? '' : text.slice(next.start, next.end);
  const indent = /^[ \t]*/u.exec(written)?.[0].length ?? 0;
  return indent > column || (indent === column && /^[ \t]*-(?:\s|$)/u.test(written));
}

function valueLine(path: Path, start: number, value: string, offset: number): ValueLine {
  const typed = value.slice(0, offset - start);
  const end = Math.max(offset, start + value.trimEnd().length);
  return { path, typed, replace: { start, end } };
}

interface Bracketed {
  readonly start: number;
  readonly end: number;
  readonly typed: string;
  readonly others: readonly string[];
}

/** The entry of a list in brackets that a column lies in. */
function insideBrackets(value: string, column: number): Bracketed | undefined {
  const close = value.indexOf(']');
  if (column < 1 || (close >= 0 && column > close) || /["'[{]/u.test(value.slice(1))) return undefined;
  const from = value.lastIndexOf(',', column - 1) + 1 || 1;
  const start = from + (/^\s*/u.exec(value.slice(from, column))?.[0].length ?? 0);
  const comma = value.indexOf(',', column);
  const end = [comma, close].filter((at) => at >= 0).reduce((a, b) => Math.min(a, b), value.length);
  const others = value.slice(1, close < 0 ? undefined : close).split(',');
  const own = value.slice(1, start).split(',').length - 1;
  return {
    start,
    end: Math.max(column, start + value.slice(start, end).trimEnd().length),
    typed: value.slice(start, column),
    others: others.filter((_, index) => index !== own).map((entry) => entry.trim()),
  };
}

function inBrackets(around: Around, spot: Spot, start: number, bracket: Bracketed): Proposals {
  if (spot.plan?.kind !== 'list' || spot.plan.item.kind !== 'value') return [];
  return proposeValues(
    spot.plan,
    {
      path: spot.path,
      typed: bracket.typed,
      replace: { start: start + bracket.start, end: start + bracket.end },
      present: bracket.others,
      inBrackets: true,
    },
    around,
  ).filter(({ kind }) => kind !== 'absence');
}

/** The field whose key begins at an offset; read again without its value where the value hides it. */
function spotOfKey(reading: NoteReading, keyStart: number, lineStart: number, lineEnd: number): Spot | undefined {
  const find = (tree: Tree) => [...allSpots(tree, reading.kind)].find((spot) => spot.key?.start === keyStart);
  return find(reading.tree) ?? find(readTree(withBlank(reading.text, keyStart, lineStart, lineEnd)));
}

/** The line with its key and nothing else. */
function withBlank(text: string, keyStart: number, lineStart: number, lineEnd: number): string {
  const colon = text.indexOf(':', keyStart) + 1;
  return `${text.slice(0, colon)}${' '.repeat(Math.max(0, lineEnd - colon))}${text.slice(Math.max(lineEnd, colon, lineStart))}`;
}

function withoutComment(rest: string): string {
  const comment = /(?:^|\s)#/u.exec(rest);
  return comment === null ? rest : rest.slice(0, comment.index);
}

function linesAt(around: Around, offset: number, lineStart: number, match: RegExpExecArray): Proposals {
  const { text, kind } = around.reading;
  const [whole, before = '', begun = ''] = match;
  const column = offset - lineStart;
  if (column < before.length && begun !== '') return [];
  const levels = levelsAt(text, treeWithout(around.reading, lineStart, whole), kind, lineStart);
  const word = { start: lineStart + before.length, end: lineStart + before.length + begun.trimEnd().length };
  const line: FieldLine = { start: lineStart, word: { start: word.start, end: Math.max(word.end, offset) }, before };
  const dash = before.lastIndexOf('-');
  if (dash >= 0) return entryAt(around, levels, dash, line, offset);
  return ordered(levels, column, before).flatMap((level) => proposeFields(level, line));
}

/** The tree of the text with one line blank. */
function treeWithout(reading: NoteReading, lineStart: number, line: string): Tree {
  if (line.trim() === '') return reading.tree;
  const { text } = reading;
  return readTree(`${text.slice(0, lineStart)}${' '.repeat(line.length)}${text.slice(lineStart + line.length)}`);
}

function entryAt(around: Around, levels: readonly Level[], dash: number, line: FieldLine, offset: number): Proposals {
  const lists = levels.filter((level) => level.plan.kind === 'list');
  const level = lists.find((each) => each.column === dash) ?? lists.find((each) => each.column < dash) ?? lists[0];
  if (level === undefined) return [];
  // The dash of a further entry stands below the others; that of a first one, no farther left than its field.
  const isRight = level.isEmpty ? dash >= level.column - STEP : dash === level.column;
  const lead = isRight ? line.before : `${level.lead}- `;
  const value = planAt(planFor(around.reading.kind), [...level.path, 0]);
  if (value?.kind === 'group') return proposeEntry(level, line, lead);
  const plan: Plan = level.plan;
  const typed = around.reading.text.slice(line.word.start, offset);
  const values = proposeValues(
    plan,
    { path: level.path, typed, replace: line.word, present: level.present },
    around,
  ).filter(({ kind }) => kind !== 'absence');
  if (isRight) return values;
  return values.map((each) => ({
    ...each,
    insert: lead + each.insert,
    filter: line.before + (each.filter ?? each.label),
    replace: { start: line.start, end: line.word.end },
  }));
}

/** Where blanks were typed, they say which section is meant; otherwise the innermost one comes first. */
function ordered(levels: readonly Level[], column: number, before: string): readonly Level[] {
  if (before.length === 0 || column === 0) return levels;
  return levels.toSorted((a, b) => Number(b.column === before.length) - Number(a.column === before.length));
}
