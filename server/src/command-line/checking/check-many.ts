import { dirname, join, resolve } from 'node:path';
import type { ReportedNote } from '../../note/reports/report-input.ts';
import type { Input } from '../find-notes.ts';
import { readInput } from '../read-input.ts';
import { SetFolders } from '../set-folders.ts';
import { today, type World } from '../world.ts';
import { CheckCache } from './cache.ts';
import { checkAll } from './check-all.ts';
import type { Checked, Opened } from './checker.ts';
import { CheckerPool } from './checker-pool.ts';
import { Hashes } from './hashes.ts';
import { departmentFiles, keysOf } from './result-keys.ts';
import { factsOf } from './set-facts.ts';
import { WholeRun } from './whole-run.ts';

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
    // What a whole set is read with is a problem of each of its notes, and is said once.
    problems: [...new Set(results.flatMap((result) => ('problem' in result ? [result.problem] : [])))],
  };
}

/**
 * Checks many notes: the facts of their sets are made once, then the notes are checked in batches by one or several
 * checkers. What the cache knows for certain is not done again. The result is the same either way.
 */
export async function checkMany(inputs: readonly Input[], options: ManyOptions, world: World): Promise<Outcome> {
  const given = options.department === undefined ? undefined : resolve(world.folder, options.department);
  // A department file that was named and cannot be read is said before anything else.
  if (given !== undefined) await readInput({ path: given, file: options.department ?? given }, world);
  const sets = new SetFolders(world.files);
  const paths = pathsOfSets(inputs, sets);
  const program = options.useCache ? world.program?.() : undefined;
  const pool = new CheckerPool(world, { ...options, compares: program !== undefined });
  try {
    if (program === undefined) {
      const facts = await factsOf(paths, { pool, world });
      return outcomeOf(
        await checkAll(inputs, facts.all(), { pool, done: (count) => options.progress(count, inputs.length) }),
      );
    }
    const hashes = new Hashes(world);
    const departments = departmentFiles(inputs, sets, given);
    const around = { given, day: today(world.now()), program, sets, paths, hashes, departments, pool, options, world };
    const whole = new WholeRun(inputs, around);
    const notes = whole.find();
    if (notes !== undefined) return { notes, problems: [] };
    return await checkWithCache(inputs, whole, around);
  } finally {
    await pool.close();
  }
}

interface Run {
  readonly given: string | undefined;
  readonly day: string;
  readonly program: string;
  readonly sets: SetFolders;
  readonly paths: readonly string[];
  readonly hashes: Hashes;
  readonly departments: readonly string[];
  readonly pool: CheckerPool;
  readonly options: ManyOptions;
  readonly world: World;
}

async function checkWithCache(inputs: readonly Input[], whole: WholeRun, run: Run): Promise<Outcome> {
  const { hashes, world, pool, options } = run;
  const cache = new CheckCache(world.files, world.folder, run.program);
  const facts = await factsOf(run.paths, { cache, hashes, pool, world });
  const keys = keysOf(inputs, { ...run, facts });
  const results = keys.map((key): Checked | undefined => {
    const found = key === undefined ? undefined : cache.result(key);
    return found !== undefined && areStill(found.opened, run) ? { note: found.note, hash: '', opened: [] } : undefined;
  });
  const todo = inputs.flatMap((_, at) => (results[at] === undefined ? [at] : []));
  const fresh = todo.map((at) => inputs[at]).filter((input) => input !== undefined);
  const done = (count: number): void => options.progress(inputs.length - todo.length + count, inputs.length);
  const checked = todo.length === 0 ? [] : await checkAll(fresh, facts.all(), { pool, done });
  let isWhole = !facts.hasChanged;
  todo.forEach((at, order) => {
    const result = checked[order];
    const key = keys[at];
    results[at] = result;
    // A note that changed between being looked at and being checked is not kept.
    if (key !== undefined && result !== undefined && 'note' in result && result.hash === key.text) {
      cache.keepResult(key, { note: result.note, opened: result.opened });
      isWhole &&= areStill(result.opened, run);
    } else isWhole = false;
  });
  const outcome = outcomeOf(results.filter((result) => result !== undefined));
  // A department file that changed during the run may have been read before or after.
  if (hashes.areSame(run.departments)) {
    cache.save();
    if (isWhole) whole.keep(outcome.notes);
  }
  return outcome;
}

/** Whether the notes that were opened for another are what they were. */
function areStill(opened: readonly Opened[], { hashes, world }: Run): boolean {
  return opened.every(([file, hash]) => (hashes.of(join(world.folder, file)) ?? '') === hash);
}

/** Every note of every set that an input belongs to, absolute. */
function pathsOfSets(inputs: readonly Input[], sets: SetFolders): readonly string[] {
  const folders = new Set(inputs.flatMap(({ path }) => (path === null ? [] : [dirname(path)])));
  const all = new Map([...folders].map((folder) => sets.setAt(folder)).map((set) => [set.folder, set]));
  return [...all.values()].flatMap((set) => sets.notesOf(set));
}
