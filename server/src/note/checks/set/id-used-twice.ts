import { textCheck, type About } from '../check.ts';
import { othersWith, placeIn } from '../support/others.ts';

export const idUsedTwice = textCheck({
  id: 'id-used-twice',
  group: 'across notes',
  summary: 'Another note of the set has the same id.',
  severity: 'error',
  allowable: false,
  run: (reading, say, context) => {
    if (reading.kind === null || reading.kind === 'department') return;
    const { id } = reading.note;
    const other = othersWith(context, 'id', id?.value)[0];
    if (id === undefined || other === undefined) return;
    say({
      at: id,
      message: `Id: ${id.text} is also the id of ${other.file}.`,
      related: placeIn(context, other.file, `the same id: ${id.text}`, ({ kind, note }) =>
        kind === null || kind === 'department' ? undefined : note.id,
      ),
    });
  },
});

export const aboutIdUsedTwice: About = () => ({
  why: 'Follow-ups, amendments and seals point to the id: with two of them they point to the wrong note.',
  whatToDo: 'Give one of the two an id of its own, and see where the others point.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: {
    note: 'id: OP-2031-0102',
    files: { 'other.opnote.yaml': 'patient:\n  ref: P-1050\nlens:\n  serial: "0040719102"\n  udi: not recorded' },
  },
  sound: {
    note: 'id: OP-2031-0102',
    files: {
      'other.opnote.yaml':
        'id: OP-2031-0103\npatient:\n  ref: P-1050\nlens:\n  serial: "0040719102"\n  udi: not recorded',
    },
  },
});
