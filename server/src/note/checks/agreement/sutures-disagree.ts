import { operationCheck, type About } from '../check.ts';
import { headOf, related } from '../support/place.ts';

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
    const test = closure?.['leak-test'];
    if (none?.word === 'none' && sutured !== undefined) {
      say({
        at: none,
        message: 'Closure: it says that there were no sutures, but an incision was sutured.',
        related: [related('the sutured incision', headOf(sutured.$, context))],
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

export const aboutSuturesDisagree: About = () => ({
  why: 'A suture that one place does not mention is not removed.',
  whatToDo: 'Correct the one that is wrong.',
  source: 'RCS Good Surgical Practice 2014, 1.3 (closure technique)',
  since: '1.0',
  faulty: { note: 'closure:\n  leak-test: no leak after suture' },
  sound: { note: 'closure:\n  leak-test: no leak after hydration' },
});
