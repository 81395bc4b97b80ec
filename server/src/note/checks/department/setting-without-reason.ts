import { departmentCheck, type About } from '../check.ts';

export const settingWithoutReason = departmentCheck({
  id: 'setting-without-reason',
  group: 'department file',
  summary: 'A check is lowered or turned off without a reason.',
  severity: 'warning',
  allowable: true,
  run: ({ checks }, say) => {
    for (const { check, severity, because } of checks?.items ?? []) {
      if (check === undefined || severity === undefined || because !== undefined || severity.value === 'error')
        continue;
      say({
        at: severity,
        message: `Checks: “${check.text}” is set to “${severity.text}” without a reason (“because”).`,
      });
    }
  },
});

export const aboutSettingWithoutReason: About = () => ({
  why: 'Whoever keeps the register must see why the department does not want to be told.',
  whatToDo: 'Say why in “because”.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: { base: 'department', note: 'checks:\n  - check: signed-late\n    severity: off' },
  sound: {
    base: 'department',
    note: 'checks:\n  - check: signed-late\n    severity: off\n    because: notes are signed in another system',
  },
});
