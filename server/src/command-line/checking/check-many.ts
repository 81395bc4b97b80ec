import { dirname, join, resolve } from 'node:path';
import { compareText, type ReportedNote } from '../../note/reports/report-input.ts';
import { shownAs } from '../file-names.ts';
import type { Input } from '../find-notes.ts';
import { readInput } from '../read-input.ts';
import { SetFolders } from '../set-folders.ts';
import { today, type World } from '../world.ts';
import { CheckCache } from './cache.ts';
import type { Checked, FileFacts } from './checker.ts';
import { CheckerPool } from './checker-pool.ts';
import { Hashes } from './hashes.ts';
import { inBatches } from './in-batches.ts';
import { departmentFiles, keysOf, type ResultKey } from './result-keys.ts';

export interface ManyOptions {
  readonly department: string | undefined;
  readonly jobs: number;
  readonly useCache: boolean;
  readonly progress: (done: number, of: number) => void;
}

export interface Outcome {
  readonly notes: readonly ReportedNote[];
  /** What could not be read, each a sentence. */
  readonly problems: readonly string[];
}

export function outcomeOf(results: readonly Checked[]): Outcome {
  return {
    notes: results.flatMap((result) => ('note' in result ? [result.note] : [])),
    problems: results.flatMap((result) => ('problem' in result ? [result.problem] : [])),
  };
}

/**
 * Checks many notes: the facts of their sets are made once, then the notes are checked in batches by one or several
 * checkers. What the cache knows for certain is not done again. The result is the same either way.
 */
export async function checkMany(inputs: readonly Input[], options: ManyOptions, world: World): Promise<Outcome> {
  const hashes = new Hashes(world);
  const cache =
    options.useCache && world.program !== undefined
      ? new CheckCache(world.files, world.folder, world.program())
      : undefined;
  const sets = new SetFolders(world.files);
  const pool = new CheckerPool(world, { ...options, compares: cache !== undefined });
  const given = options.department === undefined ? undefined : resolve(world.folder, options.department);
  // A department file that was named and cannot be read is said before anything else.
  if (given !== undefined) await readInput({ path: given, file: options.department ?? given }, world);
  try {
    const facts = await factsOfSets(inputs, sets, { cache, hashes, pool, world });
    const keys = cache === undefined ? [] : keysOf(inputs, { sets, facts, hashes, given, day: today(world.now()) });
    const cached = inputs.map((_, at) => resultIn(cache, keys[at], hashes, world));
    const todo = besidePartners(inputs, facts).filter(({ at }) => cached[at] === undefined);
    const done = todo.length === 0 ? [] : await checkAll(todo, facts, inputs.length, { pool, options });
    const results = [...cached];
    todo.forEach(({ at }, order) => {
      results[at] = done[order];
      keep(cache, keys[at], done[order]);
    });
    // A department file that changed during the run may have been read before or after.
    if (hashes.areSame(departmentFiles(inputs, sets, given))) cache?.save();
    return outcomeOf(results.filter((result) => result !== undefined));
  } finally {
    await pool.close();
  }
}

interface Placed {
  readonly input: Input;
  /** Its place among the inputs. */
  readonly at: number;
}

async function checkAll(
  todo: readonly Placed[],
  facts: readonly FileFacts[],
  of: number,
  { pool, options }: { readonly pool: CheckerPool; readonly options: ManyOptions },
): Promise<readonly Checked[]> {
  const checkers = await pool.checkers();
  await Promise.all(checkers.map((checker) => checker.know(facts)));
  return inBatches(
    todo,
    checkers,
    (checker, batch) => checker.check(batch.map(({ input }) => input)),
    (count) => options.progress(of - todo.length + count, of),
  );
}

interface Tools {
  readonly cache: CheckCache | undefined;
  readonly hashes: Hashes;
  readonly pool: CheckerPool;
  readonly world: World;
}

/**
 * The inputs in an order in which a follow-up comes right after the operation it points to, so that a note read for
 * one is still at hand for the other.
 */
function besidePartners(inputs: readonly Input[], facts: readonly FileFacts[]): readonly Placed[] {
  const partner = new Map(facts.map(({ path, facts: own }) => [path, own?.pointsTo ?? own?.id ?? '']));
  return inputs
    .map((input, at) => ({ input, at, by: partner.get(input.path ?? '') ?? '' }))
    .toSorted((a, b) => compareText(a.by, b.by) || compareText(b.input.file, a.input.file));
}

/** The facts of every note of every set that an input belongs to. */
async function factsOfSets(
  inputs: readonly Input[],
  sets: SetFolders,
  { cache, hashes, pool, world }: Tools,
): Promise<readonly FileFacts[]> {
  const folders = new Map(
    inputs.flatMap(({ path }) => {
      if (path === null) return [];
      const set = sets.setAt(dirname(path));
      return [[set.folder, set] as const];
    }),
  );
  const paths = [...folders.values()].flatMap((set) => sets.notesOf(set));
  const known = new Map<string, FileFacts['facts']>();
  if (cache !== undefined) {
    for (const path of paths) {
      const hash = hashes.of(path);
      const facts = hash === null ? undefined : cache.facts(hash, shownAs(path, world.folder));
      if (facts !== undefined) known.set(path, facts);
    }
  }
  const unknown = paths.filter((path) => !known.has(path));
  const checkers = unknown.length === 0 ? [] : await pool.checkers();
  for (const { path, facts, hash } of await inBatches(unknown, checkers, (checker, batch) => checker.facts(batch))) {
    known.set(path, facts);
    if (hash !== null) cache?.keepFacts(hash, facts);
  }
  return paths.map((path) => ({ path, facts: known.get(path) ?? null, hash: null }));
}

function resultIn(
  cache: CheckCache | undefined,
  key: ResultKey | undefined,
  hashes: Hashes,
  world: World,
): Checked | undefined {
  const found = key === undefined ? undefined : cache?.result(key);
  if (found === undefined) return undefined;
  const isSame = found.opened.every(([file, hash]) => (hashes.of(join(world.folder, file)) ?? '') === hash);
  return isSame ? { note: found.note, hash: '', opened: [] } : undefined;
}

/** Keeps a result, unless the note changed between being looked at and being checked. */
function keep(cache: CheckCache | undefined, key: ResultKey | undefined, result: Checked | undefined): void {
  if (cache === undefined || key === undefined || result === undefined || !('note' in result)) return;
  if (result.hash === key.text) cache.keepResult(key, { note: result.note, opened: result.opened });
}
