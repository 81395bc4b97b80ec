import type { Operation } from '@sideport/schemas';
import { operationCheck, type CheckContext, type About } from '../check.ts';
import { complicationOf } from '../support/course.ts';
import { longLength } from '../support/measurements.ts';
import { looksAtRetina } from '../support/reviews.ts';
import { inDepartment, headOf, related } from '../support/place.ts';
import { isPermanent, suturesOf } from '../support/sutures.ts';

const schedule = 'review-schedule:\n  - what: refraction\n    due: 4 weeks\n    when: always';

export const scheduledReviewMissing = operationCheck({
  id: 'scheduled-review-missing',
  group: 'sequence and consequence',
  summary: 'A review that the department plans after such an operation is not planned.',
  severity: 'warning',
  allowable: true,
  run: (note, say, context) => {
    const { reviews } = note;
    if (reviews === undefined) return;
    for (const { what, due, when } of context.department?.['review-schedule']?.items ?? []) {
      if (what === undefined || !applies(when?.value, note, context)) continue;
      // Nothing is removed that dissolves.
      if (/remov/iu.test(what.value) && /suture|stitch/iu.test(what.value) && !suturesOf(note).some(isPermanent))
        continue;
      // Those of the retina have checks of their own.
      if (looksAtRetina({ what }) && (when?.value === 'long eye' || isVitreousLost(note))) continue;
      const length = when?.value === 'long eye' ? longLength(note, context) : undefined;
      const words = what.value
        .toLowerCase()
        .split(/[^a-z]+/u)
        .filter((word) => word.length > 4);
      const planned = reviews.items.some((review) =>
        words.some((word) => review.what?.value.toLowerCase().includes(word) === true),
      );
      if (planned) continue;
      say({
        at: headOf(reviews.$, context),
        message: `Reviews: “${what.text}”${due === undefined ? '' : ` (${due.text})`} is planned here after such an operation, but is not among them.`,
        related: [
          ...(length === undefined ? [] : [related(`axial length: ${length.text}`, length)]),
          ...inDepartment('the review schedule', what, context),
        ],
      });
    }
  },
});

export const aboutScheduledReviewMissing: About = () => ({
  why: 'The schedule exists so that nobody has to remember it.',
  whatToDo: 'Add the review; if the patient does not need it, allow the remark with the reason.',
  source: 'the department’s own schedule',
  since: '1.0',
  faulty: { note: 'reviews:\n  - what: pressure\n    due: 1 day', files: { 'sideport.yaml': schedule } },
  sound: {
    note: 'reviews:\n  - what: refraction and pressure\n    due: 4 weeks',
    files: { 'sideport.yaml': schedule },
  },
});

function isVitreousLost(note: Operation): boolean {
  return note['capsule-state']?.vitreous?.value === 'prolapsed' || complicationOf(note, 'vitreous loss') !== undefined;
}

function applies(when: string | undefined, note: Operation, context: CheckContext): boolean {
  if (when === 'long eye') return longLength(note, context) !== undefined;
  if (when === 'complication') return note.complications !== undefined;
  if (when === 'suture') return suturesOf(note).length > 0;
  return true;
}
