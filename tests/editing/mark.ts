import { readNote } from '../../server/src/note/reading/read-note.ts';
import { complete } from '../../server/src/note/editing/complete.ts';
import type { Proposal } from '../../server/src/note/editing/proposal.ts';
import type { Edit } from '../../server/src/note/remark.ts';
import type { Surroundings } from '../../server/src/note/review.ts';
import type { Around } from '../../server/src/note/editing/around.ts';

/** The cursor in the texts of these tests. */
export const CURSOR = '‸';

export function atCursor(marked: string, surroundings: Surroundings = {}): { around: Around; offset: number } {
  const offset = marked.indexOf(CURSOR);
  if (offset < 0) throw new Error('The text has no cursor mark');
  const text = marked.replace(CURSOR, '');
  return { around: { reading: readNote(text), surroundings }, offset };
}

export function proposalsAt(marked: string, surroundings?: Surroundings): readonly Proposal[] {
  const { around, offset } = atCursor(marked, surroundings);
  return complete(around, offset);
}

export function labelsAt(marked: string, surroundings?: Surroundings): readonly string[] {
  return proposalsAt(marked, surroundings).map(({ label }) => label);
}

/** The text after a proposal was chosen. Places of a snippet are shown as ‹1›, ‹2›; the last as ‹0›. */
export function choose(marked: string, label: string, surroundings?: Surroundings): string {
  const { around, offset } = atCursor(marked, surroundings);
  const proposals = complete(around, offset);
  const proposal = proposals.find((each) => each.label === label);
  if (proposal === undefined) {
    throw new Error(`“${label}” is not proposed, only: ${proposals.map((each) => each.label).join(' | ')}`);
  }
  const { start, end } = proposal.replace;
  const { text } = around.reading;
  if (start > offset || end < offset || /[\r\n]/.test(text.slice(start, end))) {
    throw new Error('What is replaced is not on the line of the cursor');
  }
  const insert =
    proposal.snippet === true
      ? proposal.insert.replace(
          /\$\{(\d+)\}|\$(\d+)/g,
          (_, a: string | undefined, b: string | undefined) => `‹${a ?? b ?? ''}›`,
        )
      : proposal.insert;
  return text.slice(0, start) + insert + text.slice(end);
}

/** The text after edits, which never overlap. */
export function apply(text: string, edits: readonly Edit[]): string {
  return edits
    .toSorted((a, b) => b.span.start - a.span.start || b.span.end - a.span.end)
    .reduce(
      (before, { span, text: inserted }) => before.slice(0, span.start) + inserted + before.slice(span.end),
      text,
    );
}
