import type { Span } from '@sideport/schemas';
import { detached } from '../detached.ts';
import type { Comment, ListNode, MapEntry, MapNode, ScalarNode, Tree, TreeNode } from './tree.ts';

/** Thrown inside this file only, when a text is not of the plain kind. */
class NotPlain extends Error {}

/**
 * Reads a text of the plain kind that notes are made of: block sections and lists, one-line values, one-line lists in
 * brackets, block text. Answers undefined for everything else, sound or not, and leaves it to the full reader: what
 * this one answers is the same tree, many times faster.
 */
export function readPlainTree(text: string): Tree | undefined {
  try {
    return new PlainReader(text).tree();
  } catch (error) {
    if (error instanceof NotPlain) return undefined;
    throw error;
  }
}

const HASH = 35;
const DASH = 45;
const BLANK = 32;
const COLON = 58;

/** Keys met before, each kept as one string: what is looked up by them all the way through a note is found at once. */
const keys = new Map<string, string>();
const KEPT_KEYS = 2000;

function keyOf(written: string): string {
  const known = keys.get(written);
  if (known !== undefined) return known;
  if (!/^[A-Za-z0-9][\w .-]*$/u.test(written)) throw new NotPlain();
  if (keys.size >= KEPT_KEYS) return written;
  // A key cut out of a note would keep all of the note in memory.
  const key = detached(written);
  keys.set(key, key);
  return key;
}

class PlainReader {
  private readonly text: string;
  private readonly comments: Comment[] = [];
  /** Where the next unread line begins. */
  private next: number;
  /** The line in hand: where its content begins and ends, and in which column it begins; -1 behind the last line. */
  private at = 0;
  private end = 0;
  private column = -1;
  private lineStart = 0;

  constructor(text: string) {
    this.text = text;
    this.next = text.charCodeAt(0) === 0xfeff ? 1 : 0;
    if (text.includes('\t') || /\r(?!\n)/u.test(text)) throw new NotPlain();
  }

  tree(): Tree {
    this.advance();
    if (this.column !== 0 || this.isDash()) throw new NotPlain();
    const root = this.map(0);
    if (this.column >= 0) throw new NotPlain();
    return { root, comments: this.comments, faults: [] };
  }

  /** Takes the next line that is neither blank nor a comment. */
  private advance(): void {
    const { text } = this;
    while (this.next < text.length) {
      this.takeLine();
      let at = this.lineStart;
      while (text.charCodeAt(at) === BLANK) at++;
      if (at >= this.end) continue;
      if (text.charCodeAt(at) === HASH) {
        this.comment(at);
        continue;
      }
      if (at === this.lineStart && /^(?:---|\.\.\.|%)/u.test(text.slice(at, at + 3))) throw new NotPlain();
      this.at = at;
      this.column = at - this.lineStart;
      return;
    }
    this.column = -1;
  }

  private takeLine(): void {
    const { text } = this;
    const found = text.indexOf('\n', this.next);
    const lineEnd = found < 0 ? text.length : found;
    this.lineStart = this.next;
    this.end = text.charCodeAt(lineEnd - 1) === 13 && lineEnd > this.lineStart ? lineEnd - 1 : lineEnd;
    this.next = lineEnd + 1;
  }

  private comment(at: number): void {
    this.comments.push({ text: this.text.slice(at + 1, this.end).trim(), span: { start: at, end: this.end } });
  }

  private isDash(): boolean {
    if (this.text.charCodeAt(this.at) !== DASH) return false;
    return this.at + 1 >= this.end || this.text.charCodeAt(this.at + 1) === BLANK;
  }

  private block(): TreeNode {
    return this.isDash() ? this.list(this.column) : this.map(this.column);
  }

