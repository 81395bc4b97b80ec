import type { World } from '../world.ts';
import type { Checker, CheckerOptions } from './checker.ts';

export interface PoolOptions {
  readonly department: string | undefined;
  readonly jobs: number;
  /** Whether contents will be compared, so that hashes are wanted. */
  readonly compares: boolean;
}

/** The checkers of a run, started when there is something to do: a run that knows everything starts none. */
export class CheckerPool {
  readonly #world: World;
  readonly #options: PoolOptions;
  #started: Promise<readonly Checker[]> | undefined;

  constructor(world: World, options: PoolOptions) {
    this.#world = world;
    this.#options = options;
  }

  checkers(): Promise<readonly Checker[]> {
    return (this.#started ??= this.#start());
  }

  async close(): Promise<void> {
    const checkers = (await this.#started?.catch(() => [])) ?? [];
    await Promise.all(checkers.map((checker) => checker.close()));
  }

  async #start(): Promise<readonly Checker[]> {
    const { department, jobs, compares } = this.#options;
    const { workers, folder, now } = this.#world;
    const start: CheckerOptions = {
      folder,
      now: now().getTime(),
      compares,
      ...(department !== undefined && { department }),
    };
    const others = workers === undefined ? [] : Array.from({ length: jobs - 1 }, () => workers.start(start));
    const { LocalChecker, noHash } = await import('./checker.ts');
    const { contentHash } = await import('./content-hash.ts');
    return [...others, new LocalChecker(this.#world, department, compares ? contentHash : noHash)];
  }
}
