import { notesWith, type LookedUpBy, type NoteFacts } from '../../set/note-set.ts';
import type { CheckContext } from '../check.ts';
import type { Related } from '../../remark.ts';
import type { NoteReading } from '../../reading/note-reading.ts';
import type { Place } from '@sideport/schemas';
import { related } from './place.ts';

/** The other notes of the set that share a fact with this one. A note without a place in the set has none. */
export function othersWith(
  { set, file }: CheckContext,
  key: LookedUpBy,
  value: string | undefined,
  words?: readonly string[],
): readonly NoteFacts[] {
  if (set === null || file === null || value === undefined) return [];
  return notesWith(set, key, value, words).filter((facts) => facts.file !== file);
}

/** A place in another note, found by opening it; nothing when it cannot be opened. */
export function placeIn(
  { set }: CheckContext,
  file: string,
  message: string,
  find: (reading: NoteReading) => Place | undefined,
): Related[] {
  const reading = set?.open(file);
  const place = reading === undefined ? undefined : find(reading);
  return place === undefined ? [] : [related(message, place, file)];
}

/** Whether this note is the later of two, so that a pair is told once; of the same day, the one whose file comes later. */
export function isLater(date: string | undefined, context: CheckContext, other: NoteFacts): boolean {
  if (date === undefined || other.date === undefined || date === other.date) return (context.file ?? '') > other.file;
  return date > other.date;
}
