import { followUpCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';

export const complicationFoundOutsideCourse = followUpCheck({
  id: 'complication-found-outside-course',
  group: 'sequence and consequence',
  summary: 'A complication is dated before the operation or after the visit that records it.',
  severity: 'error',
  allowable: false,
  run: ({ date, complications }, say, { operation, operationFile }) => {
    const operated = operation?.date;
    for (const { what, found } of complications?.items ?? []) {
      if (found === undefined) continue;
      const name = what === undefined ? 'it' : `“${what.value}”`;
      if (operated !== undefined && found.value < operated.value)
        say({
          at: found,
          message: `Complications: ${name} is said to have been found on ${found.text}, before the operation of ${operated.text}.`,
          related: [related(`the operation: ${operated.text}`, operated, operationFile)],
        });
      else if (date !== undefined && found.value > date.value)
        say({
          at: found,
          message: `Complications: ${name} is said to have been found on ${found.text}, after this visit of ${date.text}.`,
          related: [related(`the visit: ${date.text}`, date)],
        });
    }
  },
});

export const aboutComplicationFoundOutsideCourse: About = () => ({
  why: 'What was there before the operation is no complication of it, and nobody records what is found later.',
  whatToDo: 'Correct the date; a finding from before the operation belongs to the comorbidity.',
  source: 'calendar arithmetic',
  since: '1.0',
  faulty: {
    base: 'follow-up',
    note: 'complications:\n  - what: cystoid macular oedema\n    found: 2031-03-06\n    action: non-steroidal drops',
  },
  sound: {
    base: 'follow-up',
    note: 'complications:\n  - what: cystoid macular oedema\n    found: 2031-05-06\n    action: non-steroidal drops',
  },
});
