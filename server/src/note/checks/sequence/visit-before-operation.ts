import { followUpCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';

export const visitBeforeOperation = followUpCheck({
  id: 'visit-before-operation',
  group: 'sequence and consequence',
  summary: 'The visit is dated before the operation.',
  severity: 'error',
  allowable: false,
  run: ({ date }, say, { operation, operationFile }) => {
    const operated = operation?.date;
    if (date === undefined || operated === undefined || date.value >= operated.value) return;
    say({
      at: date,
      message: `Visit: it is dated ${date.text}, before the operation of ${operated.text}.`,
      related: [related(`the operation: ${operated.text}`, operated, operationFile)],
    });
  },
});

export const aboutVisitBeforeOperation: About = () => ({
  why: 'A digit of one of the dates is wrong, or the visit points to another operation.',
  whatToDo: 'Correct the date or the id.',
  source: 'calendar arithmetic',
  since: '1.0',
  faulty: { base: 'follow-up', note: 'date: 2031-03-06' },
  sound: { base: 'follow-up', note: 'date: 2031-05-06' },
});
