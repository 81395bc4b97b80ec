import { FileProblem, type World } from '../world.ts';
import { contentHash } from './content-hash.ts';

/** Hashes of files, each read once. */
export class Hashes {
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
