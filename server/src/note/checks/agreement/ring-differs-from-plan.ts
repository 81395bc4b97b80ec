import { operationCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';

export const ringDiffersFromPlan = operationCheck({
  id: 'ring-differs-from-plan',
  group: 'agreement',
  summary: 'A tension ring was planned, but none was used.',
  severity: 'warning',
  allowable: true,
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

export const aboutRingDiffersFromPlan: About = () => ({
  why: 'Either it turned out not to be needed, which is worth a word, or the field was left as it was.',
  whatToDo: 'Correct the field, or say in the findings why the ring was not needed and allow the remark.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: { note: 'plan:\n  ring: planned' },
  sound: { note: 'plan:\n  ring: ready' },
});
