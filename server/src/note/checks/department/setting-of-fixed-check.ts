import { departmentCheck, type About } from '../check.ts';

export const settingOfFixedCheck = departmentCheck({
  id: 'setting-of-fixed-check',
  group: 'department file',
  summary: 'A severity is set for a check that no department may change.',
  severity: 'error',
  allowable: false,
  run: ({ checks }, say, { knownChecks }) => {
    for (const { check } of checks?.items ?? []) {
      if (check === undefined || knownChecks.find(({ id }) => id === check.value)?.allowable !== false) continue;
      say({
        at: check,
        message: `Checks: “${check.text}” cannot be changed: it guards side, identity, the lens, or the reading of the note. The setting has no effect.`,
      });
    }
  },
});

export const aboutSettingOfFixedCheck: About = () => ({
  why: 'Side, identity and the lens are guarded everywhere alike; the setting has no effect.',
  whatToDo: 'Delete the setting.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: {
    base: 'department',
    note: 'checks:\n  - check: consent-for-other-eye\n    severity: info\n    because: our forms are late',
  },
  sound: {
    base: 'department',
    note: 'checks:\n  - check: signed-late\n    severity: info\n    because: our forms are late',
  },
});
