import { operationCheck } from '../check.ts';
import { related } from '../support/place.ts';

export const ringDiffersFromPlan = operationCheck({
  id: 'ring-differs-from-plan',
  group: 'agreement',
  summary: 'A tension ring was planned, but none was used.',
  why: 'Either it turned out not to be needed, which is worth a word, or the field was left as it was.',
  whatToDo: 'Correct the field, or say in the findings why the ring was not needed and allow the remark.',
  source: 'common practice, no source',
  severity: 'warning',
  since: '1.0',
  allowable: true,
  faulty: { note: 'plan:\n  ring: planned' },
  sound: { note: 'plan:\n  ring: ready' },
  run: ({ plan, ring }, say, { status }) => {
    const planned = plan?.ring;
    if (planned?.value !== 'planned' || ring?.used?.value !== false || status === 'planned') return;
    say({
      at: ring.used,
      message: 'Tension ring: it was planned, but the note says that none was used.',
      related: [related('the plan: a ring', planned)],
    });
  },
});
