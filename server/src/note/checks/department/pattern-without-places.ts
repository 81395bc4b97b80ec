import { departmentCheck, type About } from '../check.ts';
import { hasPlaces } from '../support/reference-pattern.ts';

export const patternWithoutPlaces = departmentCheck({
  id: 'pattern-without-places',
  group: 'department file',
  summary: 'A pattern of references has no place for a digit or a letter.',
  severity: 'error',
  allowable: false,
  run: ({ patterns }, say) => {
    for (const pattern of [patterns?.note, patterns?.patient, patterns?.staff]) {
      if (pattern === undefined || hasPlaces(pattern.value)) continue;
      say({
        at: pattern,
        message: `Patterns: ${pattern.text} has no # for a digit and no A for a letter, so that it fits nothing else.`,
      });
    }
  },
});

export const aboutPatternWithoutPlaces: About = () => ({
  why: 'It would fit one single reference; usually an example was written instead of a pattern.',
  whatToDo: 'Write # for every digit and A for every letter that changes: P-####.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: { base: 'department', note: 'patterns:\n  patient: P-1042' },
  sound: { base: 'department', note: 'patterns:\n  patient: P-####' },
});
