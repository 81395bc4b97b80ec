import { computeNote } from '../../note/computing/compute-note.ts';
import type { RemovalCount } from '../../note/deidentify/removal.ts';
import { hasAmended, leave, type LeavingOptions } from '../../note/export/leave.ts';
import type { Leaving } from '../../note/export/leaving.ts';
import { allChecks } from '../../note/checks/all-checks.ts';
import { unreadPlaces } from '../../note/export/unread.ts';
import type { NoteReading } from '../../note/reading/note-reading.ts';
import { readNote } from '../../note/reading/read-note.ts';
import { contextOf, remarksOf, type Surroundings } from '../../note/review.ts';
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
  const left = new Set<string>();
  for (const input of await inOrder(inputs, orderOf(options), sets, world)) {
    const text = await readOrSay(input, world, (problem) => notices.problem(problem));
    if (text === undefined) continue;
    const reading = readNote(text);
    const around = sets.around(input, reading);
    const place = placeIn(sets, input, world);
    if (reading.kind === 'amendment' && !left.has(place(reading.note.amends?.value))) {
      notices.amendmentAlone(input.file, hasAmended(around.set, reading.note.amends?.value));
    }
    const own = isRecord(reading) && reading.kind !== 'amendment' ? place(reading.note.id?.value) : '';
    const repeated = left.has(own);
    if (own !== '') left.add(own);
    if (isRecord(reading) && leavesOut(reading.kind)) continue;
    const computed = computeNote(contextOf(reading, { ...around, today: asOf ?? null }));
    const leaving = leave(reading, computed, around.set, options, removed, repeated);
    if (leaving === undefined || !isRecord(reading)) {
      notices.problem(`${input.file}: this is not a note. sideport check says why.`);
      continue;
    }
    const unread = unreadPlaces(reading);
    notices.unread(input.file, unread);
    notices.id(input.file, reading.kind, reading.note.id?.value);
    if (reading.status === 'final') notices.finalWithErrors(input.file, errorsIn(reading, around));
    yield { file: input.file, leaving, unread };
  }
}

/** How the set and an id name a note together, for ids are told apart within a set; nothing for a note without one. */
function placeIn(sets: NoteSets, { path }: Input, world: World): (id: string | undefined) => string {
  const folder = path === null ? world.folder : sets.rootAround(path).folder;
  return (id) => (id === undefined ? '' : `${folder}\n${id}`);
}

/** Whoever takes the data over must know when a note is not sure whose eye, or which lens, it tells of. */
const IDENTITY = allChecks.filter(({ group }) => group === 'side and identity');

/** Errors of side, identity and lens, and of reading; everything else is for `sideport check`, which takes its time. */
function errorsIn(reading: NoteReading, around: Surroundings): number {
  const remarks = remarksOf(reading, around, IDENTITY);
  return remarks.filter(({ severity }) => severity === 'error').length;
}

const isRecord = (reading: NoteReading): reading is Extract<NoteReading, { readonly kind: Leaving['kind'] }> =>
  reading.kind !== null && reading.kind !== 'department';
