/** Puts work off until at least one more message, if one has arrived already, is taken in. */
export type Later = (work: () => void) => void;

/**
 * Gathers requests for work by key, so that a burst of edits costs one piece of work, on the latest state, without
 * waiting for any clock. `work` is begun once per key after the queue of messages has run empty. Between its steps
 * messages are taken in: a question waits for one step, and a newer request for the same key ends the older work.
 */
export function latestWins<Key>(later: Later, work: (key: Key) => Iterator<void>) {
  const asked = new Set<Key>();
  let current: { readonly key: Key; readonly steps: Iterator<void> } | undefined;
  let round = 0;
  let waiting = false;

  const turn = () => {
    waiting = true;
    const before = round;
    later(() => {
      // A message arrived meanwhile: let the rest of the burst in first.
      if (round === before) step();
      waiting = false;
      if (current !== undefined || asked.size > 0) turn();
    });
  };

  const step = () => {
    const [next] = asked;
    if (current === undefined && next !== undefined) {
      asked.delete(next);
      current = { key: next, steps: work(next) };
    }
    if (current?.steps.next().done === true) current = undefined;
  };

  const end = (key: Key) => {
    if (current?.key === key) current = undefined;
  };

  return {
    ask(key: Key): void {
      end(key);
      asked.add(key);
      round += 1;
      if (!waiting) turn();
    },
    /** Nobody needs it any more. */
    drop(key: Key): void {
      end(key);
      asked.delete(key);
    },
  };
}
