import { pseudonym } from '../../note/deidentify/deidentify.ts';
import type { LeavingOptions } from '../../note/export/leave.ts';
import { readNote } from '../../note/reading/read-note.ts';
import { compareText } from '../../note/reports/report-input.ts';
import type { NoteFacts } from '../../note/set/note-set.ts';
import { isDepartmentName } from '../file-names.ts';
import type { Input } from '../find-notes.ts';
import type { NoteSets } from '../note-sets.ts';
import type { World } from '../world.ts';
import { readOrSay } from './read-or-say.ts';

/** By what records are put in order: their ids and files, or what stands for them under the key. */
type Order = (name: string) => string;

/** How the records of an export are put in order. */
export function orderOf({ deidentify }: LeavingOptions): Order {
  return deidentify === undefined ? (name) => name : (name) => pseudonym('note', name, deidentify.keyedHash);
}

interface Place {
  readonly id: string;
  /** The id of the operation that the note belongs to in the end, its own for an operation. */
  readonly operation: string;
  /** How many notes it is away from that: 1 for a visit, 2 for an amendment of a visit. */
  readonly steps: number;
}

/** Those without an id come last, by file. */
const NOWHERE: Place = { id: '\uffff', operation: '\uffff', steps: 0 };

/**
 * Operations by their id, each followed by the notes that belong to it, by theirs: what was read for an operation is
 * still at hand for its follow-ups. The sets know the ids of all their notes.
 */
export async function inOrder(
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
    const text = await readOrSay(input, world, () => undefined);
    // The set is known from any note of it that can be read.
    if (text === undefined) continue;
    asked.add(folder);
    for (const [file, place] of placesOf(sets.around(input, readNote(text)).set.facts, order)) places.set(file, place);
  }
  const placeOf = ({ file }: Input): Place => places.get(file) ?? NOWHERE;
  return notes
    .map((input) => ({ input, file: order(input.file), ...placeOf(input) }))
    .toSorted(
      (a, b) =>
        compareText(a.operation, b.operation) ||
        // A note before what belongs to it.
        a.steps - b.steps ||
        compareText(a.id, b.id) ||
        compareText(a.file, b.file),
    )
    .map(({ input }) => input);
}

function placesOf(facts: readonly NoteFacts[], order: Order): ReadonlyMap<string, Place> {
  const pointsTo = new Map(facts.flatMap(({ id, pointsTo: to }) => (id === undefined ? [] : [[id, to] as const])));
  const operationOf = (id: string): { readonly operation: string; readonly steps: number } => {
    const seen = new Set<string>();
    let at = id;
    for (let next = pointsTo.get(at); next !== undefined && !seen.has(next); next = pointsTo.get(at)) {
      seen.add(next);
      at = next;
    }
    return { operation: order(at), steps: seen.size };
  };
  return new Map(
    facts.flatMap(({ file, id }) => (id === undefined ? [] : [[file, { id: order(id), ...operationOf(id) }] as const])),
  );
}
