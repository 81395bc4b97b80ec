import { nearest } from '@sideport/schemas';
import { replacing } from '../support/fixes.ts';
import { departmentCheck, type About } from '../check.ts';

export const settingOfUnknownCheck = departmentCheck({
  id: 'setting-of-unknown-check',
  group: 'department file',
  summary: 'A severity is set for a check that does not exist.',
  severity: 'error',
  allowable: false,
  run: ({ checks }, say, { reading, knownChecks }) => {
    const ids = knownChecks.map(({ id }) => id);
    for (const { check } of checks?.items ?? []) {
      if (check === undefined || ids.includes(check.value)) continue;
      const near = nearest(check.value, ids);
      say({
        at: check,
        fixes: near === undefined ? [] : [replacing(reading, check.span, near)],
        message: `Checks: there is no check “${check.text}”.${near === undefined ? '' : ` Is “${near}” meant?`}`,
      });
    }
  },
});

export const aboutSettingOfUnknownCheck: About = () => ({
  why: 'The setting changes nothing, and the department believes that it does.',
  whatToDo: 'Correct the name; “sideport explain” lists all checks.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: {
    base: 'department',
    note: 'checks:\n  - check: unusal-value\n    severity: info\n    because: our biometer flags them',
  },
  sound: {
    base: 'department',
    note: 'checks:\n  - check: unusual-value\n    severity: info\n    because: our biometer flags them',
  },
});
