import { parentPort, workerData } from 'node:worker_threads';
import { nodeFiles } from '../node-files.ts';
import type { Sink } from '../world.ts';
import { LocalChecker, noHash } from './checker.ts';
import { contentHash } from './content-hash.ts';
import type { Answer, Task, WorkerStart } from './worker-messages.ts';

// A worker's whole program: takes tasks one after the other and answers each.

const silent: Sink = { write: () => undefined, colour: false };
const start: WorkerStart = workerData;
const checker = new LocalChecker(
  {
    stdin: () => Promise.resolve(''),
    stdout: silent,
    stderr: silent,
    files: nodeFiles,
    folder: start.folder,
    now: () => new Date(start.now),
  },
  start.department,
  start.compares ? contentHash : noHash,
);

async function perform(task: Task): Promise<Answer> {
  switch (task.task) {
    case 'facts':
      return { answer: 'facts', facts: await checker.facts(task.paths) };
    case 'know':
      await checker.know(task.facts);
      return { answer: 'known' };
    case 'check':
      return { answer: 'checked', checked: await checker.check(task.inputs) };
    default:
      return task satisfies never;
  }
}

let before: Promise<unknown> = Promise.resolve();
parentPort?.on('message', (task: Task) => {
  before = before
    .then(() => perform(task))
    .then(
      (answer) => parentPort?.postMessage(answer),
      // Only the kind of the error leaves: its words could hold what a note says.
      (error: unknown) =>
        parentPort?.postMessage({ answer: 'failed', kind: error instanceof Error ? error.name : typeof error }),
    );
});
