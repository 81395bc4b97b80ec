import { operationCheck, type About } from '../check.ts';
import { implantedLens } from '../support/lenses.ts';
import { othersWith, placeIn } from '../support/others.ts';

export const serialImplantedTwice = operationCheck({
  id: 'serial-implanted-twice',
  group: 'across notes',
  summary: 'A lens with the same serial number is recorded in another eye.',
  severity: 'error',
  allowable: false,
  run: (note, say, context) => {
    const lens = implantedLens(note);
    const serial = lens?.serial;
    const other = othersWith(context, 'lensSerial', serial?.value).find(
      (facts) =>
        facts.id !== note.id?.value &&
        facts.status !== 'planned' &&
        (facts.lensModel === undefined || lens?.model === undefined || facts.lensModel === lens.model.value),
    );
    if (serial === undefined || other === undefined) return;
    say({
      at: serial,
      message: `Lens: serial number ${serial.text} is also recorded in ${other.file}. A lens is in one eye only.`,
      related: placeIn(context, other.file, `the same serial number: ${serial.text}`, ({ kind, note: found }) =>
        kind === 'operation' ? found.lens?.serial : undefined,
      ),
    });
  },
});

export const aboutSerialImplantedTwice: About = () => ({
  why: 'A lens can be in one eye only: one of the records names a lens that is not there.',
  whatToDo: 'Compare both notes with the labels kept, and correct the wrong one by hand.',
  source: 'FDA, UDI formats 2017; RCS Good Surgical Practice 2014, 1.3 (serial numbers of prostheses)',
  since: '1.0',
  faulty: {
    note: 'lens:\n  serial: "0040719101"',
    files: { 'other.opnote.yaml': 'id: OP-2031-0103\npatient:\n  ref: P-1050' },
  },
  sound: {
    note: 'lens:\n  serial: "0040719101"',
    files: {
      'other.opnote.yaml':
        'id: OP-2031-0103\npatient:\n  ref: P-1050\nlens:\n  serial: "0040719102"\n  udi: not recorded',
    },
  },
});
