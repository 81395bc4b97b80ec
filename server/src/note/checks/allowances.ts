import type { Span } from '@sideport/schemas';
import type { NoteReading } from '../reading/note-reading.ts';
import type { Comment, MapNode, TreeNode } from '../reading/tree.ts';
import { nearest } from '@sideport/schemas';
import type { Fix, Remark } from '../remark.ts';
import { lineBehindMark } from '../edits/lines.ts';
import { ownPart } from '../edits/remove-comment.ts';
import { deletingComment } from './support/fixes.ts';
import { checkById, knownChecks } from './known-checks.ts';

/** A comment `allow CHECK: reason`. */
interface Allowance {
  readonly check: string;
  readonly reason: string;
  readonly comment: Comment;
  /** What it covers: its own line, the field or section that begins below it, or, above the first field, the whole note. */
  readonly covers: Span;
  /** Whether it stands behind a line: a remark that speaks of that line as well is covered too. */
  readonly isBehind: boolean;
}

/** What the checks said and could not say of a note. */
export interface Spoken {
  /** All that was remarked, also what was then taken back because another remark says it or the department silenced it. */
  readonly said: readonly Remark[];
  /** The checks that did not run, or not to their end. */
  readonly silent: ReadonlySet<string>;
}

const shape = /^allow\s+([a-z0-9-]+)\s*(?::\s*(.*))?$/u;

/** Takes away the remarks that the note allows, and remarks on allowances that are unused, unknown, without reason or refused. */
export function applyAllowances(reading: NoteReading, remarks: readonly Remark[], spoken: Spoken): Remark[] {
  const allowances = allowancesIn(reading);
  if (allowances.length === 0) return [...remarks];
  const kept = remarks.filter((remark) => !allowances.some((allowance) => takesAway(allowance, remark)));
  return [...kept, ...allowances.flatMap((allowance) => remarkOn(reading, allowance, spoken))];
}

function takesAway(allowance: Allowance, remark: Remark): boolean {
  if (allowance.check !== remark.check || allowance.reason === '' || checkById(remark.check)?.allowable !== true)
    return false;
  return (
    overlaps(allowance.covers, remark.span) ||
    (allowance.isBehind &&
      remark.related.some(({ file, span }) => file === undefined && overlaps(allowance.covers, span)))
  );
}

function allowancesIn(reading: NoteReading): Allowance[] {
  const { text, tree } = reading;
  return tree.comments.flatMap((whole): Allowance[] => {
    const comment = ownPart(text, whole);
    const match = shape.exec(comment.text);
    if (match?.[1] === undefined) return [];
    return [{ check: match[1], reason: (match[2] ?? '').trim(), comment, ...coverOf(text, tree.root, whole, comment) }];
  });
}

function coverOf(text: string, root: TreeNode | null, whole: Comment, { span }: Comment) {
  const { start } = lineBehindMark(text, whole.span.start);
  if (text.slice(start, whole.span.start).trim() !== '') return { covers: { start, end: span.end }, isBehind: true };
  const first = root?.kind === 'map' ? root.entries[0] : undefined;
  const covers =
    root?.kind !== 'map' || (first?.keySpan.start ?? 0) > span.start
      ? { start: 0, end: text.length }
      : (blockBelow(root, span.end) ?? { start, end: span.end });
  return { covers, isBehind: false };
}

/** The first field or entry that begins behind an offset, with all that belongs to it. */
function blockBelow(node: TreeNode, offset: number): Span | undefined {
  const parts: readonly { span: Span; value: TreeNode | null }[] =
    node.kind === 'map' ? entriesOf(node) : node.kind === 'list' ? itemsOf(node.items) : [];
  for (const { span, value } of parts) {
    if (span.start >= offset) return span;
    if (span.end > offset && value !== null) {
      const inside = blockBelow(value, offset);
      if (inside !== undefined) return inside;
    }
  }
  return undefined;
}

function entriesOf(node: MapNode) {
  return node.entries.map(({ keySpan, value }) => ({
    span: { start: keySpan.start, end: Math.max(keySpan.end, value?.span.end ?? 0) },
    value,
  }));
}

function itemsOf(items: readonly (TreeNode | null)[]) {
  return items.flatMap((item) => (item === null ? [] : [{ span: item.span, value: item }]));
}

function remarkOn(reading: NoteReading, allowance: Allowance, spoken: Spoken): Remark[] {
  const { check, comment } = allowance;
  const say = (id: string, severity: Remark['severity'], message: string, ...fixes: readonly Fix[]): Remark[] => [
    { check: id, severity, message, span: comment.span, path: [], related: [], fixes },
  ];
  const known = checkById(check);
  if (known === undefined) {
    const near = nearest(
      check,
      knownChecks.map(({ id }) => id),
    );
    return say(
      'allowance-unknown',
      'warning',
      `“${check}” is no check that can be allowed.${near === undefined ? '' : ` Did you mean “${near}”?`}`,
      ...(near === undefined ? [] : [renaming(reading, allowance, near)]),
    );
  }
  if (!known.allowable)
    return say(
      'allowance-refused',
      'error',
      `“${check}” cannot be allowed: it guards side, identity, the lens or the reading of the note itself. Put the note right instead.`,
    );
  if (allowance.reason === '')
    return say(
      'allowance-without-reason',
      'warning',
      `The allowance of “${check}” gives no reason. Write “allow ${check}: why”.`,
    );
  if (!spoken.said.some((remark) => takesAway(allowance, remark)) && couldSpeak(reading, allowance, spoken))
    return say(
      'allowance-unused',
      'warning',
      `Nothing here is remarked by “${check}”: the allowance is not needed. Delete it.`,
      deletingComment(reading, comment.span, 'Delete the allowance', 'safe'),
    );
  return [];
}

/** Whether the check has looked at all that the allowance covers: only then does its silence mean anything. */
function couldSpeak({ tree, remarks }: NoteReading, { check, covers }: Allowance, { silent }: Spoken): boolean {
  if (silent.has(check) || tree.faults.some((fault) => fault.check === 'text-not-readable')) return false;
  // What the reader remarks on is passed over by the checks.
  return !remarks.some(({ span }) => overlaps(covers, span));
}

function renaming({ text }: NoteReading, { check, comment }: Allowance, near: string): Fix {
  const start = text.indexOf(check, comment.span.start);
  const edits = [{ span: { start, end: start + check.length }, text: near }];
  return { title: `Write “${near}”`, safety: 'needs-review', edits };
}

function overlaps(a: Span, b: Span): boolean {
  return a.start < b.end && b.start < a.end;
}