  private map(column: number): MapNode {
    const entries: MapEntry[] = [];
    const start = this.at;
    while (this.column === column && !this.isDash()) {
      const keySpan = this.keySpan();
      const key = keyOf(this.text.slice(keySpan.start, keySpan.end));
      for (const entry of entries) if (entry.key === key) throw new NotPlain();
      entries.push({ key, keySpan, value: this.valueBehind(this.colonBehind(keySpan.end) + 1, column, true) });
    }
    if (this.column > column || entries.length === 0) throw new NotPlain();
    const last = entries.at(-1);
    return { kind: 'map', entries, span: { start, end: last?.value?.span.end ?? last?.keySpan.end ?? start } };
  }

  private list(column: number): ListNode {
    const items: (TreeNode | null)[] = [];
    const start = this.at;
    let end = start + 1;
    while (this.column === column && this.isDash()) {
      const dash = this.at;
      const content = this.skipBlanks(dash + 1);
      if (content < this.end && this.beginsMap(content)) {
        this.column = content - this.lineStart;
        this.at = content;
        items.push(this.map(this.column));
      } else items.push(this.valueBehind(dash + 1, column, false));
      end = items.at(-1)?.span.end ?? dash + 1;
    }
    if (this.column > column) throw new NotPlain();
    return { kind: 'list', items, span: { start, end } };
  }

  /** What stands behind a key's colon or a dash: on the same line, or as a block below it. Takes the lines it uses. */
  private valueBehind(from: number, column: number, ofKey: boolean): TreeNode | null {
    const at = this.skipBlanks(from);
    if (at >= this.end || (this.text.charCodeAt(at) === HASH && at > from)) {
      if (at < this.end) this.comment(at);
      this.advance();
      if (this.column > column || (ofKey && this.column === column && this.isDash())) return this.block();
      return null;
    }
    const first = this.text[at];
    if (first === '|' || first === '>') return this.blockText(at, column, first);
    const node = first === '[' ? this.brackets(at) : this.scalar(at);
    this.advance();
    if (this.column > column) throw new NotPlain();
    return node;
  }

  private keySpan(): Span {
    const { text, end } = this;
    const colon = this.colonBehind(this.at);
    if (colon >= end) throw new NotPlain();
    let keyEnd = colon;
    while (text.charCodeAt(keyEnd - 1) === BLANK) keyEnd--;
    return { start: this.at, end: keyEnd };
  }

  /** The first colon from here on that ends a key: one with a blank or the end of the line behind it. */
  private colonBehind(from: number): number {
    for (let at = from; at < this.end; at++) {
      if (this.text.charCodeAt(at) === COLON && (at + 1 >= this.end || this.text.charCodeAt(at + 1) === BLANK))
        return at;
    }
    return this.end;
  }

  private beginsMap(at: number): boolean {
    return /[A-Za-z0-9]/u.test(this.text[at] ?? '') && this.colonBehind(at) < this.plainEnd(at);
  }

  /** Where a plain text that begins here ends: before a comment or the blanks at the end of the line. */
  private plainEnd(at: number): number {
    const { text } = this;
    let end = this.end;
    for (let i = at + 1; i < end; i++) if (text.charCodeAt(i) === HASH && text.charCodeAt(i - 1) === BLANK) end = i;
    while (end > at && text.charCodeAt(end - 1) === BLANK) end--;
    return end;
  }

  private scalar(at: number): ScalarNode {
    const first = this.text[at] ?? '';
    if (first === '"' || first === "'") {
      const node = this.quoted(at, first);
      this.restIsComment(node.span.end);
      return node;
    }
    const end = this.plainEnd(at);
    this.refuseIndicators(at);
    if (this.colonBehind(at) < end) throw new NotPlain();
    this.restIsComment(end);
    return { kind: 'scalar', text: this.text.slice(at, end), style: 'plain', span: { start: at, end } };
  }

  private refuseIndicators(at: number): void {
    const first = this.text[at] ?? '';
    if ('{}[],&*!%@`?:|>#"\''.includes(first)) throw new NotPlain();
    if (first === '-' && (at + 1 >= this.end || this.text.charCodeAt(at + 1) === BLANK)) throw new NotPlain();
  }

