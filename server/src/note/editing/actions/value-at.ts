import type { NoteReading, ReadValue } from '../../reading/note-reading.ts';

/** The understood value that an offset lies in or on whose key it lies. */
export function valueAt(reading: NoteReading, offset: number): ReadValue | undefined {
  return reading.values.find(({ field: { key, span } }) => (key?.start ?? span.start) <= offset && offset <= span.end);
}
