import { textCheck, type About } from '../check.ts';

export const dateInFuture = textCheck({
  id: 'date-in-future',
  group: 'plausibility',
  summary: 'A finished note is dated in the future.',
  severity: 'error',
  allowable: false,
  run: (reading, say, { today, status }) => {
    if (today === null || status === 'planned') return;
    const date = reading.kind === 'operation' || reading.kind === 'follow-up' ? reading.note.date : undefined;
    if (date === undefined || date.value <= today) return;
    say({ at: date, message: `Date: ${date.text} has not come yet (today is ${today}). Is a digit wrong?` });
  },
});

export const aboutDateInFuture: About = () => ({
  why: 'Nothing can be recorded of a day that has not come: a digit of the date is wrong.',
  whatToDo: 'Correct the date; a note of something planned has the status “planned”.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: { base: 'follow-up', note: 'date: 2131-05-06' },
  sound: { base: 'follow-up', note: 'date: 2031-05-06' },
});
