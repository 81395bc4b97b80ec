import { amendmentCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';

export const amendmentBeforeNote = amendmentCheck({
  id: 'amendment-before-note',
  group: 'across notes',
  summary: 'The amendment is dated before the note that it amends was signed.',
  severity: 'error',
  allowable: false,
  run: ({ at }, say, { amended }) => {
    const signed = amended?.note.signed?.items.find(({ at: time }) => time !== undefined)?.at;
    if (at === undefined || signed === undefined || Date.parse(at.value) >= Date.parse(signed.value)) return;
    say({
      at,
      message: `Amendment: it is dated ${at.text}, before the note was signed on ${signed.text}.`,
      related: [related(`the note signed: ${signed.text}`, signed, amended?.file)],
    });
  },
});

export const aboutAmendmentBeforeNote: About = () => ({
  why: 'What is not signed yet is not amended but edited; the clock or the date is wrong.',
  whatToDo: 'Correct the time of the amendment.',
  source: 'CMS Pub 100-08, chapter 3, 3.3.2.5 (date of each amendment)',
  since: '1.0',
  faulty: { base: 'amendment', note: 'at: 2031-04-07T08:30+01:00' },
  sound: { base: 'amendment', note: 'at: 2031-04-09T08:30+01:00' },
});
