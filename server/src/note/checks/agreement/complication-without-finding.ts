import { operationCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';
import { contraryState } from '../support/torn.ts';

export const complicationWithoutFinding = operationCheck({
  id: 'complication-without-finding',
  group: 'agreement',
  summary: 'A complication of the capsule is listed, but the state of the capsule does not show it.',
  severity: 'error',
  allowable: true,
  run: (note, say) => {
    for (const { what } of note.complications?.items ?? []) {
      const contrary = what === undefined ? undefined : contraryState(note, what.value);
      if (what === undefined || contrary === undefined) continue;
      say({
        at: what,
        message: `Complications: “${what.text}” is listed, but the state of the capsule says “${contrary.text}”.`,
        related: [related(`the state of the capsule: ${contrary.text}`, contrary)],
      });
    }
  },
});

export const aboutComplicationWithoutFinding: About = () => ({
  why: 'The audit counts from the facts of the capsule; as they stand, this complication is not counted.',
  whatToDo: 'Correct the state of the capsule, or the complication.',
  source: 'UK national cataract audit (definition of posterior capsule rupture)',
  since: '1.0',
  faulty: {
    note: 'complications:\n  - what: anterior capsule tear\n    when: capsulotomy\n    account: the edge ran out and was brought back\n    action: torn round the other way\n    told: yes',
  },
  sound: {
    note: 'capsule-state:\n  anterior: torn, contained\ncomplications:\n  - what: anterior capsule tear\n    when: capsulotomy\n    account: the edge ran out and was brought back\n    action: torn round the other way\n    told: yes',
  },
});
