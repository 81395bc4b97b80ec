import type { Span } from '@sideport/schemas';
import type { NoteReading } from '../../reading/note-reading.ts';
import type { Edit } from '../../remark.ts';
import { lineAt } from '../../edits/lines.ts';
import { PROPOSED, proposalsIn } from '../../edits/marks.ts';
import { ownPart, withoutProposal } from '../../edits/remove-comment.ts';
import type { Comment } from '../../reading/tree.ts';
import { removeSpot } from '../remove-spot.ts';
import { allSpots, below, extent, spotAt, type Spot } from '../spots.ts';
import type { Action, ActionSource } from './action.ts';

/** A comment that asks for confirmation of what the dictation proposed, with the fields on its line. */
interface Open {
  readonly mark: Comment;
  readonly spots: readonly Spot[];
  /** Whether the comment says something besides, which stays. */
  readonly saysMore: boolean;
}

/** Proposals of the dictation, declined one by one, or confirmed or declined for the whole section. */
export const decideProposals: ActionSource = ({ reading }, offset) => {
  const all = openProposals(reading);
  const line = lineAt(reading.text, offset);
  const here = all.filter(({ mark: { span } }) => span.start >= line.start && span.end <= line.end);
  const section = sectionAt(reading, offset);
  const own = section === undefined ? [] : all.filter(({ spots }) => spots.some(({ path }) => path[0] === section));
  return [
    ...here.map((open) => decline(reading, open)),
    ...(own.length > 1 ? wholeSection(reading, String(section), own) : []),
  ];
};

function decline(reading: NoteReading, open: Open): Action {
  const [spot] = open.spots;
  const what = spot?.node?.kind === 'scalar' ? ` “${spot.node.text}”` : '';
  return {
    title: `Decline this proposal: take${what} out again`,
    safety: 'needs-review',
    edits: declining(reading, [open]),
  };
}

function wholeSection(reading: NoteReading, section: string, own: readonly Open[]): readonly Action[] {
  return [
    {
      title: `Confirm all ${own.length} proposals of ${section}: I have checked them`,
      safety: 'needs-review',
      edits: own.map(({ mark }) => withoutProposal(reading.text, mark)),
    },
    {
      title: `Decline all ${own.length} proposals of ${section}`,
      safety: 'needs-review',
      edits: declining(reading, own),
    },
  ];
}

/** Fields taken out, and marks; where nothing else is left of a section or an entry, that as a whole. */
function declining(reading: NoteReading, open: readonly Open[]): readonly Edit[] {
  const { text } = reading;
  const alone = open.filter(({ saysMore }) => !saysMore);
  const gone = new Set(alone.flatMap(({ spots }) => spots.map(({ path }) => path.join('.'))));
  const spans = alone.flatMap(({ mark, spots }) => [
    ...spots.map((spot) => removeSpot(text, emptied(reading, spot, gone)).span),
    withoutProposal(text, mark).span,
  ]);
  const beside = open.filter(({ saysMore }) => saysMore);
  return [
    ...merged(spans).map(({ start, end }) => ({ span: { start, end: behindDash(text, start, end) }, text: '' })),
    ...beside.flatMap(({ mark, spots }) => [
      ...merged(spots.map((spot) => valueSpan(text, spot, spots))).map((span) => ({ span, text: '' })),
      withoutProposal(text, mark),
    ]),
  ];
}

/** Of a field whose comment stays, its value; of several in brackets, those that were proposed. */
function valueSpan(text: string, spot: Spot, proposed: readonly Spot[]): Span {
  const { parent, key, node } = spot;
  const isFlow = parent?.node != null && '[{'.includes(text[parent.node.span.start] ?? ' ');
  if (
    isFlow &&
    parent.key !== null &&
    [...below(parent)].every(({ path }) => proposed.some((one) => one.path.at(-1) === path.at(-1)))
  )
    return valueSpan(text, parent, []);
  if (isFlow || key === null || node === null) return removeSpot(text, spot).span;
  const colon = /^\s*:/u.exec(text.slice(key.end, node.span.start))?.[0].length ?? 0;
  return { start: key.end + colon, end: node.span.end };
}

/** Spans that overlap or touch as one. */
function merged(spans: readonly Span[]): readonly Span[] {
  const out: { start: number; end: number }[] = [];
  for (const { start, end } of spans.toSorted((a, b) => a.start - b.start || a.end - b.end)) {
    const last = out.at(-1);
    if (last !== undefined && start <= last.end) last.end = Math.max(last.end, end);
    else out.push({ start, end });
  }
  return out;
}

/** What follows a dash stands one blank behind it. */
function behindDash(text: string, start: number, end: number): number {
  if (!/-[ \t]+$/u.test(text.slice(lineAt(text, start).start, start))) return end;
  return end + (/^[ \t]*/u.exec(text.slice(end))?.[0].length ?? 0);
}

/** The widest spot of which nothing stays. */
function emptied(reading: NoteReading, spot: Spot, gone: ReadonlySet<string>): Spot {
  const { parent } = spot;
  if (parent === null || parent.parent === null) return spot;
  const stays = [...allSpots(reading.tree, reading.kind)].some(
    (other) =>
      other.node?.kind === 'scalar' &&
      other.path.length > parent.path.length &&
      parent.path.every((step, at) => step === other.path[at]) &&
      !gone.has(other.path.join('.')),
  );
  return stays ? spot : emptied(reading, parent, gone);
}

function openProposals(reading: NoteReading): readonly Open[] {
  const { text, tree, kind } = reading;
  const marks = tree.comments.filter(({ text: words }) => words.startsWith(PROPOSED));
  if (marks.length === 0) return [];
  const scalars = [...allSpots(tree, kind)].filter(({ node }) => node?.kind === 'scalar');
  return marks.flatMap((mark): Open[] => {
    const { span } = mark;
    const line = lineAt(text, span.start);
    const spots = scalars.filter((spot) => extent(spot).start >= line.start && extent(spot).end <= span.start);
    const saysMore = ownPart(text, mark).text !== '';
    return spots.length === 0 ? [] : [{ mark, spots: spots.slice(-proposedIn(mark.text)), saysMore }];
  });
}

/** How many values a mark speaks of: in brackets, those that stand last on the line. */
function proposedIn(words: string): number {
  return Math.max(1, (proposalsIn(words) || words).split('“').length - 1);
}

function sectionAt(reading: NoteReading, offset: number): string | number | undefined {
  const aim = spotAt(reading.tree, reading.kind, offset);
  return aim?.spot.path[0] ?? undefined;
}
