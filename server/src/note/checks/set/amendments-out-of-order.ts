import { amendmentCheck, type About } from '../check.ts';
import { othersWith, placeIn } from '../support/others.ts';

/** The number at the end of an id: AM-2031-0102-2 is the second. */
function ordinal(id: string | undefined): number | undefined {
  const digits = /-(\d{1,2})$/u.exec(id ?? '')?.[1];
  return digits === undefined ? undefined : Number(digits);
}

export const amendmentsOutOfOrder = amendmentCheck({
  id: 'amendments-out-of-order',
  group: 'across notes',
  summary: 'A later amendment is dated before an earlier one of the same note.',
  severity: 'error',
  allowable: false,
  run: ({ id, at, amends }, say, context) => {
    const here = ordinal(id?.value);
    if (at === undefined || amends === undefined || here === undefined) return;
    const other = othersWith(context, 'pointsTo', amends.value).find((facts) => {
      const there = ordinal(facts.id);
      if (facts.record !== 'amendment' || there === undefined || facts.at === undefined) return false;
      return there < here && Date.parse(facts.at) > Date.parse(at.value);
    });
    if (other === undefined) return;
    say({
      at,
      message: `Amendment: ${id?.text} is dated ${at.text}, before the earlier ${other.id} (${other.at}).`,
      related: placeIn(context, other.file, `${other.id}: ${other.at}`, ({ kind, note }) =>
        kind === 'amendment' ? note.at : undefined,
      ),
    });
  },
});

export const aboutAmendmentsOutOfOrder: About = () => ({
  why: 'The chain of amendments is read in order; a later correction must not look older than what it corrects.',
  whatToDo: 'Correct the time, or the number at the end of the id.',
  source: 'CMS Pub 100-08, chapter 3, 3.3.2.5 (date of each amendment)',
  since: '1.0',
  faulty: {
    base: 'amendment',
    note: 'id: AM-2031-0102-2\nat: 2031-04-09T08:30+01:00',
    files: { 'first.opnote.yaml': 'record: amendment\nid: AM-2031-0102-1\nat: 2031-04-12T08:30+01:00' },
  },
  sound: {
    base: 'amendment',
    note: 'id: AM-2031-0102-2\nat: 2031-04-15T08:30+01:00\nsigned:\n  - by: S-02\n    meaning: author\n    at: 2031-04-15T08:34+01:00',
    files: { 'first.opnote.yaml': 'record: amendment\nid: AM-2031-0102-1\nat: 2031-04-12T08:30+01:00' },
  },
});
