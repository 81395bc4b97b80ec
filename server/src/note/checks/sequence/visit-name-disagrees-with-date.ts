import { followUpCheck, type About } from '../check.ts';
import { daysBetween } from '../support/dates.ts';
import { related } from '../support/place.ts';
import { counted } from '../support/words.ts';

/** From how many days to how many days after the operation a visit goes by its name. */
const spans: Readonly<Record<string, readonly [number, number]>> = {
  'day of the operation': [0, 0],
  'day 1': [1, 2],
  'day 2': [2, 3],
  'week 1': [3, 14],
  'week 2': [8, 21],
  'month 1': [15, 60],
  'week 6': [29, 60],
  'month 2': [43, 90],
  'month 3': [61, 135],
  'month 6': [120, 270],
  'year 1': [270, 550],
};

export const visitNameDisagreesWithDate = followUpCheck({
  id: 'visit-name-disagrees-with-date',
  group: 'sequence and consequence',
  summary: 'The name of the visit does not fit the days since the operation.',
  severity: 'warning',
  allowable: true,
  run: ({ date, visit }, say, { operation, operationFile, today }) => {
    const operated = operation?.date;
    if (date === undefined || visit === undefined || operated === undefined) return;
    // A date in the future has a remark of its own.
    if (today !== null && date.value > today) return;
    const span = spans[visit.value];
    const days = daysBetween(operated.value, date.value);
    if (span === undefined || days === undefined || days < 0 || (days >= span[0] && days <= span[1])) return;
    say({
      at: visit,
      message: `Visit: it is called “${visit.value}”, but is ${counted(days, 'day')} after the operation of ${operated.text}.`,
      related: [related(`the operation: ${operated.text}`, operated, operationFile)],
    });
  },
});

export const aboutVisitNameDisagreesWithDate: About = () => ({
  why: 'Outcomes are counted by the name: a first-day acuity counted at one month spoils the audit.',
  whatToDo: 'Correct the name of the visit, or the date.',
  source: 'ICHOM cataract set (follow-up around one month); spans common practice, no source',
  since: '1.0',
  faulty: { base: 'follow-up', note: 'visit: day 1' },
  sound: { base: 'follow-up', note: 'visit: month 1' },
});
