import type { Sink } from '../world.ts';

const CLEAR_LINE = '\r\u001b[K';

export interface Progress {
  readonly show: (done: number, of: number) => void;
  readonly clear: () => void;
}

/** A count that rewrites its own line, on a terminal only. */
export function showProgress(sink: Sink): Progress {
  if (!sink.colour) return { show: () => undefined, clear: () => undefined };
  return {
    show: (done, of) => sink.write(`${CLEAR_LINE}checked ${done} of ${of}`),
    clear: () => sink.write(CLEAR_LINE),
  };
}
