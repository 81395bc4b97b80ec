import { computeNote } from '../../note/computing/compute-note.ts';
import type { RemovalCount } from '../../note/deidentify/removal.ts';
import { leave, type LeavingOptions } from '../../note/export/leave.ts';
import { readNote } from '../../note/reading/read-note.ts';
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
  readonly removed: RemovalCount;
  /** Sentences about files that could not be read. */
  readonly problems: string[];
}

/** Every note in the order of the note ids, read one at a time. */
export async function* leavingRecords(
  { inputs, sets, options, removed, problems }: Gathering,
  world: World,
): AsyncGenerator<LeavingRecord> {
  for (const input of await inOrder(inputs, sets, world)) {
    const text = await readOrSay(input, world, problems);
    if (text === undefined) continue;
    const reading = readNote(text);
    const around = sets.around(input, reading);
    const leaving = leave(reading, computeNote(contextOf(reading, around)), around.set, options, removed);
    if (leaving === undefined) problems.push(`${input.file}: this is not a note. sideport check says why.`);
    else yield { file: input.file, leaving, unread: reading.remarks.filter(isError).length };
  }
}

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

/** Notes by their id; the sets know the ids of all their notes. Those without one come last, by file. */
async function inOrder(inputs: readonly Input[], sets: NoteSets, world: World): Promise<readonly Input[]> {
  const notes = inputs.filter(({ path }) => path === null || !isDepartmentName(path));
  const ids = new Map<string, string>();
  const asked = new Set<string>();
  for (const input of notes) {
    if (input.path === null) continue;
    const { folder } = sets.rootAround(input.path);
    if (asked.has(folder)) continue;
    asked.add(folder);
    const text = await readOrSay(input, world, []);
    if (text === undefined) continue;
    for (const { file, id } of sets.around(input, readNote(text)).set.facts) if (id !== undefined) ids.set(file, id);
  }
  return notes.toSorted(
    (a, b) => byText(ids.get(a.file) ?? '\uffff', ids.get(b.file) ?? '\uffff') || byText(a.file, b.file),
  );
}

const byText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
