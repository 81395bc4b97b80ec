import { recordPlan, type Plan } from '@sideport/schemas';
import { columnOf, lineAt, lineEnding, STEP } from './lines.ts';
import type { NoteReading } from '../reading/note-reading.ts';
import type { ListNode, MapNode, TreeNode } from '../reading/tree.ts';
import type { Edit } from '../remark.ts';
import { PROPOSED } from './marks.ts';
import { branchOf, childPlan, orderOf, type Addition, type Branch } from './additions.ts';
import { yamlTextInBrackets } from './yaml-text.ts';

/**
 * Edits that write values into a note where it has none: each in its section, in the order of an operation, comments
 * and layout untouched. What cannot be written without changing something else is left out.
 */
export function insertValues(reading: NoteReading, additions: readonly Addition[]): readonly Edit[] {
  const plan: Plan = recordPlan(reading.kind ?? 'operation');
  const branch = branchOf(additions, plan);
  const { root } = reading.tree;
  const inserter = new Inserter(reading);
  if (root === null)
    return [
      {
        span: { start: reading.text.length, end: reading.text.length },
        text: fieldLines(branch, plan, 0, lineEnding(reading.text)).join(''),
      },
    ];
  return root.kind === 'map' ? inserter.intoMap(root, plan, branch) : [];
}

class Inserter {
  readonly #text: string;
  readonly #reading: NoteReading;
  readonly #eol: string;

  constructor(reading: NoteReading) {
    this.#reading = reading;
    this.#text = reading.text;
    this.#eol = lineEnding(reading.text);
  }

