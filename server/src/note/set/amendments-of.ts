import type { Amendment } from '@sideport/schemas';
import type { NoteFacts, NoteSet } from './note-set.ts';

const indexes = new WeakMap<readonly NoteFacts[], Map<string, NoteFacts[]>>();

/** The amendments that point to a note, oldest first; one that cannot be read any more is left out. */
export function amendmentsOf(set: NoteSet | null | undefined, id: string | undefined): readonly Amendment[] {
  if (!set || id === undefined) return [];
  return amendmentFacts(set, id).flatMap(({ file }) => {
    const reading = set.open(file);
    return reading?.kind === 'amendment' ? [reading.note] : [];
  });
}

/** The few facts of the amendments that point to a note, oldest first. */
export function amendmentFacts(set: NoteSet, id: string): readonly NoteFacts[] {
  return indexOf(set.facts).get(id) ?? [];
}

/** Amendments by the note they point to, made once per list of facts. */
function indexOf(facts: readonly NoteFacts[]): ReadonlyMap<string, readonly NoteFacts[]> {
  let index = indexes.get(facts);
  if (index === undefined) {
    index = new Map();
    for (const one of facts) {
      if (one.record !== 'amendment' || one.pointsTo === undefined) continue;
      index.set(one.pointsTo, [...(index.get(one.pointsTo) ?? []), one]);
    }
    for (const [id, found] of index) index.set(id, found.toSorted(byTime));
    indexes.set(facts, index);
  }
  return index;
}

/** By the moment of writing; an amendment without one comes last. */
function byTime(a: NoteFacts, b: NoteFacts): number {
  const [first, second] = [a, b].map(({ at }) => (at === undefined ? Number.POSITIVE_INFINITY : Date.parse(at)));
  return (first ?? 0) - (second ?? 0) || ((a.id ?? a.file) < (b.id ?? b.file) ? -1 : 1);
}
