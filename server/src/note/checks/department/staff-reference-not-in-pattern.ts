import { departmentCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';
import { hasPlaces, matchesPattern } from '../support/reference-pattern.ts';

export const staffReferenceNotInPattern = departmentCheck({
  id: 'staff-reference-not-in-pattern',
  group: 'department file',
  summary: 'A listed staff reference is not written as the department’s own pattern says.',
  severity: 'warning',
  allowable: true,
  run: ({ staff, patterns }, say) => {
    const pattern = patterns?.staff;
    if (pattern === undefined || !hasPlaces(pattern.value)) return;
    const odd = (staff?.items ?? []).flatMap(({ ref }) =>
      ref === undefined || matchesPattern(ref.value, pattern.value) ? [] : [ref],
    );
    const [first, ...others] = odd;
    if (first === undefined) return;
    say({
      at: first,
      message: `Staff: ${first.text}${others.length === 0 ? ' is' : ` and ${others.length} more are`} not written as ${pattern.text}.`,
      related: [related(`the pattern: ${pattern.text}`, pattern)],
    });
  },
});

export const aboutStaffReferenceNotInPattern: About = () => ({
  why: 'The list is what every note is held against: a slip in it is copied everywhere.',
  whatToDo: 'Correct the reference or the pattern.',
  source: 'the department’s own pattern',
  since: '1.0',
  faulty: { base: 'department', note: 'patterns:\n  staff: A-###' },
  sound: { base: 'department', note: 'patterns:\n  staff: A-##' },
});
