import { operationCheck, type About } from '../check.ts';
import { replacing } from '../support/fixes.ts';
import { headOf, related } from '../support/place.ts';

export const plannedButOperated = operationCheck({
  id: 'planned-but-operated',
  group: 'sequence and consequence',
  summary: 'The status is “planned”, but the note tells of an operation that took place.',
  severity: 'warning',
  allowable: false,
  run: (note, say, context) => {
    const { status, finish } = note;
    if (status?.value !== 'planned') return;
    const done = finish ?? note.capsulotomy?.$ ?? note.nucleus?.$ ?? note.closure?.$ ?? note.lens?.placed;
    if (done === undefined) return;
    say({
      at: status,
      message: 'Status: it says “planned”, but the note already tells of the operation. Set it to “draft”.',
      fixes: [replacing(context.reading, status.span, 'draft')],
      related: [related('what was done', headOf(done, context))],
    });
  },
});

export const aboutPlannedButOperated: About = () => ({
  why: 'A plan is asked for little: the gaps of a real operation would go unremarked.',
  whatToDo: 'Set the status to “draft” as soon as the operation has begun.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: { note: 'status: planned' },
  sound: { note: 'status: final' },
});
