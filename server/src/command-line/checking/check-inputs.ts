import type { Input } from '../find-notes.ts';
import { spareMemory } from '../spare-memory.ts';
import { WrongUse, type World } from '../world.ts';
import { checkMany, outcomeOf, type Outcome } from './check-many.ts';
import { showProgress } from './progress.ts';

/** From so many inputs on, cache and progress pay; a few notes are checked at once and leave nothing behind. */
const MANY = 50;
/** From so many inputs on, a second thread pays: it starts with code that is not compiled yet. */
const MANY_FOR_THREADS = 3000;
const MOST_USUAL_THREADS = 4;

export interface InputOptions {
  readonly department: string | undefined;
  /** Number of threads; undefined leaves it to the number of notes. */
  readonly jobs: number | undefined;
  readonly useCache: boolean;
}

/** Reads a number of threads. */
export function readJobs(text: string): number {
  const jobs = Number(text);
  if (/^\d{1,3}$/u.test(text) && jobs >= 1) return jobs;
  throw new WrongUse(`--jobs cannot be ${text}. Write a number of threads such as 2.`);
}

/** Checks inputs: a few at once, many with cache, threads and a count on the terminal. */
export async function checkInputs(inputs: readonly Input[], options: InputOptions, world: World): Promise<Outcome> {
  if (inputs.length < MANY && options.jobs === undefined) {
    const { LocalChecker, noHash } = await import('./checker.ts');
    return outcomeOf(await new LocalChecker(world, options.department, noHash).check(inputs));
  }
  spareMemory(inputs, world);
  const progress = showProgress(world.stderr);
  try {
    return await checkMany(
      inputs,
      { ...options, jobs: jobsFor(inputs, options.jobs, world), progress: progress.show },
      world,
    );
  } finally {
    progress.clear();
  }
}

function jobsFor(inputs: readonly Input[], asked: number | undefined, world: World): number {
  // Only this thread can read standard input.
  if (inputs.some(({ path }) => path === null)) return 1;
  if (asked !== undefined) return asked;
  return inputs.length < MANY_FOR_THREADS ? 1 : Math.min(MOST_USUAL_THREADS, world.workers?.most ?? 1);
}
