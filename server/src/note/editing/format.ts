import { site } from '@sideport/schemas/notation/site.ts';
import { mayBeHour } from '../checks/support/bare-hour.ts';
import { planOfValue, type NoteReading, type ReadValue } from '../reading/note-reading.ts';
import { readNote } from '../reading/read-note.ts';
import type { Edit } from '../remark.ts';
import { layoutEdits } from './layout.ts';
import { lineAt, lineEnding } from '../edits/lines.ts';

/**
 * The edits that tidy a note: units written out, one blank behind colons and dashes, fields in the column of their
 * section, no blanks at line ends, at most one blank line in a row, a line end at the end. Words, numbers and order
 * stay as they are. A text that cannot be read throughout is left alone.
 */
export function formatNote(reading: NoteReading): readonly Edit[] {
  if (reading.tree.faults.length > 0 || reading.kind === null) return [];
  const edits = [
    ...reading.values.flatMap((value) => tidyValue(reading, value)),
    ...layoutEdits(reading),
    ...blankEdits(reading),
  ];
  return changing(reading.text, edits);
}

/** The tidied text of a note; the same text where there is nothing to tidy. */
export function formatText(text: string, kind?: 'department'): string {
  return formatNote(readNote(text, kind))
    .toReversed()
    .reduce((before, { span, text: written }) => before.slice(0, span.start) + written + before.slice(span.end), text);
}

/** The edits for the line that was just left by Enter: its unit and the blanks at its end, nothing else. */
export function formatLineLeft(reading: NoteReading, cursor: number): readonly Edit[] {
  const { text } = reading;
  const here = lineAt(text, cursor);
  if (here.start === 0) return [];
  const line = lineAt(text, here.start - 1);
  const onLine = reading.values.filter(({ field }) => field.span.start >= line.start && field.span.end <= line.end);
  return changing(
    text,
    onLine.flatMap((value) => tidyValue(reading, value)),
  );
}

function tidyValue(reading: NoteReading, value: ReadValue): readonly Edit[] {
  const { field, style } = value;
  const notation = planOfValue(reading, value)?.notation;
  // A term is the writer's own choice of words.
  if (style !== 'plain' || notation?.write === undefined || notation.words !== undefined) return [];
  // Whether an hour or degrees are meant is asked by a check; a sign of the degree would answer for the writer.
  if (notation.name === site.name && mayBeHour(field.text)) return [];
  const tidy = notation.write(field.text);
  const again = notation.read(tidy);
  // What would be read as something else is not tidier.
  if (!again.ok || JSON.stringify(meaning(again.value)) !== JSON.stringify(meaning(field.value))) return [];
  return [{ span: field.span, text: tidy }];
}

/** A value without how it was typed. */
function meaning(value: unknown): unknown {
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([key]) => key !== 'typed' && key !== 'typedUnit')
      .map(([key, part]) => [key, meaning(part)]),
  );
}

/** Blanks at line ends, runs of blank lines, the end of the text; what lies within a text of the note stays. */
function blankEdits({ text, tree, values }: NoteReading): readonly Edit[] {
  const edits: Edit[] = [];
  const long = values
    .filter(({ field }) => text.slice(field.span.start, field.span.end).includes('\n'))
    .map(({ field }) => field.span);
  const isWithin = (offset: number) => long.some(({ start, end }) => start < offset && offset < end);
  for (const { index, 0: found } of text.matchAll(/[ \t]+(?=\r?\n|$)/gu)) {
    if (!isWithin(index)) edits.push({ span: { start: index, end: index + found.length }, text: '' });
  }
  for (const { index, 0: found } of text.matchAll(/(?:\r?\n[ \t]*){3,}/gu)) {
    const last = found.lastIndexOf('\n') + 1;
    const lines = found.slice(0, last);
    if (!isWithin(index) && !isWithin(index + found.length)) {
      const span = { start: index, end: index + lines.length };
      dropWithin(edits, span);
      edits.push({ span, text: lineEnding(text).repeat(index + found.length === text.length ? 1 : 2) });
    }
  }
  const end = text.trimEnd().length;
  if (tree.root !== null && !isWithin(text.length - 1) && !/^\r?\n$/u.test(text.slice(end))) {
    const span = { start: end, end: text.length };
    dropWithin(edits, span);
    edits.push({ span, text: lineEnding(text) });
  }
  return edits;
}

function dropWithin(edits: Edit[], { start, end }: { start: number; end: number }): void {
  for (let index = edits.length - 1; index >= 0; index--) {
    const span = edits[index]?.span;
    if (span !== undefined && span.start >= start && span.end <= end) edits.splice(index, 1);
  }
}

/** In the order of the text, none that changes nothing, none that overlaps the one before. */
function changing(text: string, edits: readonly Edit[]): readonly Edit[] {
  let end = -1;
  return edits
    .filter(({ span, text: written }) => text.slice(span.start, span.end) !== written)
    .toSorted((a, b) => a.span.start - b.span.start || a.span.end - b.span.end)
    .filter(({ span }) => {
      if (span.start < end) return false;
      end = Math.max(end, span.end);
      return true;
    });
}
