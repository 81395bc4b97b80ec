import { operationCheck, type About } from '../check.ts';
import { removesLens, wasAbandoned } from '../support/course.ts';
import { dateInDoubt } from '../support/operation-date.ts';
import { isLater, othersWith, placeIn } from '../support/others.ts';
import { certainEye } from '../support/sides.ts';

const LENS_LEFT_ALONE = ['lens exchange', 'secondary lens', 'lens repositioning', 'peripheral iridotomy'];

export const sameEyeOperatedTwice = operationCheck({
  id: 'same-eye-operated-twice',
  group: 'across notes',
  summary: 'The natural lens of this eye was removed before, says another note.',
  severity: 'error',
  allowable: true,
  run: (note, say, context) => {
    const eye = certainEye(note);
    const patient = note.patient?.ref;
    if (eye === undefined || note.eye === undefined || patient === undefined || !removesLens(note)) return;
    if (context.status === 'planned' || wasAbandoned(note) || dateInDoubt(note, context)) return;
    const earlier = othersWith(context, 'patient', patient.value).find(
      (other) =>
        other.record === 'operation' &&
        other.eye === eye &&
        other.status !== 'planned' &&
        other.id !== note.id?.value &&
        !LENS_LEFT_ALONE.includes(other.procedure ?? '') &&
        isLater(note.date?.value, context, other),
    );
    if (earlier === undefined) return;
    const opened = context.set?.open(earlier.file);
    if (opened?.kind === 'operation' && wasAbandoned(opened.note)) return;
    say({
      at: note.eye,
      message: `Side: the ${eye} eye of ${patient.text} was operated before${earlier.date === undefined ? '' : ` on ${earlier.date}`}, says ${earlier.file}. Which note is wrong?`,
      related: placeIn(context, earlier.file, `the other note: ${eye}`, ({ kind, note: other }) =>
        kind === 'operation' ? other.eye : undefined,
      ),
    });
  },
});

export const aboutSameEyeOperatedTwice: About = () => ({
  why: 'A lens is removed once: one of the notes has the wrong side, the wrong patient, or is a copy.',
  whatToDo: 'Find out which note is wrong. If the first operation was abandoned, list that in its complications.',
  source: 'WHO Surgical Safety Checklist 2009 (site)',
  since: '1.0',
  faulty: {
    note: 'which-eye: first',
    files: {
      'earlier.opnote.yaml': 'id: OP-2031-0087\ndate: 2031-03-11\nlens:\n  serial: "0040719087"\n  udi: not recorded',
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