  private quoted(at: number, quote: '"' | "'"): ScalarNode {
    const { text } = this;
    let close = text.indexOf(quote, at + 1);
    if (quote === "'") while (close >= 0 && text[close + 1] === quote) close = text.indexOf(quote, close + 2);
    if (close < 0 || close >= this.end) throw new NotPlain();
    const inside = text.slice(at + 1, close);
    if (quote === '"' && inside.includes('\\')) throw new NotPlain();
    const span = { start: at, end: close + 1 };
    return quote === '"'
      ? { kind: 'scalar', text: inside, style: 'double', span }
      : { kind: 'scalar', text: inside.replaceAll("''", "'"), style: 'single', span };
  }

  /** A list in brackets on one line, of plain and quoted texts. */
  private brackets(open: number): ListNode {
    const items: ScalarNode[] = [];
    let at = this.skipBlanks(open + 1);
    while (this.text[at] !== ']') {
      const first = this.text[at];
      let item: ScalarNode;
      if (first === '"' || first === "'") item = this.quoted(at, first);
      else item = this.bracketText(at);
      items.push(item);
      at = this.skipBlanks(item.span.end);
      if (this.text[at] === ',') at = this.skipBlanks(at + 1);
      else if (this.text[at] !== ']') throw new NotPlain();
      if (at >= this.end) throw new NotPlain();
    }
    this.restIsComment(at + 1);
    return { kind: 'list', items, span: { start: open, end: at + 1 } };
  }

  private bracketText(at: number): ScalarNode {
    this.refuseIndicators(at);
    let end = at;
    while (end < this.end && !',[]{}'.includes(this.text[end] ?? '')) end++;
    while (end > at && this.text.charCodeAt(end - 1) === BLANK) end--;
    const text = this.text.slice(at, end);
    if (end === at || end >= this.end || /:(?: |$)| #/u.test(text)) throw new NotPlain();
    return { kind: 'scalar', text, style: 'plain', span: { start: at, end } };
  }

  /** Text behind | (line by line) or > (lines joined); ends above the first line that is not indented below its field. */
  private blockText(at: number, column: number, mark: '|' | '>'): ScalarNode {
    const header = this.text.slice(at + 1, this.end).trimEnd();
    if (header !== '' && header !== '-') throw new NotPlain();
    const lines: string[] = [];
    let indent = -1;
    let end = at + 1;
    while (this.next < this.text.length) {
      const before = this.next;
      this.takeLine();
      let content = this.lineStart;
      while (this.text.charCodeAt(content) === BLANK) content++;
      if (content >= this.end) {
        if (this.end > this.lineStart || indent < 0) throw new NotPlain();
        lines.push('');
        continue;
      }
      if (indent < 0) indent = content - this.lineStart;
      if (indent <= column) throw new NotPlain();
      if (content - this.lineStart < indent) {
        this.next = before;
        break;
      }
      if (mark === '>' && content - this.lineStart > indent) throw new NotPlain();
      lines.push(this.text.slice(this.lineStart + indent, this.end));
      end = Math.min(this.next, this.text.length);
    }
    while (lines.at(-1) === '') lines.pop();
    if (lines.length === 0 || (this.next < this.text.length && this.text.charCodeAt(this.next) === HASH))
      throw new NotPlain();
    const body =
      mark === '|'
        ? lines.join('\n')
        : lines.join('\n').replace(/\n(\n*)/gu, (_, more: string) => (more === '' ? ' ' : more));
    if (mark === '>' && /^ |\n /u.test(body)) throw new NotPlain();
    this.advance();
    if (this.column > column) throw new NotPlain();
    const text = header === '-' ? body : `${body}\n`;
    return { kind: 'scalar', text, style: mark === '|' ? 'literal' : 'folded', span: { start: at, end } };
  }

  private restIsComment(from: number): void {
    const at = this.skipBlanks(from);
    if (at >= this.end) return;
    if (this.text.charCodeAt(at) !== HASH || at === from) throw new NotPlain();
    this.comment(at);
  }

  private skipBlanks(from: number): number {
    let at = from;
    while (at < this.end && this.text.charCodeAt(at) === BLANK) at++;
    return at;
  }
}
