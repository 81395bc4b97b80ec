import type { ReportedNote, ReportedRemark, ReportOptions } from '../../server/src/note/reports/report-input.ts';

/** A remark on one line, with what a test does not care about filled in. */
export function remark(over: Partial<ReportedRemark> = {}): ReportedRemark {
  return {
    check: 'implanted-power-differs-from-plan',
    severity: 'error',
    message: 'The lens implanted has +4.0 D, the plan says +3.0 D (line 40). Correct the one that is wrong.',
    path: ['lens', 'power'],
    range: { start: { line: 81, column: 10 }, end: { line: 81, column: 16 } },
    related: [
      { message: 'The planned power', range: { start: { line: 40, column: 10 }, end: { line: 40, column: 16 } } },
    ],
    ...over,
  };
}

/** Invented notes whose names and words need every kind of escaping. */
export const EXAMPLE: readonly ReportedNote[] = [
  {
    file: 'notes/long eye, 50 % off.opnote.yaml',
    id: 'OP-0002',
    remarks: [
      remark({
        check: 'operated-eye-differs-from-plan',
        message: 'Say "right" & left <once>:\r\nthe plan, says 100 % left.\u0007',
        path: ['eye'],
        range: { start: { line: 3, column: 6 }, end: { line: 4, column: 2 } },
      }),
      remark({ severity: 'info', check: 'unit-written-out', message: 'Write mm.', related: [] }),
    ],
  },
  {
    file: 'notes/a.opnote.yaml',
    id: 'OP-0001',
    remarks: [
      remark(),
      remark(),
      remark({
        severity: 'warning',
        check: 'identifier-in-text',
        message: 'This looks like a health number: 943 476 5919.',
        path: ['free-text'],
        related: [{ message: 'Mrs Elm', file: 'notes/b.opnote.yaml', range: remark().range }],
      }),
    ],
  },
  { file: 'notes/silent.opnote.yaml', id: null, remarks: [] },
];

export const OPTIONS: ReportOptions = {
  version: '1.0.0',
  failOn: 'error',
  checks: [
    {
      id: 'operated-eye-differs-from-plan',
      summary: 'The operated eye is not the planned eye.',
      why: 'Surgery on the wrong eye is the gravest mistake a note can show.',
      advice: 'Compare with the consent form.',
      gravest: true,
    },
    { id: 'implanted-power-differs-from-plan', summary: 'The power implanted is not the power planned.' },
  ],
};
