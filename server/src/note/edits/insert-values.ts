import { recordPlan, type Plan, type RecordKind } from '@sideport/schemas';
import type { ListNode, MapEntry, MapNode, TreeNode } from '../reading/tree.ts';
import type { Edit } from '../remark.ts';
import { branchOf, childPlan, orderOf, type Addition, type Branch } from './additions.ts';
import { insertIntoBraces, insertIntoBrackets } from './insert-in-brackets.ts';
import { columnOf, lineAt, lineBehindMark, lineEnding, STEP } from './lines.ts';
import { joined, markedBehind } from './marked-lines.ts';
import { aboveFirst, lineEndBehind } from './places.ts';
import type { Editable } from './replace-value.ts';
import { asText, entryLines, writtenBehind } from './written-field.ts';

/** A note that values can be written into. */
export interface Insertable extends Editable {
  readonly kind: RecordKind | null;
}

/**
 * Edits that write values into a note where it has none: each in its section, in the order of an operation, comments
 * and layout untouched. What cannot be written without changing something else is left out.
 */
export function insertValues(note: Insertable, additions: readonly Addition[]): readonly Edit[] {
  const plan: Plan = recordPlan(note.kind ?? 'operation');
  const branch = branchOf(additions, plan);
  const { root } = note.tree;
  if (root === null) return intoNothing(note.text, branch, plan);
  return root.kind === 'map' ? joined(new Inserter(note).intoMap(root, plan, branch)) : [];
}

/** The same, or nothing at all where one of them has no place. */
export function insertAll(note: Insertable, additions: readonly Addition[]): readonly Edit[] {
  return additions.every((addition) => insertValues(note, [addition]).length > 0) ? insertValues(note, additions) : [];
}

