/** Puts work off until at least one more message, if one has arrived already, is taken in. */
export type Later = (work: () => void) => void;

/**
 * Gathers requests for work by key, so that a burst of edits costs one piece of work, on the latest state, without
 * waiting for any clock. `work` is begun once per key after the queue of messages has run empty. Between its steps
 * messages are taken in: a question waits for one step, and a newer request for the same key ends the older work.
 * What is to be done meanwhile gets its steps only while there is nothing else to do and nobody waits for an answer.
 */
export function latestWins<Key>(later: Later, work: (key: Key) => Iterator<void>) {
  const asked = new Set<Key>();
  let current: { readonly key: Key; readonly steps: Iterator<void> } | undefined;
  let between: Iterator<void> | undefined;
  let questions = 0;
  /** Grows with each request for work, and with each question. */
  let round = 0;
  let heard = 0;
  let waiting = false;

  const isBusy = () => current !== undefined || asked.size > 0;
  const isIdle = () => !isBusy() && questions === 0;

  const turn = () => {
    waiting = true;
    const [roundBefore, heardBefore] = [round, heard];
    later(() => {
      // A message arrived meanwhile: let the rest of the burst in first.
      if (round === roundBefore && isBusy()) step();
      else if (heard === heardBefore && isIdle() && between?.next().done === true) between = undefined;
      waiting = false;
      goOn();
    });
  };

  const goOn = () => {
    if (!waiting && (isBusy() || (between !== undefined && isIdle()))) turn();
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
      heard += 1;
      goOn();
    },
    /** Nobody needs it any more. */
    drop(key: Key): void {
      end(key);
      asked.delete(key);
    },
    /** Does this in the meantime, and no longer what was to be done in the meantime before. */
    meanwhile(steps: Iterator<void>): void {
      between = steps;
      goOn();
    },
    /** Somebody asks something; what is given back is called once it is answered. */
    question(): () => void {
      questions += 1;
      heard += 1;
      return () => {
        questions -= 1;
        goOn();
      };
    },
  };
}
