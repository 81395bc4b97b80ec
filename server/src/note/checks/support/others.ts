import type { NoteFacts } from '../../set/note-set.ts';
import type { CheckContext } from '../check.ts';
import type { Related } from '../../remark.ts';
import type { NoteReading } from '../../reading/note-reading.ts';
import type { Place } from '@sideport/schemas';
import { related } from './place.ts';

type Key = 'id' | 'patient' | 'lensSerial' | 'lensLot' | 'narrative' | 'pointsTo';
type Index = Map<string, NoteFacts[]>;

const indexes = new WeakMap<readonly NoteFacts[], Map<Key, Index>>();

/** The other notes of the set that share a fact with this one. A note without a place in the set has none. */
export function othersWith({ set, file }: CheckContext, key: Key, value: string | undefined): readonly NoteFacts[] {
  if (set === null || file === null || value === undefined) return [];
  return (indexOf(set.facts, key).get(value) ?? []).filter((facts) => facts.file !== file);
}

/** Made once per list of facts, so that a thousand notes are not compared with a thousand others. */
function indexOf(facts: readonly NoteFacts[], key: Key): Index {
  let known = indexes.get(facts);
  if (known === undefined) {
    known = new Map();
    indexes.set(facts, known);
  }
  let index = known.get(key);
  if (index === undefined) {
    index = new Map();
    for (const one of facts) {
      const value = one[key];
      if (value === undefined) continue;
      const same = index.get(value);
      if (same === undefined) index.set(value, [one]);
      else same.push(one);
    }
    known.set(key, index);
  }
  return index;
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
