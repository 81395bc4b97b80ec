import { departmentCheck, type About } from '../check.ts';
import { addingField } from '../support/fixes.ts';
import { placeOfMissing } from '../support/place.ts';
import { isWritten } from '../support/written.ts';

export const departmentVersionMissing = departmentCheck({
  id: 'department-version-missing',
  group: 'department file',
  summary: 'The department file does not say which version of the format it has.',
  severity: 'warning',
  allowable: false,
  run: ({ sideport }, say, context) => {
    if (sideport !== undefined || isWritten(context.reading, ['sideport'])) return;
    say({
      at: placeOfMissing(context),
      message: 'The department file does not say its version. Write “sideport: 1” in its first line.',
      fixes: addingField(context.reading, 'sideport', '1'),
    });
  },
});

export const aboutDepartmentVersionMissing: About = () => ({
  why: 'A later version may read a field differently.',
  whatToDo: 'Write “sideport: 1” in its first line.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: { base: 'department', note: 'without: sideport' },
  sound: { base: 'department', note: 'sideport: 1' },
});
