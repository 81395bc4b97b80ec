import type { Sink } from '../world.ts';

const CLEAR_LINE = '\r\u001b[K';

export interface Progress {
  readonly show: (done: number, of: number) => void;
  readonly clear: () => void;
}

/** A count that rewrites its own line, on a terminal only. The stream is opened when there is something to count. */
export function showProgress(sink: Sink, done = 'checked'): Progress {
  let shown = false;
  return {
    show: (count, of) => {
      if (!sink.colour) return;
      shown = true;
      sink.write(`${CLEAR_LINE}${done} ${count} of ${of}`);
    },
    clear: () => {
      if (shown) sink.write(CLEAR_LINE);
    },
  };
}
