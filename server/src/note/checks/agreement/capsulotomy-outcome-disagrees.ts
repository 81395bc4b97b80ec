import { operationCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';

/** A capsulotomy finished as a can-opener has an edge of notches, and no tear unless one is recorded. */
const TORN = ['extended to the periphery', 'radial tear'];

export const capsulotomyOutcomeDisagrees = operationCheck({
  id: 'capsulotomy-outcome-disagrees',
  group: 'agreement',
  summary: 'The capsulotomy ran out, but the anterior capsule is recorded as intact.',
  severity: 'error',
  allowable: true,
  run: (note, say) => {
    const outcome = note.capsulotomy?.outcome;
    const anterior = note['capsule-state']?.anterior;
    if (outcome === undefined || anterior?.value !== 'intact' || !TORN.includes(outcome.value)) return;
    say({
      at: outcome,
      message: `Capsulotomy: its outcome is “${outcome.value}”, but the anterior capsule is recorded as intact.`,
      related: [related('the anterior capsule: intact', anterior)],
    });
  },
});

export const aboutCapsulotomyOutcomeDisagrees: About = () => ({
  why: 'Every later choice, ring, lens and place, rests on whether the rim is continuous.',
  whatToDo: 'Correct the one that is wrong: “torn, contained” or “torn, uncontained” where it ran out.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: { note: 'capsulotomy:\n  outcome: radial tear' },
  sound: { note: 'capsulotomy:\n  outcome: complete' },
});
