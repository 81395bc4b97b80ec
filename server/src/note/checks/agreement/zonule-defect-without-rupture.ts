import { operationCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';

export const zonuleDefectWithoutRupture = operationCheck({
  id: 'zonule-defect-without-rupture',
  group: 'agreement',
  summary: 'An extent or a place of a zonular defect is recorded, but the zonule is said to be intact.',
  severity: 'error',
  allowable: true,
  run: (note, say) => {
    const state = note['capsule-state'];
    const defect = state?.['zonule-extent'] ?? state?.['zonule-at'];
    if (state?.zonule?.value !== 'intact' || defect === undefined || state['zonule-extent']?.value.amount === 0) return;
    say({
      at: defect,
      message: `Zonule: a defect is recorded (${defect.text}), but the zonule is said to be intact.`,
      related: [related('the zonule: intact', state.zonule)],
    });
  },
});

export const aboutZonuleDefectWithoutRupture: About = () => ({
  why: 'The audit counts the word, the next surgeon reads the extent.',
  whatToDo: 'Correct the one that is wrong.',
  source: 'UK national cataract audit (zonule recorded by itself)',
  since: '1.0',
  faulty: { note: 'capsule-state:\n  zonule: intact\n  zonule-extent: 2 clock hours' },
  sound: { note: 'capsule-state:\n  zonule: weak\n  zonule-at: temporal' },
});
