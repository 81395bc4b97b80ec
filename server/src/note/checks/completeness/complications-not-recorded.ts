import { operationCheck, type About } from '../check.ts';
import { placeOfMissing } from '../support/place.ts';
import { cms, rcs, registry } from '../support/completeness.ts';
import { addingField, replacing } from '../support/fixes.ts';
import { isWritten } from '../support/written.ts';

export const complicationsNotRecorded = operationCheck({
  id: 'complications-not-recorded',
  group: 'completeness',
  summary: 'The note says neither which complications there were nor that there were none.',
  severity: 'unfinished',
  allowable: false,
  run: (note, say, context) => {
    if (context.status === 'planned' || note.complications !== undefined) return;
    const said = note.$.said['complications'];
    if (said !== undefined && (said.word !== 'not recorded' || context.status !== 'final')) return;
    if (said === undefined && isWritten(context.reading, ['complications'])) return;
    const found = said === undefined ? 'are not recorded' : 'are “not recorded” in a final note';
    say({
      at: said ?? placeOfMissing(context),
      message: `Complications ${found}. Write “none” if there were none: it says that somebody thought of it. Asked for by ${rcs} and ${cms}.`,
      fixes:
        said === undefined
          ? addingField(context.reading, 'complications', 'none')
          : [replacing(context.reading, said.span, 'none')],
    });
  },
});

export const aboutComplicationsNotRecorded: About = () => ({
  why: 'An empty place can mean that there were none or that nobody thought of it; “none” says that somebody did.',
  whatToDo: 'Write “complications: none”, or list them.',
  source: `${rcs}; ${cms}; ${registry}`,
  since: '1.0',
  faulty: { note: 'without: complications' },
  sound: { note: 'complications: none' },
});
