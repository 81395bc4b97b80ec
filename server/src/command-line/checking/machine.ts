import { execFile } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import type { World } from '../world.ts';
import { contentHash } from './checker.ts';
import { WorkerChecker } from './worker-checker.ts';

const MOST_OUTPUT = 256 * 1024 * 1024;

/** What this machine offers to a check of many notes. `bundle` is the file that runs, its workers lie beside it. */
export function machine(bundle: string): Required<Pick<World, 'workers' | 'git' | 'program'>> {
  return {
    workers: {
      most: availableParallelism(),
      start: (options) => new WorkerChecker(join(bundle, '..', 'check-worker.cjs'), options),
    },
    program: () => contentHash(readFileSync(bundle, 'utf8')),
    git: (words, folder) =>
      new Promise((resolve) => {
        execFile('git', [...words], { cwd: folder, maxBuffer: MOST_OUTPUT, encoding: 'utf8' }, (error, output) => {
          resolve(error === null ? output : null);
        });
      }),
  };
}
