import { operationCheck, type About } from '../check.ts';
import { dateInDoubt } from '../support/operation-date.ts';
import { related } from '../support/place.ts';
import { suturesOf } from '../support/sutures.ts';

const lines = (removeBy: string): string =>
  `closure:\n  sutures:\n    count: 1\n    gauge: 10-0\n    material: nylon\n    remove-by: ${removeBy}\n  leak-test: no leak after suture`;

export const sutureRemovalBeforeOperation = operationCheck({
  id: 'suture-removal-before-operation',
  group: 'sequence and consequence',
  summary: 'A suture is to be removed before the operation.',
  severity: 'error',
  allowable: false,
  run: (note, say, context) => {
    const { date } = note;
    if (date === undefined || dateInDoubt(note, context)) return;
    for (const sutures of suturesOf(note)) {
      const removal = sutures['remove-by'];
      if (removal === undefined || removal.value > date.value) continue;
      say({
        at: removal,
        message: `Sutures: they are to be out by ${removal.text}, which is not after the operation of ${date.text}.`,
        related: [related(`the operation: ${date.text}`, date)],
      });
    }
  },
});

export const aboutSutureRemovalBeforeOperation: About = () => ({
  why: 'The date is wrong, and the suture will be forgotten.',
  whatToDo: 'Correct the date.',
  source: 'calendar arithmetic',
  since: '1.0',
  faulty: { note: lines('2030-05-20') },
  sound: { note: lines('2031-05-20') },
});
