import { auditFacts } from '../../server/src/note/audit/extract.ts';
import { AuditCollector, type AuditPartial } from '../../server/src/note/audit/partial.ts';
import { readNote } from '../../server/src/note/reading/read-note.ts';
import { contextOf } from '../../server/src/note/review.ts';
import { DEPARTMENT } from '../../tools/year/department.ts';
import { makeYear, type YearFile } from '../../tools/year/make-year.ts';

const reading = readNote(DEPARTMENT, 'department');
export const department = reading.kind === 'department' ? reading.note : null;

/** The facts of some notes, read from their text as the command does. */
export function factsOfNotes(files: Iterable<YearFile>): AuditPartial {
  const collector = new AuditCollector();
  for (const { file, text } of files) {
    if (file.endsWith('.opnote.yaml')) collector.add(auditFacts(contextOf(readNote(text), { department, file })));
  }
  return collector.finish();
}

let year: AuditPartial | undefined;

/** The facts of the whole invented year; made once per test file. */
export function wholeYear(): AuditPartial {
  return (year ??= factsOfNotes(makeYear()));
}

/** The day on which the invented year is audited. */
export const AS_OF = '2025-02-01';
