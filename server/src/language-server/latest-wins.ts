/** Puts work off until at least one more message, if one has arrived already, is taken in. */
export type Later = (work: () => void) => void;

/**
 * Gathers requests for work by key, so that a burst of edits costs one piece of work, on the latest state, without
 * waiting for any clock. `work` is called once per key after the queue of messages has run empty.
 */
export function latestWins<Key>(later: Later, work: (key: Key) => void) {
  const asked = new Map<Key, number>();
  let waiting = false;
  let round = 0;

  const turn = () => {
    const before = round;
    later(() => {
      // A message arrived meanwhile: let the rest of the burst in first.
      if (round !== before && asked.size > 0) return turn();
      waiting = false;
      const keys = [...asked.keys()];
      asked.clear();
      for (const key of keys) work(key);
    });
  };

  return {
    ask(key: Key): void {
      asked.set(key, ++round);
      if (waiting) return;
      waiting = true;
      turn();
    },
    /** Nobody needs it any more. */
    drop(key: Key): void {
      asked.delete(key);
    },
  };
}
