import type { Sink } from '../world.ts';

const CLEAR_LINE = '\r\u001b[K';

export interface Progress {
  readonly show: (done: number, of: number) => void;
  readonly clear: () => void;
}

/** A count that rewrites its own line, on a terminal only. */
export function showProgress(sink: Sink, done = 'checked'): Progress {
  if (!sink.colour) return { show: () => undefined, clear: () => undefined };
  return {
    show: (count, of) => sink.write(`${CLEAR_LINE}${done} ${count} of ${of}`),
    clear: () => sink.write(CLEAR_LINE),
  };
}