/** Behind the blank lines and comments of a text that has nothing else. */
function intoNothing(text: string, branch: Branch, plan: Plan): readonly Edit[] {
  if (!text.split('\n').every((line) => /^\uFEFF?(?:---)?\s*(?:#.*)?$/u.test(line))) return [];
  const eol = lineEnding(text);
  const begun = /[^\n\uFEFF]$/u.test(text) ? eol : '';
  const lines = writtenBehind(branch, plan, -STEP, eol)?.below ?? '';
  const { length } = text;
  return lines === '' ? [] : [{ span: { start: length, end: length }, text: begun + lines.slice(eol.length) + eol }];
}

/** What is written by its name alone, without a place in the list. */
function onlyFields(branch: Branch): Branch | undefined {
  return [...branch.below.keys()].every((step) => typeof step === 'string') ? branch : undefined;
}

class Inserter {
  readonly #note: Insertable;
  readonly #text: string;
  readonly #eol: string;

  constructor(note: Insertable) {
    this.#note = note;
    this.#text = note.text;
    this.#eol = lineEnding(note.text);
  }

  intoMap(node: MapNode, plan: Plan | undefined, branch: Branch): readonly Edit[] {
    const inBraces = this.#text[node.span.start] === '{';
    const edits: Edit[] = [];
    const missing = new Map<string, Branch>();
    for (const [key, child] of branch.below) {
      if (typeof key !== 'string') continue;
      const entry = node.entries.find((one) => one.key === key);
      if (entry === undefined) missing.set(key, child);
      else if (entry.value !== null) edits.push(...this.#into(entry.value, childPlan(plan, key), child));
      else if (!inBraces) edits.push(...this.#behindColon(entry, childPlan(plan, key), child));
    }
    return [
      ...edits,
      ...(inBraces ? insertIntoBraces(this.#note, node, plan, missing) : this.#newFields(node, plan, missing)),
    ];
  }

  #into(node: TreeNode, plan: Plan | undefined, branch: Branch): readonly Edit[] {
    if (node.kind === 'list') return this.#intoList(node, plan, branch);
    if (node.kind === 'scalar') return [];
    if (plan?.kind !== 'list') return this.intoMap(node, plan, branch);
    // One entry written without a dash counts as a list of one; a second has no place there.
    const first = branch.below.get(0) ?? onlyFields(branch);
    return first === undefined ? [] : this.intoMap(node, childPlan(plan, 0), first);
  }

  #intoList(node: ListNode, plan: Plan | undefined, branch: Branch): readonly Edit[] {
    const edits: Edit[] = [];
    const added: Branch[] = [];
    for (const [at, child] of branch.below) {
      if (typeof at !== 'number') continue;
      const item = node.items[at];
      if (item !== undefined && item !== null) edits.push(...this.#into(item, childPlan(plan, 0), child));
      else if (at >= node.items.length) added.push(child);
    }
    if (added.length === 0) return edits;
    if (this.#text[node.span.start] === '[') return [...edits, ...insertIntoBrackets(this.#note, node, added)];
    const last = node.items.findLast((item) => item !== null);
    if (last === undefined || last === null) return edits;
    const column = columnOf(this.#text, node.span.start);
    const lines = added.flatMap((child) => entryLines(child, childPlan(plan, 0), column, this.#eol));
    return lines.length === 0 ? edits : [...edits, this.#below(last, column, lines.join(''))];
  }

  /** Behind the colon of an empty field; a comment there stays, and so does what was set aside as unreadable. */
  #behindColon({ keySpan }: MapEntry, plan: Plan | undefined, branch: Branch): readonly Edit[] {
    const line = lineAt(this.#text, keySpan.end);
    const rest = /^[ \t]*:(?<blank>[ \t]*|[ \t]+#.*)$/u.exec(this.#text.slice(keySpan.end, line.end));
    const written = writtenBehind(branch, plan, columnOf(this.#text, keySpan.start), this.#eol);
    if (rest === null || written === undefined) return [];
    const colon = line.end - (rest.groups?.['blank'] ?? '').length;
    if (this.#text.slice(colon, line.end).trim() === '')
      return [{ span: { start: colon, end: line.end }, text: asText(written) }];
    const { inline, mark, below } = written;
    return [
      { span: { start: colon, end: colon }, text: inline },
      ...(mark === undefined ? [] : (markedBehind(this.#note, colon, mark) ?? [])),
      { span: { start: line.end, end: line.end }, text: below },
    ].filter(({ text }) => text !== '');
  }

  #newFields(node: MapNode, plan: Plan | undefined, missing: ReadonlyMap<string, Branch>): readonly Edit[] {
    const [firstEntry] = node.entries;
    if (firstEntry === undefined) return [];
    const { start } = lineBehindMark(this.#text, firstEntry.keySpan.start);
    const before = this.#text.slice(start, firstEntry.keySpan.start);
    // Whatever else stands before a field, no column can be told from it.
    if (!/^[ \t]*(?:-[ \t]+)*$/u.test(before)) return [];
    const indent = ' '.repeat(columnOf(this.#text, firstEntry.keySpan.start));
    const above: string[] = [];
    const below = new Map<MapEntry, string[]>();
    for (const [key, child] of missing) {
      const written = writtenBehind(child, childPlan(plan, key), indent.length, this.#eol);
      if (written === undefined) continue;
      const field = `${key}:${asText(written)}`;
      const previous = node.entries
        .filter((entry) => orderOf(plan, entry.key) < orderOf(plan, key))
        .toSorted((a, b) => a.keySpan.start - b.keySpan.start)
        .at(-1);
      if (previous === undefined) above.push(field);
      else below.set(previous, [...(below.get(previous) ?? []), `${this.#eol}${indent}${field}`]);
    }
    return [
      ...(above.length === 0 ? [] : [this.#above(firstEntry, before, indent, above)]),
      ...[...below].map(([entry, lines]) => this.#below(entry.value ?? entry, indent.length, lines.join(''))),
    ];
  }

  #above({ keySpan }: MapEntry, before: string, indent: string, fields: readonly string[]): Edit {
    if (before.trim() !== '') {
      const lines = fields.map((field) => `${field}${this.#eol}${indent}`);
      return { span: { start: keySpan.start, end: keySpan.start }, text: lines.join('') };
    }
    const at = aboveFirst(this.#note, keySpan.start);
    return { span: { start: at, end: at }, text: fields.map((field) => `${indent}${field}${this.#eol}`).join('') };
  }

  #below(what: TreeNode | MapEntry, column: number, text: string): Edit {
    const at = lineEndBehind(this.#note, what, column);
    return { span: { start: at, end: at }, text };
  }
}
