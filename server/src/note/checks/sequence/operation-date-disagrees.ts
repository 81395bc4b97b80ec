import { operationCheck, type About } from '../check.ts';
import { datesOf } from '../support/operation-date.ts';
import { related } from '../support/place.ts';
import { listed } from '../support/words.ts';

export const operationDateDisagrees = operationCheck({
  id: 'operation-date-disagrees',
  group: 'sequence and consequence',
  summary: 'The date of the operation does not fit several other dates of the note.',
  severity: 'error',
  allowable: false,
  run: (note, say, context) => {
    const { date } = note;
    const { misfits } = datesOf(note, context);
    if (date === undefined || misfits.length < 2 || (context.today !== null && date.value > context.today)) return;
    say({
      at: date,
      message: `Date: ${date.text} does not fit ${listed(misfits.map(({ what }) => what))}. Is a digit of it wrong?`,
      related: misfits.map(({ what, at }) => related(what, at)),
    });
  },
});

export const aboutOperationDateDisagrees: About = () => ({
  why: 'Then the date of the operation itself is probably the slip, and with it every interval counted from it.',
  whatToDo: 'Compare with the theatre log and correct the date.',
  source: 'calendar arithmetic',
  since: '1.0',
  faulty: { note: 'date: 2030-04-08' },
  sound: { note: 'date: 2031-04-08' },
});
