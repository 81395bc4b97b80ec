import { operationCheck, type About } from '../check.ts';

export const leakLeftAtEnd = operationCheck({
  id: 'leak-left-at-end',
  group: 'sequence and consequence',
  summary: 'The wound leaked at the end of the operation.',
  severity: 'error',
  allowable: true,
  run: ({ closure }, say) => {
    const test = closure?.['leak-test'];
    if (test?.value !== 'leak') return;
    say({
      at: test,
      message: 'Closure: the last test showed a leak. Record what closed the wound, and the test after that.',
    });
  },
});

export const aboutLeakLeftAtEnd: About = () => ({
  why: 'A leaking wound is the way in for endophthalmitis and softens the eye.',
  whatToDo:
    'Record what closed it (hydration, suture) and the test after that; if it really leaked when the patient left, say what is planned.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: { note: 'closure:\n  leak-test: leak' },
  sound: { note: 'closure:\n  leak-test: no leak after hydration' },
});
