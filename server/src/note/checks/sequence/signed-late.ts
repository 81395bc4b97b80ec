import { operationCheck, type About } from '../check.ts';
import { dayOf, daysBetween } from '../support/dates.ts';
import { dateInDoubt } from '../support/operation-date.ts';
import { related } from '../support/place.ts';

export const signedLate = operationCheck({
  id: 'signed-late',
  group: 'sequence and consequence',
  summary: 'The author signed the note days after the operation.',
  severity: 'warning',
  allowable: true,
  run: (note, say, context) => {
    const { date, signed, 'free-text': freeText } = note;
    const author = signed?.items.find(({ meaning }) => meaning?.value === 'author')?.at;
    if (author === undefined || date === undefined || /\blate\b|delayed/iu.test(freeText?.value ?? '')) return;
    const days = daysBetween(date.value, dayOf(author.value));
    if (days === undefined || days < 2 || dateInDoubt(note, context)) return;
    say({
      at: author,
      message: `Signature: the author signed ${days} days after the operation of ${date.text}. If the note was written late, it has to say so.`,
      related: [related(`the operation: ${date.text}`, date)],
    });
  },
});

export const aboutSignedLate: About = () => ({
  why: 'A report is due on completion, before the patient goes to the next level of care; what is written from memory later is marked as late.',
  whatToDo: 'Leave the note as it is and say in “free-text” that it was written late and why.',
  source: 'Joint Commission RC.02.01.03; CMS Pub 100-08, chapter 3, 3.3.2.5 (delayed entries identified as such)',
  since: '1.0',
  faulty: { note: 'signed:\n  - by: S-02\n    meaning: author\n    at: 2031-04-12T10:48+01:00' },
  sound: {
    note: 'free-text: written late, the theatre computer was down\nsigned:\n  - by: S-02\n    meaning: author\n    at: 2031-04-12T10:48+01:00',
  },
});
