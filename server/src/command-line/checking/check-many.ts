import { join, resolve } from 'node:path';
import { compareText, type ReportedNote } from '../../note/reports/report-input.ts';
import { DEPARTMENT_FILE, isNoteName, shownAs } from '../file-names.ts';
import type { Input } from '../find-notes.ts';
import { NoteSets } from '../note-sets.ts';
import { FileProblem, today, type World } from '../world.ts';
import { CheckCache, type ResultKey } from './cache.ts';
import { LocalChecker, noHash, type Checked, type Checker, type FileFacts } from './checker.ts';
import { contentHash } from './content-hash.ts';
import { inBatches } from './in-batches.ts';

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

function startCheckers(world: World, { department, jobs }: ManyOptions, compares: boolean): readonly Checker[] {
  const { workers } = world;
  const hash = compares ? contentHash : noHash;
  if (workers === undefined || jobs < 2) return [new LocalChecker(world, department, hash)];
  const start = {
    folder: world.folder,
    now: world.now().getTime(),
    compares,
    ...(department === undefined ? {} : { department }),
  };
  return Array.from({ length: jobs }, () => workers.start(start));
}

/** Hashes of files, each read once. */
class Hashes {
  readonly #world: World;
  readonly #known = new Map<string, string | null>();

  constructor(world: World) {
    this.#world = world;
  }

  /** null where nothing can be read. */
  of(path: string): string | null {
    const known = this.#known.get(path);
    if (known !== undefined) return known;
    const hash = this.#read(path);
    this.#known.set(path, hash);
    return hash;
  }

  /** Whether these files still are what they were when they were first looked at. */
  areSame(paths: readonly string[]): boolean {
    return paths.every((path) => this.#known.get(path) === this.#read(path));
  }

  #read(path: string): string | null {
    try {
      return contentHash(this.#world.files.read(path));
    } catch (error) {
      if (error instanceof FileProblem) return null;
      throw error;
    }
  }
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
  const sets = new NoteSets(world, options.department);
  const checkers = startCheckers(world, options, cache !== undefined);
  try {
    const facts = await factsOfSets(inputs, sets, { cache, hashes, checkers, world });
    const keys =
      cache === undefined ? [] : keysOf(inputs, sets, facts, { hashes, world, department: options.department });
    const cached = inputs.map((_, at) => resultIn(cache, keys[at], hashes, world));
    const todo = besidePartners(inputs, facts).filter(({ at }) => cached[at] === undefined);
    const known = inputs.length - todo.length;
    // Facts are only wanted by those who check.
    if (todo.length > 0) await Promise.all(checkers.map((checker) => checker.know(facts)));
    const done = await inBatches(
      todo,
      checkers,
      (checker, batch) => checker.check(batch.map(({ input }) => input)),
      (count) => options.progress(known + count, inputs.length),
    );
    const fresh = new Map(todo.map(({ at }, order) => [at, done[order]]));
    const results = inputs.map((_, at): Checked | undefined => cached[at] ?? fresh.get(at));
    todo.forEach(({ at }, order) => keep(cache, keys[at], done[order]));
    // A department file that changed during the run may have been read before or after.
    if (hashes.areSame(departmentsOf(inputs, sets, options.department, world))) cache?.save();
    return outcomeOf(results.filter((result) => result !== undefined));
  } finally {
    await Promise.all(checkers.map((checker) => checker.close()));
  }
}

interface Tools {
  readonly cache: CheckCache | undefined;
  readonly hashes: Hashes;
  readonly checkers: readonly Checker[];
  readonly world: World;
}

/**
 * The inputs in an order in which a follow-up comes right after the operation it points to, so that a note read for
 * one is still at hand for the other.
 */
function besidePartners(
  inputs: readonly Input[],
  facts: readonly FileFacts[],
): readonly { readonly input: Input; readonly at: number }[] {
  const partner = new Map(facts.map(({ path, facts: own }) => [path, own?.pointsTo ?? own?.id ?? '']));
  return inputs
    .map((input, at) => ({ input, at, by: partner.get(input.path ?? '') ?? '' }))
    .toSorted((a, b) => compareText(a.by, b.by) || compareText(b.input.file, a.input.file));
}

/** The facts of every note of every set that an input belongs to. */
async function factsOfSets(
  inputs: readonly Input[],
  sets: NoteSets,
  { cache, hashes, checkers, world }: Tools,
): Promise<readonly FileFacts[]> {
  // One note of each set is enough to find them all.
  const oneOfEach = new Map(
    inputs.flatMap(({ path }) => (path === null ? [] : [[sets.rootAround(path).folder, path]])),
  );
  const paths = [...oneOfEach.values()].flatMap((path) => sets.notesAround(path));
  const known = new Map<string, FileFacts['facts']>();
  if (cache !== undefined) {
    for (const path of paths) {
      const hash = hashes.of(path);
      const facts = hash === null ? undefined : cache.facts(hash, shownAs(path, world.folder));
      if (facts !== undefined) known.set(path, facts);
    }
  }
  const unknown = paths.filter((path) => !known.has(path));
  for (const { path, facts, hash } of await inBatches(unknown, checkers, (checker, batch) => checker.facts(batch))) {
    known.set(path, facts);
    if (hash !== null) cache?.keepFacts(hash, facts);
  }
  return paths.map((path) => ({ path, facts: known.get(path) ?? null, hash: null }));
}

/** For every input what its result depends on; undefined for standard input, which is never kept. */
function keysOf(
  inputs: readonly Input[],
  sets: NoteSets,
  facts: readonly FileFacts[],
  { hashes, world, department }: { hashes: Hashes; world: World; department: string | undefined },
): readonly (ResultKey | undefined)[] {
  const byPath = new Map(facts.map((one) => [one.path, one.facts]));
  const digests = new Map<string, string>();
  const digestOf = (folder: string, path: string): string => {
    const known = digests.get(folder);
    if (known !== undefined) return known;
    const digest = contentHash(JSON.stringify(sets.notesAround(path).map((note) => ordered(byPath.get(note) ?? null))));
    digests.set(folder, digest);
    return digest;
  };
  const day = today(world.now());
  return inputs.map(({ path, file }) => {
    const text = path === null ? null : hashes.of(path);
    if (path === null || text === null) return undefined;
    const own = departmentFile(path, sets, department, world);
    const set = isNoteName(path) ? digestOf(sets.rootAround(path).folder, path) : '';
    return { text, file, department: own === null ? '' : (hashes.of(own) ?? ''), set, today: day };
  });
}

/** The name of the file apart, so that facts from the cache and facts just read are written alike. */
function ordered(facts: FileFacts['facts']): unknown {
  if (facts === null) return null;
  const { file, ...rest } = facts;
  return [file, rest];
}

/** The department file that counts for a note; null without any. */
function departmentFile(path: string, sets: NoteSets, given: string | undefined, world: World): string | null {
  if (given !== undefined) return resolve(world.folder, given);
  const { folder, hasDepartment } = sets.rootAround(path);
  return hasDepartment ? join(folder, DEPARTMENT_FILE) : null;
}

function departmentsOf(
  inputs: readonly Input[],
  sets: NoteSets,
  given: string | undefined,
  world: World,
): readonly string[] {
  const files = inputs.map(({ path }) => (path === null ? null : departmentFile(path, sets, given, world)));
  return [...new Set(files.filter((file) => file !== null))];
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
