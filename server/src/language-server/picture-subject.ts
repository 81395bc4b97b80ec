import { computeNote } from '../note/computing/compute-note.ts';
import type { NoteReading } from '../note/reading/note-reading.ts';
import { contextOf } from '../note/review.ts';
import { astigmatismOf, sceneOf, vectorNamed } from '../note/picture/scene-of-note.ts';
import type { AstigmatismVector, AstigmatismVectors, Scene } from '../note/picture/scene.ts';
import type { OpenNote } from './note-book.ts';

/** What a picture is about. */
export interface PictureSubject {
  readonly scene: Scene;
  readonly vectors: AstigmatismVectors;
  /** Whether it is drawn from the note itself, and not from the operation that the note points to. */
  readonly own: boolean;
}

/** A follow-up shows its operation, with what the visit found; other notes but operations show nothing. */
export function subjectOf(note: OpenNote): PictureSubject | undefined {
  const { reading, computed, set } = note;
  if (reading.kind === 'operation') {
    const visits = visitsOf(note, reading.note.id?.value);
    const achieved = visits.map((visit) => achievedIn(visit, note)).find((vector) => vector !== undefined);
    const followUps = visits.flatMap((visit) => (visit.kind === 'follow-up' ? [visit.note] : []));
    return {
      scene: sceneOf(reading.note, followUps),
      vectors: astigmatismOf(computed, achieved && withoutPlace(achieved)),
      own: true,
    };
  }
  if (reading.kind !== 'follow-up') return undefined;
  const operation = set?.facts.find(({ id, record }) => record === 'operation' && id === reading.note.operation?.value);
  const partner = operation === undefined ? undefined : set?.open(operation.file);
  if (partner?.kind !== 'operation') return undefined;
  return {
    scene: sceneOf(partner.note, [reading.note]),
    vectors: astigmatismOf(computedOf(partner, note), achievedIn(reading, note)),
    own: false,
  };
}

function computedOf(reading: NoteReading, { around }: OpenNote) {
  return computeNote(contextOf(reading, around.surroundings));
}

/** The visits of an operation, the latest first. */
function visitsOf({ set }: OpenNote, id: string | undefined): readonly NoteReading[] {
  const facts =
    set?.facts.filter((each) => id !== undefined && each.record === 'follow-up' && each.pointsTo === id) ?? [];
  return facts
    .toSorted((a, b) => (b.date ?? '').localeCompare(a.date ?? ''))
    .flatMap(({ file }) => set?.open(file) ?? []);
}

function achievedIn(visit: NoteReading, note: OpenNote): AstigmatismVector | undefined {
  return vectorNamed(computedOf(visit, note), 'corneal-astigmatism');
}

function withoutPlace({ path, magnitude, meridian }: AstigmatismVector): AstigmatismVector {
  return { path, magnitude, meridian };
}
