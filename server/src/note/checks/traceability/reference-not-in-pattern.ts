import { textCheck, type About } from '../check.ts';
import { inDepartment } from '../support/place.ts';
import { hasPlaces, matchesPattern } from '../support/reference-pattern.ts';

export const referenceNotInPattern = textCheck({
  id: 'reference-not-in-pattern',
  group: 'traceability',
  summary: 'A reference of note or patient is not written as the department writes it.',
  severity: 'warning',
  allowable: true,
  run: (reading, say, context) => {
    const patterns = context.department?.patterns;
    if (patterns === undefined || reading.kind === null || reading.kind === 'department') return;
    const compared = [
      ['Patient reference', reading.note.patient?.ref, patterns.patient],
      ['Note id', reading.kind === 'operation' ? reading.note.id : undefined, patterns.note],
    ] as const;
    for (const [name, reference, pattern] of compared) {
      if (reference === undefined || pattern === undefined || !hasPlaces(pattern.value)) continue;
      if (matchesPattern(reference.value, pattern.value)) continue;
      say({
        at: reference,
        message: `${name}: ${reference.text} is not written as ${pattern.text} (# a digit, A a letter).`,
        related: inDepartment(`the pattern: ${pattern.text}`, pattern, context),
      });
    }
  },
});

export const aboutReferenceNotInPattern: About = () => ({
  why: 'A reference with a digit too many or too few is found by no search; a name or a hospital number does not fit the pattern either.',
  whatToDo: 'Correct the reference, or the pattern in the department file.',
  source: 'the department’s own patterns',
  since: '1.0',
  faulty: { note: 'patient:\n  ref: P-10422', files: { 'sideport.yaml': '' } },
  sound: { note: 'patient:\n  ref: P-1042', files: { 'sideport.yaml': '' } },
});
