import type { Span } from '@sideport/schemas';
import type { NoteReading } from '../reading/note-reading.ts';
import { lineAt } from '../edits/lines.ts';
import { allSpots, extent } from './spots.ts';

/** Lines that fold away behind the first. */
export interface Fold {
  readonly span: Span;
  readonly kind: 'section' | 'comment';
}

/** Sections, entries, long texts and runs of comments that cover several lines. */
export function folds(reading: NoteReading): readonly Fold[] {
  const { text, tree, kind } = reading;
  const sections = [...allSpots(tree, kind)].flatMap((spot): Fold[] => {
    const span = withoutBlankEnd(text, extent(spot));
    return text.slice(span.start, span.end).includes('\n') ? [{ span, kind: 'section' }] : [];
  });
  return [...sections, ...commentRuns(reading)];
}

function withoutBlankEnd(text: string, { start, end }: Span): Span {
  return { start, end: start + text.slice(start, end).trimEnd().length };
}

function commentRuns({ text, tree }: NoteReading): readonly Fold[] {
  const runs: Span[] = [];
  for (const { span } of tree.comments) {
    if (text.slice(lineAt(text, span.start).start, span.start).trim() !== '') continue;
    const last = runs.at(-1);
    if (last !== undefined && /^\r?\n[ \t]*$/u.test(text.slice(last.end, span.start)))
      runs[runs.length - 1] = { start: last.start, end: span.end };
    else runs.push(span);
  }
  return runs
    .filter(({ start, end }) => text.slice(start, end).includes('\n'))
    .map((span) => ({ span, kind: 'comment' }));
}
