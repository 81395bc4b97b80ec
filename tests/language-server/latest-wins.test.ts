import { expect, it } from 'vitest';
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
