import type { Path } from '@sideport/schemas';
import type { NoteReading } from '../reading/note-reading.ts';
import type { Remark } from '../remark.ts';

/** Errors of writing that lose nothing: there was no value, or the kind of record was found all the same. */
const NOTHING_LOST = new Set(['empty-value', 'record-kind-missing', 'record-kind-disagrees']);

/** How many places of a note could not be read, so that what was written there does not leave. */
export function unreadPlaces({ remarks, values }: NoteReading): number {
  const isRead = ({ path }: Remark): boolean =>
    // A fault of the text itself has no path; what it marks is lost.
    path.length > 0 && values.some(({ field }) => begins(field.path, path));
  return remarks.filter((one) => one.severity === 'error' && !NOTHING_LOST.has(one.check) && !isRead(one)).length;
}

const begins = (path: Path, beginning: Path): boolean => beginning.every((step, at) => path[at] === step);
