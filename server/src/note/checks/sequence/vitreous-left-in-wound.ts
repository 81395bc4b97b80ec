import { operationCheck, type About } from '../check.ts';
import { composeNote } from '../examples/compose.ts';
import { tornCapsule } from '../examples/scenarios.ts';
import { related } from '../support/place.ts';
import { isContradicted } from '../support/torn.ts';
import { isWritten } from '../support/written.ts';

export const vitreousLeftInWound = operationCheck({
  id: 'vitreous-left-in-wound',
  group: 'sequence and consequence',
  summary: 'Vitreous prolapsed, and the note does not say that the wounds were free of it; or it was left there.',
  severity: 'warning',
  allowable: true,
  run: (note, say, { reading }) => {
    const { 'capsule-state': state } = note;
    const vitreous = state?.vitreous;
    const inWound = state?.['vitreous-in-wound'];
    if (vitreous === undefined) return;
    if (inWound?.value === true) {
      say({
        at: inWound,
        severity: 'error',
        message:
          'Vitreous: a strand was left in the wound. Say in words with the capsule what is planned for it, or free the wound.',
        related: [related(`the vitreous: ${vitreous.value}`, vitreous)],
      });
    } else if (
      vitreous.value === 'prolapsed' &&
      !isContradicted(note, 'vitreous loss') &&
      inWound === undefined &&
      !isWritten(reading, ['capsule-state', 'vitreous-in-wound'])
    ) {
      say({
        at: vitreous,
        message:
          'Vitreous: it prolapsed, and the note does not say whether the wounds were free of it at the end (“vitreous-in-wound”).',
      });
    }
  },
});

export const aboutVitreousLeftInWound: About = () => ({
  why: 'A strand in the wound pulls on the retina and is a path for infection.',
  whatToDo:
    'Write “vitreous-in-wound: no” when the wounds were swept; if a strand was left, say what is planned for it.',
  source:
    'common practice, no source; Day et al., Eye 2015;29:552-60 (detachment and endophthalmitis after vitreous loss)',
  since: '1.0',
  faulty: { note: composeNote(tornCapsule, 'capsule-state:\n  vitreous-in-wound: yes') },
  sound: { note: tornCapsule },
});
