import { amendmentCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';

export const amendmentOfUnfinishedNote = amendmentCheck({
  id: 'amendment-of-unfinished-note',
  group: 'across notes',
  summary: 'The amendment points to a note that is not final.',
  severity: 'warning',
  allowable: true,
  run: ({ amends }, say, { amended }) => {
    const status = amended?.note.status;
    if (amends === undefined || amended === null || status?.value === 'final') return;
    say({
      at: amends,
      message: `Amendment: ${amends.text} ${status === undefined ? 'is a draft' : `has the status “${status.value}”`} and can still be corrected itself.`,
      related: status === undefined ? [] : [related(`its status: ${status.value}`, status, amended.file)],
    });
  },
});

export const aboutAmendmentOfUnfinishedNote: About = () => ({
  why: 'A draft is simply corrected; amendments are for notes that nobody may edit any more.',
  whatToDo: 'Write the change into the note itself and delete the amendment, or finish the note first.',
  source: 'CMS Pub 100-08, chapter 3, 3.3.2.5',
  since: '1.0',
  faulty: { base: 'amendment', note: 'kind: correction', files: { 'operation.opnote.yaml': 'status: draft' } },
  sound: { base: 'amendment', note: 'kind: correction' },
});
