import type { CancellationToken } from 'vscode-languageserver';

/** Where a fault is written for the developer: the editor's output, never a message to the surgeon. */
export type FaultLog = (line: string) => void;

export type Guard = <Params, Answer>(
  name: string,
  fallback: Answer,
  handler: (params: Params, token: CancellationToken) => Answer | Promise<Answer>,
) => (params: Params, token: CancellationToken) => Promise<Answer>;

/**
 * Wraps the handlers of requests: one that fails answers its fallback and writes where it failed. The message of an
 * error may hold text of the note, so only its kind and the places in our own code are written. `asked` is called with
 * each request, and what it gives back once that is answered.
 */
export function guardWith(log: FaultLog, asked: () => () => void = () => () => undefined): Guard {
  return (name, fallback, handler) => async (params, token) => {
    if (token.isCancellationRequested) return fallback;
    const answered = asked();
    try {
      return await handler(params, token);
    } catch (fault) {
      log(faultLine(name, fault));
      return fallback;
    } finally {
      answered();
    }
  };
}

/** Runs work that answers nobody. */
export function attempt(name: string, log: FaultLog, work: () => void): void {
  try {
    work();
  } catch (fault) {
    log(faultLine(name, fault));
  }
}

/** The same for work that is done in steps. */
export function* attemptSteps(name: string, log: FaultLog, steps: Iterable<void>): Generator<void, void> {
  try {
    yield* steps;
  } catch (fault) {
    log(faultLine(name, fault));
  }
}

export function faultLine(name: string, fault: unknown): string {
  if (!(fault instanceof Error)) return `${name} failed`;
  const message = fault.message.trim();
  // The stack begins with the message, which may span lines.
  const frames = (fault.stack ?? '')
    .replace(message, '')
    .split('\n')
    .filter((line) => /^\s+at /.test(line))
    .slice(0, 8)
    .map((line) => line.trim());
  return [`${name} failed: ${fault.constructor.name}`, ...frames].join('\n  ');
}
