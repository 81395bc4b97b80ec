import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { World } from '../world.ts';
import { contentHash } from './content-hash.ts';
import { WorkerChecker } from './worker-checker.ts';

const MOST_OUTPUT = 256 * 1024 * 1024;

/**
 * What this machine offers to a check of many notes, each part loaded when it is used. `bundle` is the file that runs, its workers lie
 * beside it.
 */
export function machine(bundle: string): Required<Pick<World, 'workers' | 'git' | 'program' | 'spareMemory'>> {
  return {
    workers: {
      get most() {
        return process.getBuiltinModule('node:os').availableParallelism();
      },
      start: (options) => new WorkerChecker(join(bundle, '..', 'check-worker.cjs'), options),
    },
    // Left to itself the engine lets garbage grow with what is kept (each percent is of what is alive) and with what it
    // copies; and it takes the parts of the one note in hand for things that last, because they outlive the many
    // short-lived ones around them.
    spareMemory: () => {
      const { setFlagsFromString } = process.getBuiltinModule('node:v8');
      setFlagsFromString('--heap-growing-percent=60');
      setFlagsFromString('--semi-space-growth-factor=1');
      setFlagsFromString('--no-allocation-site-pretenuring');
    },
    program: () => contentHash(readFileSync(bundle)),
    git: (words, folder) =>
      new Promise((resolve) => {
        const { execFile } = process.getBuiltinModule('node:child_process');
        execFile('git', [...words], { cwd: folder, maxBuffer: MOST_OUTPUT, encoding: 'utf8' }, (error, output) => {
          resolve(error === null ? output : null);
        });
      }),
  };
}
