import type { Amendment } from '@sideport/schemas';
import { computeNote } from '../../note/computing/compute-note.ts';
import type { RemovalCount } from '../../note/deidentify/removal.ts';
import { leave, type LeavingOptions } from '../../note/export/leave.ts';
import type { Leaving } from '../../note/export/leaving.ts';
import { unreadPlaces } from '../../note/export/unread.ts';
import type { NoteReading } from '../../note/reading/note-reading.ts';
import { readNote } from '../../note/reading/read-note.ts';
import { contextOf, remarksOf, type Surroundings } from '../../note/review.ts';
import { notesWithId, type NoteSet } from '../../note/set/note-set.ts';
import { dictationFor } from '../dictation-for.ts';
import type { Input } from '../find-notes.ts';
import type { NoteSets } from '../note-sets.ts';
import type { World } from '../world.ts';
import { inOrder, orderOf } from './in-order.ts';
import type { Notices } from './notices.ts';
import { readOrSay } from './read-or-say.ts';
import type { LeavingRecord } from './record-writer.ts';

export interface Gathering {
  readonly inputs: readonly Input[];
  readonly sets: NoteSets;
  readonly options: LeavingOptions;
  /** Whether records of a kind are left out; asked once for each. */
  readonly leavesOut: (kind: Leaving['kind']) => boolean;
  readonly removed: RemovalCount;
  readonly notices: Notices;
  /** The day on which overdue reviews are counted; without one they are not, so that equal notes leave as equal data. */
  readonly asOf: string | undefined;
}

/**
 * Every operation in the order of the ids, followed by what belongs to it, read one at a time. Without identifiers the
 * order is that of the pseudonyms: that of the ids would tell which of them came first.
 */
export async function* leavingRecords(gathering: Gathering, world: World): AsyncGenerator<LeavingRecord> {
  const { inputs, sets, options, leavesOut, removed, notices, asOf } = gathering;
  const operations = new Set<string>();
  for (const input of await inOrder(inputs, orderOf(options), sets, world)) {
    const text = await readOrSay(input, world, (problem) => notices.problem(problem));
    if (text === undefined) continue;
    const reading = readNote(text);
    const around = sets.around(input, reading);
    const place = placeIn(sets, input, world);
    if (reading.kind === 'amendment') sayIfAlone(input, reading.note, operations, place, around.set, notices);
    if (isRecord(reading) && leavesOut(reading.kind)) continue;
    const own = reading.kind === 'operation' ? place(reading.note.id?.value) : undefined;
    const repeated = own !== undefined && operations.has(own);
    if (own !== undefined) operations.add(own);
    const computed = computeNote(contextOf(reading, { ...around, today: asOf ?? null }));
    const leaving = leave(reading, computed, around.set, options, removed, repeated);
    if (leaving === undefined || !isRecord(reading)) {
      notices.problem(`${input.file}: this is not a note. sideport check says why.`);
      continue;
    }
    const unread = unreadPlaces(reading);
    notices.unread(input.file, unread);
    notices.id(input.file, reading.kind, reading.note.id?.value);
    if (reading.status === 'final') notices.finalWithErrors(input.file, await errorsIn(reading, around));
    yield { file: input.file, leaving, unread };
  }
}

/** How the set and an id name a note together; ids are told apart within a set. */
function placeIn(sets: NoteSets, { path }: Input, world: World): (id: string | undefined) => string | undefined {
  const folder = path === null ? world.folder : sets.rootAround(path).folder;
  return (id) => (id === undefined ? undefined : `${folder}\n${id}`);
}

/** Operations come before what amends them, so that those among the inputs are known here. */
function sayIfAlone(
  { file }: Input,
  { amends }: Amendment,
  operations: ReadonlySet<string>,
  place: ReturnType<typeof placeIn>,
  set: NoteSet,
  notices: Notices,
): void {
  const operation = place(amends?.value);
  if (operation !== undefined && operations.has(operation)) return;
  const inSet = amends !== undefined && notesWithId(set, amends.value).some(({ record }) => record === 'operation');
  notices.amendmentAlone(file, inSet);
}

async function errorsIn(reading: NoteReading, around: Surroundings): Promise<number> {
  const remarks = remarksOf(reading, { ...around, dictation: await dictationFor(reading) });
  return remarks.filter(({ severity }) => severity === 'error').length;
}

const isRecord = (reading: NoteReading): reading is Extract<NoteReading, { readonly kind: Leaving['kind'] }> =>
  reading.kind !== null && reading.kind !== 'department';
