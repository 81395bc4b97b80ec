import type { Field, Operation } from '@sideport/schemas';
import { operationCheck, type About } from '../check.ts';
import { inDepartment } from '../support/place.ts';

export const personNotInStaffList = operationCheck({
  id: 'person-not-in-staff-list',
  group: 'agreement',
  summary: 'A staff reference is not in the department’s list.',
  severity: 'warning',
  allowable: true,
  run: (note, say, context) => {
    const { department } = context;
    const staff = department?.staff;
    if (staff === undefined || staff.items.length === 0) return;
    const told = new Set<string>();
    for (const person of peopleOf(note)) {
      if (told.has(person.value) || staff.items.some(({ ref }) => ref?.value === person.value)) continue;
      told.add(person.value);
      say({
        at: person,
        message: `Staff: ${person.text} is not in the list of the department.`,
        related: inDepartment('the list of staff', staff.$, context),
      });
    }
  },
});

export const aboutPersonNotInStaffList: About = () => ({
  why: 'A mistyped reference gives the operation, or the signature, to nobody or to somebody else.',
  whatToDo: 'Correct the reference, or add the person to the list.',
  source: 'RCS Good Surgical Practice 2014, 1.3 (names of the operating team)',
  since: '1.0',
  faulty: { note: 'anaesthesia:\n  given-by: S-20', files: { 'sideport.yaml': '' } },
  sound: { note: 'anaesthesia:\n  given-by: S-02', files: { 'sideport.yaml': '' } },
});

function peopleOf({ team, safety, anaesthesia, signed }: Operation): Field<string>[] {
  const people: Field<string>[] = [];
  const put = (...fields: readonly (Field<string> | undefined)[]) => {
    for (const field of fields) if (field !== undefined) people.push(field);
  };
  for (const { ref } of team?.items ?? []) put(ref);
  put(safety?.['sign-in']?.by, safety?.['time-out']?.by, safety?.['sign-out']?.by);
  put(...(safety?.['lens-verified']?.by?.items ?? []));
  put(anaesthesia?.['given-by'], anaesthesia?.anaesthetist);
  for (const { by } of signed?.items ?? []) put(by);
  return people;
}
