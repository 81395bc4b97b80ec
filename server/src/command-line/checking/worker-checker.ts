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

/** A checker in a thread of its own; takes one task at a time. */
export class WorkerChecker implements Checker {
  readonly #worker: Worker;

  constructor(program: string, start: WorkerStart) {
    // Loaded when a thread is wanted; most runs want none.
    const threads = process.getBuiltinModule('node:worker_threads');
    this.#worker = new threads.Worker(program, { workerData: start });
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
      const end = (): void => {
        this.#worker.off('message', onMessage);
        this.#worker.off('error', onError);
      };
      const onMessage = (answer: Answer): void => {
        end();
        if (answer.answer === 'failed') reject(new WorkerFailure(answer.kind));
        else resolve(answer);
      };
      const onError = (error: Error): void => {
        end();
        reject(new WorkerFailure(error.name));
      };
      this.#worker.on('message', onMessage);
      this.#worker.on('error', onError);
      this.#worker.postMessage(task);
    });
  }
}
