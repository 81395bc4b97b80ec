import { describe, expect, it } from 'vitest';
import { latestWins } from '../../server/src/language-server/latest-wins.ts';

/** A queue of messages that takes in one in each turn, as the protocol's own reader does. */
function turns() {
  let waiting: (() => void)[] = [];
  const later = (work: () => void) => void waiting.push(() => waiting.push(work));
  const run = (messages: readonly (() => void)[]) => {
    const left = [...messages];
    while (left.length > 0 || waiting.length > 0) {
      const now = waiting;
      waiting = [];
      for (const work of now) work();
      left.shift()?.();
    }
  };
  return { later, run };
}

it('does the work once for a burst of edits, after the last of them', () => {
  const { later, run } = turns();
  const done: string[] = [];
  let version = 0;
  const reviews = latestWins<string>(later, (uri) => once(() => done.push(`${uri} ${version}`)));
  run(
    Array.from({ length: 20 }, (_, index) => () => {
      version = index + 1;
      reviews.ask('note');
    }),
  );
  expect(done).toEqual(['note 20']);
});

/** Work of one step. */
const once = (work: () => void): Iterator<void> => ({
  next() {
    work();
    return { done: true, value: undefined };
  },
});

const pause = () => undefined;

it('works again for a later edit, and for each document', () => {
  const { later, run } = turns();
  const done: string[] = [];
  const reviews = latestWins<string>(later, (uri) => once(() => done.push(uri)));
  run([() => reviews.ask('a'), () => reviews.ask('b'), pause, pause, pause, pause, pause, () => reviews.ask('a')]);
  expect(done).toEqual(['a', 'b', 'a']);
});

it('does not work for a document that was closed meanwhile', () => {
  const { later, run } = turns();
  const done: string[] = [];
  const reviews = latestWins<string>(later, (uri) => once(() => done.push(uri)));
  run([() => reviews.ask('a'), () => reviews.drop('a')]);
  expect(done).toEqual([]);
});

/** Work of three steps. */
const inSteps = (done: string[]) =>
  function* (uri: string) {
    for (const step of ['read', 'compute', 'check']) {
      done.push(`${step} ${uri}`);
      yield;
    }
  };

it('lets a question in between two steps', () => {
  const { later, run } = turns();
  const done: string[] = [];
  const reviews = latestWins<string>(later, inSteps(done));
  run([() => reviews.ask('a'), pause, pause, () => done.push('answer')]);
  expect(done).toEqual(['read a', 'answer', 'compute a', 'check a']);
});

it('leaves off when the note is edited again, or closed, and begins anew with the edit', () => {
  const { later, run } = turns();
  const done: string[] = [];
  const reviews = latestWins<string>(later, inSteps(done));
  run([() => reviews.ask('a'), pause, pause, () => reviews.ask('a')]);
  expect(done).toEqual(['read a', 'read a', 'compute a', 'check a']);

  const closed: string[] = [];
  const others = latestWins<string>(later, inSteps(closed));
  run([() => others.ask('a'), pause, pause, () => others.drop('a')]);
  expect(closed).toEqual(['read a']);
});

describe('what is done in the meantime', () => {
  const practice = (done: string[], rounds: number) => {
    let round = 0;
    return {
      next() {
        round += 1;
        done.push(`practice ${round}`);
        return { done: round === rounds, value: undefined };
      },
    };
  };

  it('is done step by step while there is nothing else, and ends', () => {
    const { later, run } = turns();
    const done: string[] = [];
    const reviews = latestWins<string>(later, inSteps(done));
    run([() => reviews.meanwhile(practice(done, 3))]);
    expect(done).toEqual(['practice 1', 'practice 2', 'practice 3']);
  });

  it('waits for all work that is asked for, of whatever note', () => {
    const { later, run } = turns();
    const done: string[] = [];
    const reviews = latestWins<string>(later, inSteps(done));
    run([() => reviews.meanwhile(practice(done, 4)), pause, pause, () => reviews.ask('b')]);
    expect(done).toEqual(['practice 1', 'read b', 'compute b', 'check b', 'practice 2', 'practice 3', 'practice 4']);
  });

  it('rests at once when somebody asks, until the answer is there', () => {
    const { later, run } = turns();
    const done: string[] = [];
    const reviews = latestWins<string>(later, inSteps(done));
    let answered = () => undefined as void;
    run([
      () => reviews.meanwhile(practice(done, 2)),
      () => {
        answered = reviews.question();
        done.push('asked');
      },
      ...Array.from({ length: 8 }, () => pause),
      () => {
        done.push('answered');
        answered();
      },
    ]);
    expect(done).toEqual(['asked', 'answered', 'practice 1', 'practice 2']);
  });

  it('keeps no turn going while somebody waits for an answer', () => {
    let turnsTaken = 0;
    const { later, run } = turns();
    const counted = (work: () => void) => {
      turnsTaken += 1;
      later(work);
    };
    const reviews = latestWins<string>(counted, inSteps([]));
    run([
      () => reviews.meanwhile(practice([], 100)),
      () => void reviews.question(),
      ...Array.from({ length: 50 }, () => pause),
    ]);
    expect(turnsTaken).toBe(1);
  });

  it('is what was named last', () => {
    const { later, run } = turns();
    const done: string[] = [];
    const reviews = latestWins<string>(later, inSteps([]));
    run([() => reviews.meanwhile(practice([], 100)), pause, pause, pause, () => reviews.meanwhile(practice(done, 2))]);
    expect(done).toEqual(['practice 1', 'practice 2']);
  });
});
