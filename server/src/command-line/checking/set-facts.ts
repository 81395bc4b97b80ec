import type { NoteFacts } from '../../note/set/note-set.ts';
import { shownAs } from '../file-names.ts';
import type { World } from '../world.ts';
import type { CheckCache } from './cache.ts';
import type { FileFacts } from './checker.ts';
import type { CheckerPool } from './checker-pool.ts';
import type { Hashes } from './hashes.ts';
import { inBatches } from './in-batches.ts';

/** The facts of the notes of a run's sets, as they were read or as the cache has them. */
export class SetFacts {
  readonly #folder: string;
  readonly #read = new Map<string, NoteFacts | null>();
  readonly #written = new Map<string, string>();
  /** Whether a note was another one when its facts were read than when it was looked at first. */
  hasChanged = false;

  /** Names of files are shown as seen from this folder. */
  constructor(folder: string) {
    this.#folder = folder;
  }

  has(path: string): boolean {
    return this.#read.has(path) || this.#written.has(path);
  }

  keepRead(path: string, facts: NoteFacts | null): void {
    this.#read.set(path, facts);
  }

  keepWritten(path: string, written: string): void {
    this.#written.set(path, written);
  }

  /** Without the name of the file; the same for facts from the cache and for facts just read. */
  writtenOf(path: string): string {
    return this.#written.get(path) ?? writtenFacts(this.#read.get(path) ?? null);
  }

  /** All as objects: only who has something to check asks for them. */
  all(): readonly FileFacts[] {
    for (const [path, written] of this.#written) this.#read.set(path, this.#parsed(path, written));
    return [...this.#read].map(([path, facts]) => ({ path, facts, hash: null }));
  }

  #parsed(path: string, written: string): NoteFacts | null {
    const facts = JSON.parse(written) as Omit<NoteFacts, 'file'> | null;
    return facts === null ? null : { ...facts, file: shownAs(path, this.#folder) };
  }
}

/** As they are kept, without the name of the file. */
function writtenFacts(facts: NoteFacts | null): string {
  if (facts === null) return 'null';
  const { file: _file, ...rest } = facts;
  return JSON.stringify(rest);
}

interface FactTools {
  readonly cache?: CheckCache;
  readonly hashes?: Hashes;
  readonly pool: CheckerPool;
  readonly world: World;
}

/** The facts of notes, from the cache where it has them. */
export async function factsOf(paths: readonly string[], { cache, hashes, pool, world }: FactTools): Promise<SetFacts> {
  const known = new SetFacts(world.folder);
  for (const path of cache === undefined ? [] : paths) {
    const hash = hashes?.of(path) ?? null;
    const written = hash === null ? undefined : cache?.facts(hash);
    if (written !== undefined) known.keepWritten(path, written);
  }
  const unknown = paths.filter((path) => !known.has(path));
  const checkers = unknown.length === 0 ? [] : await pool.checkers();
  for (const { path, facts, hash } of await inBatches(unknown, checkers, (checker, batch) => checker.facts(batch))) {
    known.keepRead(path, facts);
    if (hash !== null) cache?.keepFacts(hash, writtenFacts(facts));
    if (hashes !== undefined && hash !== hashes.of(path)) known.hasChanged = true;
  }
  return known;
}
