import { computeNote } from '../../note/computing/compute-note.ts';
import { pseudonym } from '../../note/deidentify/deidentify.ts';
import type { RemovalCount } from '../../note/deidentify/removal.ts';
import { leave, type LeavingOptions } from '../../note/export/leave.ts';
import type { NoteFacts } from '../../note/set/note-set.ts';
import type { Leaving } from '../../note/export/leaving.ts';
import type { NoteReading } from '../../note/reading/note-reading.ts';
import { readNote } from '../../note/reading/read-note.ts';
import { compareText } from '../../note/reports/report-input.ts';
import { contextOf } from '../../note/review.ts';
import { isDepartmentName } from '../file-names.ts';
import type { Input } from '../find-notes.ts';
import { NoteSets } from '../note-sets.ts';
import { readInput } from '../read-input.ts';
import { FileProblem, type World } from '../world.ts';
import type { LeavingRecord } from './record-writer.ts';

export interface Gathering {
  readonly inputs: readonly Input[];
  readonly sets: NoteSets;
  readonly options: LeavingOptions;
  /** Whether records of a kind are left out; asked once for each. */
  readonly leavesOut: (kind: Leaving['kind']) => boolean;
  readonly removed: RemovalCount;
  /** Sentences about files that could not be read. */
  readonly problems: string[];
}

/**
 * Every operation in the order of the ids, followed by what belongs to it, read one at a time. Without identifiers the
 * order is that of the pseudonyms: that of the ids would tell which of them came first.
 */
export async function* leavingRecords(
  { inputs, sets, options, leavesOut, removed, problems }: Gathering,
  world: World,
): AsyncGenerator<LeavingRecord> {
  for (const input of await inOrder(inputs, orderOf(options), sets, world)) {
    const text = await readOrSay(input, world, problems);
    if (text === undefined) continue;
    const reading = readNote(text);
    if (isRecord(reading) && leavesOut(reading.kind)) continue;
    const around = sets.around(input, reading);
    const leaving = leave(reading, computeNote(contextOf(reading, around)), around.set, options, removed);
    if (leaving === undefined) problems.push(`${input.file}: this is not a note. sideport check says why.`);
    else yield { file: input.file, leaving, unread: reading.remarks.filter(isError).length };
  }
}

const isRecord = (reading: NoteReading): reading is Extract<NoteReading, { readonly kind: Leaving['kind'] }> =>
  reading.kind !== null && reading.kind !== 'department';

const isError = ({ severity }: { readonly severity: string }): boolean => severity === 'error';

async function readOrSay(input: Input, world: World, problems: string[]): Promise<string | undefined> {
  try {
    return await readInput(input, world);
  } catch (error) {
    if (!(error instanceof FileProblem)) throw error;
    problems.push(error.message);
    return undefined;
  }
}

/** By what records are put in order: their ids and files, or what stands for them under the key. */
type Order = (name: string) => string;

function orderOf({ deidentify }: LeavingOptions): Order {
  return deidentify === undefined ? (name) => name : (name) => pseudonym('note', name, deidentify.keyedHash);
}

interface Place {
  readonly id: string;
  /** The id of the operation that the note belongs to in the end, its own for an operation. */
  readonly operation: string;
}

/** Those without an id come last, by file. */
const NOWHERE: Place = { id: '\uffff', operation: '\uffff' };

/**
 * Operations by their id, each followed by the notes that belong to it, by theirs: what was read for an operation is
 * still at hand for its follow-ups. The sets know the ids of all their notes.
 */
async function inOrder(
  inputs: readonly Input[],
  order: Order,
  sets: NoteSets,
  world: World,
): Promise<readonly Input[]> {
  const notes = inputs.filter(({ path }) => path === null || !isDepartmentName(path));
  const places = new Map<string, Place>();
  const asked = new Set<string>();
  for (const input of notes) {
    if (input.path === null) continue;
    const { folder } = sets.rootAround(input.path);
    if (asked.has(folder)) continue;
    asked.add(folder);
    const text = await readOrSay(input, world, []);
    if (text === undefined) continue;
    for (const [file, place] of placesOf(sets.around(input, readNote(text)).set.facts, order)) places.set(file, place);
  }
  const placeOf = ({ file }: Input): Place => places.get(file) ?? NOWHERE;
  return notes
    .map((input) => ({ input, file: order(input.file), ...placeOf(input) }))
    .toSorted(
      (a, b) =>
        compareText(a.operation, b.operation) ||
        // The operation itself before what belongs to it.
        Number(a.id !== a.operation) - Number(b.id !== b.operation) ||
        compareText(a.id, b.id) ||
        compareText(a.file, b.file),
    )
    .map(({ input }) => input);
}

function placesOf(facts: readonly NoteFacts[], order: Order): ReadonlyMap<string, Place> {
  const pointsTo = new Map(facts.flatMap(({ id, pointsTo: to }) => (id === undefined ? [] : [[id, to] as const])));
  const operationOf = (id: string): string => {
    const seen = new Set<string>();
    let at = id;
    for (let next = pointsTo.get(at); next !== undefined && !seen.has(next); next = pointsTo.get(at)) {
      seen.add(next);
      at = next;
    }
    return at;
  };
  return new Map(
    facts.flatMap(({ file, id }) =>
      id === undefined ? [] : [[file, { id: order(id), operation: order(operationOf(id)) }] as const],
    ),
  );
}
