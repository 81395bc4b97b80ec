import type { Operation } from '@sideport/schemas';
import { operationCheck, type CheckContext, type About } from '../check.ts';
import { has, isToric } from '../support/course.ts';
import { lengthOf, longFrom } from '../support/measurements.ts';

const ring = (reason: string): string =>
  `ring:\n  used: yes\n  kind: tension ring\n  size: 13/11 mm\n  reason: [${reason}]\n  inserted: after cortex removal\n  placed: capsular bag\n  serial: R-50311`;

export const ringReasonDisagrees = operationCheck({
  id: 'ring-reason-disagrees',
  group: 'agreement',
  summary: 'The reason for the ring is found nowhere else in the note.',
  severity: 'warning',
  allowable: true,
  run: (note, say, context) => {
    if (note.ring?.used?.value !== true) return;
    for (const reason of note.ring.reason?.items ?? []) {
      const contrary = contraryTo(reason.value, note, context);
      if (contrary !== undefined)
        say({ at: reason, message: `Tension ring: the reason is “${reason.text}”, but ${contrary}.` });
    }
  },
});

export const aboutRingReasonDisagrees: About = () => ({
  why: 'The reason is what justifies the ring; if nothing else in the note bears it out, one of the two is wrong.',
  whatToDo: 'Correct the reason, or record the finding it rests on.',
  source: 'RCS Good Surgical Practice 2014, 1.3 (extra procedure and the reason)',
  since: '1.0',
  faulty: { note: ring('weak zonule') },
  sound: { note: `capsule-state:\n  zonule: weak\n${ring('weak zonule')}` },
});

/** What the note says against a reason; nothing where it does not say enough. */
function contraryTo(reason: string, note: Operation, context: CheckContext): string | undefined {
  const zonule = note['capsule-state']?.zonule?.value;
  const weak =
    has(note.difficulty, 'zonular weakness', 'loose zonule after trauma') ??
    has(note.comorbidity, 'phacodonesis', 'lens subluxation');
  const length = lengthOf(note);
  const kind = note.lens?.kind ?? note.plan?.lens?.kind;
  switch (reason) {
    case 'weak zonule':
      return zonule === 'intact' && weak === undefined ? 'the zonule is recorded as intact' : undefined;
    case 'ruptured zonule':
      return zonule === undefined || zonule === 'ruptured' ? undefined : `the zonule is recorded as ${zonule}`;
    case 'long eye':
      return length !== undefined && length.value.amount < longFrom(context)
        ? `the eye of ${length.text} is not long (${longFrom(context)} mm)`
        : undefined;
    case 'toric lens stability':
      return kind === undefined || isToric(kind.value) ? undefined : `the lens is ${kind.text}`;
    case 'pseudoexfoliation':
      return listedIn(note, 'pseudoexfoliation') ? undefined : 'pseudoexfoliation is not among the comorbidity';
    case 'previous vitrectomy':
      return listedIn(note, 'previous vitrectomy') || has(note.difficulty, 'vitrectomised eye') !== undefined
        ? undefined
        : 'a previous vitrectomy is not among the comorbidity';
    default:
      return undefined;
  }
}

function listedIn(note: Operation, word: 'pseudoexfoliation' | 'previous vitrectomy'): boolean {
  const isSilent = note.comorbidity === undefined && note.$.said['comorbidity']?.word !== 'none';
  return isSilent || has(note.comorbidity, word) !== undefined;
}
