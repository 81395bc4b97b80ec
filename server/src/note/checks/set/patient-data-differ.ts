import { textCheck, type About } from '../check.ts';
import { othersWith, placeIn } from '../support/others.ts';

export const patientDataDiffer = textCheck({
  id: 'patient-data-differ',
  group: 'across notes',
  summary: 'Another note has the same patient reference with another year of birth.',
  severity: 'error',
  allowable: false,
  run: (reading, say, context) => {
    if (reading.kind === null || reading.kind === 'department') return;
    const { ref, born } = reading.note.patient ?? {};
    if (ref === undefined || born === undefined) return;
    const others = othersWith(context, 'patient', ref.value).filter((facts) => facts.born !== undefined);
    const other = others.find((facts) => facts.born !== born.value);
    if (other === undefined) return;
    const saying = (year: number | undefined): number => others.filter((facts) => facts.born === year).length;
    // The note that stands alone is asked, not those that agree.
    if (saying(born.value) >= saying(other.born)) return;
    const more = saying(other.born) - 1;
    say({
      at: born,
      message: `Patient: ${ref.text} was born in ${born.text} here, but in ${other.born} in ${other.file}${more === 0 ? '' : ` and ${more} more`}. Are these two patients?`,
      related: placeIn(context, other.file, `born: ${other.born}`, ({ kind, note }) =>
        kind === null || kind === 'department' ? undefined : note.patient?.born,
      ),
    });
  },
});

export const aboutPatientDataDiffer: About = () => ({
  why: 'Two patients under one reference are one patient to every audit, and to the next surgeon.',
  whatToDo: 'Find out whether the reference or the year is wrong, and correct it by hand.',
  source: 'RCS Good Surgical Practice 2014, 1.3 (identification on all records)',
  since: '1.0',
  faulty: {
    note: 'patient:\n  born: 1958',
    files: {
      'other.opnote.yaml':
        'id: OP-2031-0103\ndate: 2031-04-29\neye: left\npatient:\n  born: 1985\nlens:\n  serial: "0040719102"\n  udi: not recorded',
    },
  },
  sound: {
    note: 'patient:\n  born: 1958',
    files: {
      'other.opnote.yaml':
        'id: OP-2031-0103\ndate: 2031-04-29\neye: left\nlens:\n  serial: "0040719102"\n  udi: not recorded',
    },
  },
});
