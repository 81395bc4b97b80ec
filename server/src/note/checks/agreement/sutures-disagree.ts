import type { Operation } from '@sideport/schemas';
import { operationCheck, type About } from '../check.ts';
import { headOf, related } from '../support/place.ts';
import { counted } from '../support/words.ts';

export const suturesDisagree = operationCheck({
  id: 'sutures-disagree',
  group: 'agreement',
  summary: 'Closure and incisions, or closure and leak test, tell differently whether sutures were placed.',
  severity: 'error',
  allowable: true,
  run: ({ closure, incisions }, say, context) => {
    const none = closure?.$.said['sutures'];
    const sutured = incisions?.items.find(
      ({ sutures }) => sutures !== undefined && sutures.count?.value !== 0,
    )?.sutures;
    const [total, ofWounds] = [closure?.sutures?.count, countOfWounds(incisions)];
    const test = closure?.['leak-test'];
    if (none?.word === 'none' && sutured !== undefined) {
      say({
        at: none,
        message: 'Closure: it says that there were no sutures, but an incision was sutured.',
        related: [related('the sutured incision', headOf(sutured.$, context))],
      });
    } else if (total !== undefined && ofWounds !== undefined && total.value !== ofWounds) {
      say({
        at: total,
        message: `Closure: it counts ${counted(total.value, 'suture')}, the incisions ${ofWounds} in all.`,
        related: (incisions?.items ?? []).flatMap(({ sutures }) =>
          sutures?.count === undefined ? [] : [related(`sutures here: ${sutures.count.text}`, sutures.count)],
        ),
      });
    } else if (test?.value === 'no leak after suture' && none?.word === 'none') {
      say({
        at: test,
        message: 'Closure: the leak test says “no leak after suture”, but no sutures are recorded.',
        related: [related('the sutures: none', none)],
      });
    }
  },
});

/** How many sutures the incisions have together; undefined while one of them does not say how many. */
function countOfWounds(incisions: Operation['incisions']): number | undefined {
  const sutured =
    incisions?.items.flatMap(({ sutures }) => (sutures === undefined ? [] : [sutures.count?.value])) ?? [];
  if (sutured.length === 0 || sutured.includes(undefined)) return undefined;
  return sutured.reduce<number>((sum, count) => sum + (count ?? 0), 0);
}

export const aboutSuturesDisagree: About = () => ({
  why: 'A suture that one place does not mention is not removed.',
  whatToDo: 'Correct the one that is wrong.',
  source: 'RCS Good Surgical Practice 2014, 1.3 (closure technique)',
  since: '1.0',
  faulty: { note: 'closure:\n  leak-test: no leak after suture' },
  sound: { note: 'closure:\n  leak-test: no leak after hydration' },
});
