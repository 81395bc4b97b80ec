import { operationCheck, type About } from '../check.ts';
import { complicationOf } from '../support/course.ts';
import { related } from '../support/place.ts';
import { tornFacts } from '../support/torn.ts';

export const excludedComplicationRecorded = operationCheck({
  id: 'excluded-complication-recorded',
  group: 'agreement',
  summary: 'A complication is said not to have happened, and recorded elsewhere in the note.',
  severity: 'error',
  allowable: false,
  run: (note, say) => {
    for (const excluded of note['complications-excluded']?.items ?? []) {
      const listed = complicationOf(note, excluded.value)?.what;
      const fact = listed ?? tornFacts(note).find(({ kinds }) => kinds.includes(excluded.value))?.field;
      if (fact === undefined) continue;
      say({
        at: excluded,
        message: `Complications: “${excluded.value}” is said not to have happened, but is recorded elsewhere in this note.`,
        related: [related(`recorded: ${excluded.value}`, fact)],
      });
    }
  },
});

export const aboutExcludedComplicationRecorded: About = () => ({
  why: 'The two cannot both be true, and the reader believes the one that is read first.',
  whatToDo: 'Delete the one that is wrong.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: {
    note: 'complications-excluded: [iris prolapse, hyphaema]\ncomplications:\n  - what: iris prolapse\n    when: hydrodissection\n    account: through the main wound\n    action: reposited\n    told: yes',
  },
  sound: {
    note: 'complications-excluded: [hyphaema]\ncomplications:\n  - what: iris prolapse\n    when: hydrodissection\n    account: through the main wound\n    action: reposited\n    told: yes',
  },
});