  intoMap(node: MapNode, plan: Plan | undefined, branch: Branch): readonly Edit[] {
    if (this.#text[node.span.start] === '{') return this.#intoBraces(node, branch);
    const edits: Edit[] = [];
    const missing = new Map<string, Branch>();
    for (const [key, child] of branch.below) {
      if (typeof key !== 'string') continue;
      const entry = node.entries.find((one) => one.key === key);
      if (entry === undefined) missing.set(key, child);
      else if (entry.value === null)
        edits.push(
          ...this.#afterColon(
            entry.keySpan.end,
            child,
            childPlan(plan, key),
            columnOf(this.#text, entry.keySpan.start),
          ),
        );
      else edits.push(...this.#into(entry.value, childPlan(plan, key), child));
    }
    return [...edits, ...this.#newFields(node, plan, missing)];
  }

  #into(node: TreeNode, plan: Plan | undefined, branch: Branch): readonly Edit[] {
    if (node.kind === 'map')
      return plan?.kind === 'list' ? this.#intoOnly(node, plan, branch) : this.intoMap(node, plan, branch);
    return node.kind === 'list' ? this.#intoList(node, plan, branch) : [];
  }

  /** One entry written without a dash counts as a list of one; a second has no place there. */
  #intoOnly(node: MapNode, plan: Plan, branch: Branch): readonly Edit[] {
    const first = branch.below.get(0);
    return first === undefined ? [] : this.intoMap(node, childPlan(plan, 0), first);
  }

  #intoList(node: ListNode, plan: Plan | undefined, branch: Branch): readonly Edit[] {
    const edits: Edit[] = [];
    const added = [...branch.below]
      .filter(([at]) => typeof at === 'number' && at >= node.items.length)
      .map(([, child]) => child);
    for (const [at, child] of branch.below) {
      const item = typeof at === 'number' ? node.items[at] : undefined;
      if (item !== undefined && item !== null) edits.push(...this.#into(item, childPlan(plan, 0), child));
    }
    if (added.length === 0) return edits;
    if (this.#text[node.span.start] === '[') return [...edits, ...this.#intoBrackets(node, added)];
    const last = node.items.findLast((item) => item !== null);
    if (last === undefined || last === null) return edits;
    const column = columnOf(this.#text, node.span.start);
    const lines = added.flatMap((child) => entryLines(child, childPlan(plan, 0), column, this.#eol));
    return [...edits, this.#below(last.span.end, lines.join(''))];
  }

  #intoBrackets(node: ListNode, added: readonly Branch[]): readonly Edit[] {
    const values = added.flatMap(({ value }) => (value === undefined ? [] : [value]));
    const end = node.span.end - 1;
    const first = node.items.length === 0;
    const text = values
      .map(({ text: written }, at) => `${first && at === 0 ? '' : ', '}${yamlTextInBrackets(written)}`)
      .join('');
    return values.length === 0 ? [] : [{ span: { start: end, end }, text }, ...this.#mark(end, values)];
  }

  #intoBraces(node: MapNode, branch: Branch): readonly Edit[] {
    const values = [...branch.below].flatMap(([key, { value }]) =>
      value === undefined || node.entries.some((entry) => entry.key === key) ? [] : [{ key, value }],
    );
    if (values.length === 0) return [];
    const end = this.#text.slice(0, node.span.end - 1).trimEnd().length;
    const first = node.entries.length === 0;
    const text = values
      .map(({ key, value }, at) => `${first && at === 0 ? '' : ', '}${key}: ${yamlTextInBrackets(value.text)}`)
      .join('');
    return [
      { span: { start: end, end }, text },
      ...this.#mark(
        end,
        values.map(({ value }) => value),
      ),
    ];
  }

  /** A mark at the end of a line whose values stand in brackets. */
  #mark(offset: number, values: readonly Addition[]): readonly Edit[] {
    const mark = markOf(values);
    if (mark === undefined) return [];
    const line = lineAt(this.#text, offset);
    const present = this.#reading.tree.comments.find(({ span }) => span.start >= line.start && span.end <= line.end);
    if (present === undefined) return [{ span: { start: line.end, end: line.end }, text: ` # ${mark}` }];
    const start = present.span.start + 1;
    return [{ span: { start, end: start }, text: ` ${mark};` }];
  }

  #afterColon(keyEnd: number, branch: Branch, plan: Plan | undefined, column: number): readonly Edit[] {
    const colon = this.#text.indexOf(':', keyEnd) + 1;
    const text = valueText(branch, plan, column, this.#eol);
    const line = lineAt(this.#text, colon);
    const rest = this.#text.slice(colon, line.end);
    // A comment behind the empty field stays behind what is written there now.
    const end = rest.trim() === '' ? line.end : colon;
    return text === undefined ? [] : [{ span: { start: colon, end }, text }];
  }

  #newFields(node: MapNode, plan: Plan | undefined, missing: ReadonlyMap<string, Branch>): readonly Edit[] {
    const [firstEntry] = node.entries;
    if (firstEntry === undefined) return [];
    const column = columnOf(this.#text, firstEntry.keySpan.start);
    const places = new Map<number, string[]>();
    for (const [key, child] of missing) {
      const before = node.entries
        .filter((entry) => orderOf(plan, entry.key) < orderOf(plan, key))
        .toSorted((a, b) => a.keySpan.start - b.keySpan.start)
        .at(-1);
      const at = before === undefined ? firstEntry.keySpan.start : endOf(before.value, before.keySpan.end);
      const lines = places.get(at) ?? [];
      const field = `${key}:${valueText(child, childPlan(plan, key), column, this.#eol) ?? ''}`;
      lines.push(
        before === undefined
          ? `${field}${this.#eol}${' '.repeat(column)}`
          : `${this.#eol}${' '.repeat(column)}${field}`,
      );
      places.set(at, lines);
    }
    return [...places].map(([at, lines]) =>
      at === firstEntry.keySpan.start
        ? { span: { start: at, end: at }, text: lines.join('') }
        : this.#below(at, lines.join('')),
    );
  }

  /** Below the line on which something ends, behind its comment. */
  #below(end: number, text: string): Edit {
    const trimmed = this.#text.slice(0, end).trimEnd().length;
    const line = lineAt(this.#text, trimmed);
    return { span: { start: line.end, end: line.end }, text };
  }
}

function endOf(value: TreeNode | null, otherwise: number): number {
  return value === null ? otherwise : value.span.end;
}

/** What stands behind the colon of a new field. */
function valueText(branch: Branch, plan: Plan | undefined, column: number, eol: string): string | undefined {
  if (branch.value !== undefined) return ` ${withMark(branch.value)}`;
  if (branch.below.size === 0) return undefined;
  if (plan?.kind !== 'list')
    return fieldLines(branch, plan, column + STEP, eol)
      .map((line) => `${eol}${line.trimEnd()}`)
      .join('');
  const entries = [...branch.below.values()];
  if (plan.item.kind === 'value') return ` ${wordList(entries)}`;
  return entries.flatMap((entry) => entryLines(entry, plan.item, column + STEP, eol)).join('');
}

function wordList(entries: readonly Branch[]): string {
  const values = entries.flatMap(({ value }) => (value === undefined ? [] : [value]));
  return `[${values.map(({ text }) => yamlTextInBrackets(text)).join(', ')}]${behind(values)}`;
}

/** The mark that asks for confirmation of values on one line, with the words of each. */
function markOf(values: readonly Addition[]): string | undefined {
  if (!values.some(({ proposed }) => proposed)) return undefined;
  return `${PROPOSED}: ${values.map(({ words }) => `“${shortened(words)}”`).join(', ')}`;
}

function behind(values: readonly Addition[]): string {
  const mark = markOf(values);
  return mark === undefined ? '' : ` # ${mark}`;
}

const SHOWN = 60;

function shortened(words: string): string {
  const line = words.replace(/\s+/gu, ' ').replace(/[“”]/gu, "'").trim();
  return line.length > SHOWN ? `${line.slice(0, SHOWN - 1)}…` : line;
}

/** The fields of a group, one text for each, lines below the first carrying their own indentation. */
function fieldLines(branch: Branch, plan: Plan | undefined, column: number, eol: string): readonly string[] {
  return [...branch.below].map(
    ([key, child]) =>
      `${' '.repeat(column)}${key}:${valueText(child, childPlan(plan, key), column, eol) ?? ''}${column === 0 ? eol : ''}`,
  );
}

/** A new entry of a list, each line beginning with its line end. */
function entryLines(branch: Branch, plan: Plan | undefined, column: number, eol: string): readonly string[] {
  if (branch.value !== undefined) return [`${eol}${' '.repeat(column)}- ${withMark(branch.value)}`];
  return fieldLines(branch, plan, column + STEP, eol).map(
    (line, at) => `${eol}${at === 0 ? `${' '.repeat(column)}- ${line.trimStart()}` : line}`,
  );
}

function withMark(value: Addition): string {
  // Behind a block, a comment would be a part of the text.
  return value.text.includes('\n') ? value.text : `${value.text}${behind([value])}`;
}
