import type { Span } from '@sideport/schemas';
import type { NoteReading } from '../reading/note-reading.ts';
import type { Comment, MapNode, TreeNode } from '../reading/tree.ts';
import { nearest } from '@sideport/schemas';
import type { Fix, Remark } from '../remark.ts';
import { deletingComment, replacing } from './support/fixes.ts';
import { checkById, knownChecks } from './known-checks.ts';

/** A comment `allow CHECK: reason`. */
interface Allowance {
  readonly check: string;
  readonly reason: string;
  readonly comment: Comment;
  /** What it covers: its own line, the field or section that begins below it, or, above the first field, the whole note. */
  readonly covers: Span;
}

const shape = /^allow\s+([a-z0-9-]+)\s*(?::\s*(.*))?$/u;

/** Takes away the remarks that the note allows, and remarks on allowances that are unused, unknown, without reason or refused. */
export function applyAllowances(reading: NoteReading, remarks: readonly Remark[]): Remark[] {
  const allowances = allowancesIn(reading);
  if (allowances.length === 0) return [...remarks];
  const used = new Set<Allowance>();
  const kept = remarks.filter((remark) => {
    const allowance = allowances.find(
      (candidate) =>
        candidate.check === remark.check &&
        candidate.reason !== '' &&
        checkById(remark.check)?.allowable === true &&
        overlaps(candidate.covers, remark.span),
    );
    if (allowance !== undefined) used.add(allowance);
    return allowance === undefined;
  });
  return [...kept, ...allowances.flatMap((allowance) => remarkOn(reading, allowance, used))];
}

function allowancesIn(reading: NoteReading): Allowance[] {
  const { text, tree } = reading;
  return tree.comments.flatMap((comment) => {
    const match = shape.exec(comment.text);
    if (match?.[1] === undefined) return [];
    return [{ check: match[1], reason: (match[2] ?? '').trim(), comment, covers: coveredBy(text, tree.root, comment) }];
  });
}

function coveredBy(text: string, root: TreeNode | null, comment: Comment): Span {
  const lineStart = text.lastIndexOf('\n', comment.span.start - 1) + 1;
  const alone = text.slice(lineStart, comment.span.start).trim() === '';
  if (!alone) return { start: lineStart, end: comment.span.end };
  if (root?.kind !== 'map') return { start: 0, end: text.length };
  if ((root.entries[0]?.keySpan.start ?? 0) > comment.span.start) return { start: 0, end: text.length };
  return blockBelow(root, comment.span.end) ?? { start: lineStart, end: comment.span.end };
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

function remarkOn(reading: NoteReading, allowance: Allowance, used: ReadonlySet<Allowance>): Remark[] {
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
      ...(near === undefined ? [] : [replacing(nameIn(reading, allowance), near)]),
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
  if (!used.has(allowance))
    return say(
      'allowance-unused',
      'warning',
      `Nothing here is remarked by “${check}”: the allowance is not needed. Delete it.`,
      deletingComment(reading, comment.span, 'Delete the allowance', 'safe'),
    );
  return [];
}

/** Where the name of the check stands in the comment. */
function nameIn({ text }: NoteReading, { check, comment }: Allowance): Span {
  const start = text.indexOf(check, comment.span.start);
  return { start, end: start + check.length };
}

function overlaps(a: Span, b: Span): boolean {
  return a.start < b.end && b.start < a.end;
}
