import { departmentCheck, type About } from '../check.ts';
import { missingIn } from '../support/missing-fields.ts';
import { headOf } from '../support/place.ts';
import { listed } from '../support/words.ts';

export const staffEntryIncomplete = departmentCheck({
  id: 'staff-entry-incomplete',
  group: 'department file',
  summary: 'A listed person has no reference or role, or it is not said whether a surgeon may sign.',
  severity: 'warning',
  allowable: true,
  run: ({ staff }, say, context) => {
    for (const person of staff?.items ?? []) {
      const missing = [
        ...missingIn(
          person,
          [
            ['ref', 'a reference'],
            ['role', 'a role'],
          ] as const,
          context,
        ),
        ...(person.role?.value === 'surgeon'
          ? missingIn(person, [['may-sign', 'the answer whether this surgeon may sign']] as const, context)
          : []),
      ];
      if (missing.length > 0)
        say({
          at: person.ref ?? headOf(person.$, context),
          message: `Staff: ${person.ref?.text ?? 'an entry'} lacks ${listed(missing)}.`,
        });
    }
  },
});

export const aboutStaffEntryIncomplete: About = () => ({
  why: 'Signatures and grades of every note are held against this list.',
  whatToDo: 'Fill in what the message names.',
  source: 'RCS Good Surgical Practice 2014, 1.3 (signature; named senior surgeon)',
  since: '1.0',
  faulty: { base: 'department', note: 'staff:\n  - ref: S-02\n    role: surgeon\n    grade: consultant' },
  sound: {
    base: 'department',
    note: 'staff:\n  - ref: S-02\n    role: surgeon\n    grade: consultant\n    may-sign: yes',
  },
});
