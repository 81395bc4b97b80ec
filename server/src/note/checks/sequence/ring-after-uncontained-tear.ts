import { operationCheck, type About } from '../check.ts';
import { composeNote } from '../examples/compose.ts';
import { tornCapsule } from '../examples/scenarios.ts';
import { isContradicted } from '../support/torn.ts';
import { related } from '../support/place.ts';

const ring =
  'ring:\n  used: yes\n  kind: tension ring\n  size: 13/11 mm\n  reason: [centration]\n  inserted: after cortex removal\n  placed: capsular bag\n  serial: R-50311';

export const ringAfterUncontainedTear = operationCheck({
  id: 'ring-after-uncontained-tear',
  group: 'sequence and consequence',
  summary: 'A tension ring was placed in a bag with a tear that is not contained.',
  severity: 'error',
  allowable: true,
  run: (note, say) => {
    const { ring: used, 'capsule-state': state } = note;
    if (used?.used?.value !== true || used.placed?.value === 'sulcus' || used.kind?.value === 'tension segment') return;
    if (used.result?.value === 'removed again') return;
    const tear =
      state?.posterior?.value === 'torn'
        ? state.posterior
        : state?.anterior?.value === 'torn, uncontained'
          ? state.anterior
          : undefined;
    if (tear === undefined) return;
    if (isContradicted(note, tear === state?.posterior ? 'posterior capsule rupture' : 'anterior capsule tear')) return;
    say({
      at: used.used,
      message: `Tension ring: it was used although the ${tear === state?.posterior ? 'posterior' : 'anterior'} capsule is “${tear.value}”: a ring drives such a tear on.`,
      related: [related(`the capsule: ${tear.value}`, tear)],
    });
  },
});

export const aboutRingAfterUncontainedTear: About = () => ({
  why: 'The ring spreads the bag and drives the tear on: an uncontained tear of either capsule speaks against it.',
  whatToDo:
    'Correct the one that is wrong. If the ring was placed all the same, give the account and allow the remark.',
  source: 'published contraindication of tension rings, from memory; common practice',
  since: '1.0',
  faulty: { note: composeNote(tornCapsule, ring) },
  sound: { note: composeNote(tornCapsule, ring.replace('capsular bag', 'sulcus')) },
});
