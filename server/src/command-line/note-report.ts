import { lineIndex } from '../language-server/line-index.ts';
import type { NoteReading } from '../note/reading/note-reading.ts';
import type { Remark } from '../note/remark.ts';
import type { RelatedPlace, ReportedNote, ReportRange } from '../note/reports/report-input.ts';
import type { NoteSet } from '../note/set/note-set.ts';

/** The remarks of a note with lines and columns, as reports print them. Severity, words and order stay as they are. */
export function reportOf(
  file: string,
  reading: NoteReading,
  remarks: readonly Remark[],
  set: NoteSet | null,
): ReportedNote {
  const id = reading.kind === null || reading.kind === 'department' ? undefined : reading.note.id?.value;
  if (remarks.length === 0) return { file, id: id ?? null, remarks: [] };
  const range = ranges(reading.text);
  return {
    file,
    id: id ?? null,
    remarks: remarks.map(({ check, severity, message, path, span, related }) => ({
      check,
      severity,
      message,
      path,
      range: range(span),
      related: related.map((place): RelatedPlace => {
        if (place.file === undefined) return { message: place.message, range: range(place.span) };
        const other = ranges(set?.open(place.file)?.text ?? '');
        return { message: place.message, file: place.file, range: other(place.span) };
      }),
    })),
  };
}

function ranges(text: string): (span: { readonly start: number; readonly end: number }) => ReportRange {
  const index = lineIndex(text);
  const place = (offset: number) => {
    const { line, character } = index.positionAt(offset);
    return { line: line + 1, column: character + 1 };
  };
  return ({ start, end }) => ({ start: place(start), end: place(end) });
}
