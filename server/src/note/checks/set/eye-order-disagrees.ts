import { operationCheck, type About } from '../check.ts';
import { removesLens } from '../support/course.ts';
import { dateInDoubt } from '../support/operation-date.ts';
import { othersWith, placeIn } from '../support/others.ts';
import { certainEye } from '../support/sides.ts';

export const eyeOrderDisagrees = operationCheck({
  id: 'eye-order-disagrees',
  group: 'across notes',
  summary: 'First and second eye do not fit the dates of the two operations.',
  severity: 'warning',
  allowable: true,
  run: (note, say, context) => {
    const eye = certainEye(note);
    const { 'which-eye': order, date } = note;
    if (
      order === undefined ||
      date === undefined ||
      eye === undefined ||
      !removesLens(note) ||
      dateInDoubt(note, context)
    )
      return;
    const fellows = othersWith(context, 'patient', note.patient?.ref?.value).filter(
      (other) =>
        other.record === 'operation' &&
        other.eye !== undefined &&
        other.eye !== eye &&
        other.status !== 'planned' &&
        other.date !== undefined,
    );
    const earlier = fellows.find((other) => (other.date ?? '') < date.value);
    const wrong = order.value === 'first' ? earlier : earlier === undefined ? fellows[0] : undefined;
    if (wrong === undefined || wrong.date === date.value) return;
    say({
      at: order,
      message: `Order of the eyes: this is called the ${order.value} eye, but the other eye was operated ${order.value === 'first' ? 'before' : 'later'}, on ${wrong.date} (${wrong.file}).`,
      related: placeIn(context, wrong.file, `the other eye: ${wrong.date}`, ({ kind, note: other }) =>
        kind === 'operation' ? other.date : undefined,
      ),
    });
  },
});

export const aboutEyeOrderDisagrees: About = () => ({
  why: 'The order is a risk factor and decides what is counted as one patient.',
  whatToDo: 'Correct “which-eye” in the note that is wrong.',
  source: 'Cataract National Data Set (UK); Sim et al., Eye 2024',
  since: '1.0',
  faulty: {
    note: 'which-eye: first',
    files: {
      'earlier.opnote.yaml':
        'id: OP-2031-0087\ndate: 2031-03-11\neye: left\nlens:\n  serial: "0040719087"\n  udi: not recorded',
    },
  },
  sound: {
    note: 'which-eye: second',
    files: {
      'earlier.opnote.yaml':
        'id: OP-2031-0087\ndate: 2031-03-11\neye: left\nlens:\n  serial: "0040719087"\n  udi: not recorded',
    },
  },
});
