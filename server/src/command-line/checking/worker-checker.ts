import type { Worker } from 'node:worker_threads';
import type { Input } from '../find-notes.ts';
import type { Checked, Checker, FileFacts } from './checker.ts';
import type { Answer, Task, WorkerStart } from './worker-messages.ts';

/** A worker could not do its part. The message holds nothing of a note. */
class WorkerFailure extends Error {
  override readonly name: string;

  constructor(kind: string) {
    super('a worker failed');
    this.name = kind;
  }
}

interface Waiting {
  readonly resolve: (answer: Answer) => void;
  readonly reject: (reason: WorkerFailure) => void;
}

/** A checker in a thread of its own; it answers its tasks in their order. */
export class WorkerChecker implements Checker {
  readonly ahead = 2;
  readonly #worker: Worker;
  readonly #waiting: Waiting[] = [];
  /** Why the thread ended before it was asked to. */
  #ended: WorkerFailure | undefined;

  constructor(program: string, start: WorkerStart) {
    // Loaded when a thread is wanted; most runs want none.
    const threads = process.getBuiltinModule('node:worker_threads');
    this.#worker = new threads.Worker(program, { workerData: start });
    this.#worker.on('message', (answer: Answer) => {
      const next = this.#waiting.shift();
      if (answer.answer === 'failed') next?.reject(new WorkerFailure(answer.kind));
      else next?.resolve(answer);
    });
    this.#worker.on('error', (error: Error) => {
      this.#ended = new WorkerFailure(error.name);
      for (const { reject } of this.#waiting.splice(0)) reject(this.#ended);
    });
  }

  async facts(paths: readonly string[]): Promise<readonly FileFacts[]> {
    const answer = await this.#ask({ task: 'facts', paths });
    return answer.answer === 'facts' ? answer.facts : [];
  }

  async know(facts: readonly FileFacts[]): Promise<void> {
    await this.#ask({ task: 'know', facts });
  }

  async check(inputs: readonly Input[]): Promise<readonly Checked[]> {
    const answer = await this.#ask({ task: 'check', inputs });
    return answer.answer === 'checked' ? answer.checked : [];
  }

  async close(): Promise<void> {
    await this.#worker.terminate();
  }

  #ask(task: Task): Promise<Answer> {
    return new Promise((resolve, reject) => {
      if (this.#ended !== undefined) return reject(this.#ended);
      this.#waiting.push({ resolve, reject });
      this.#worker.postMessage(task);
    });
  }
}
