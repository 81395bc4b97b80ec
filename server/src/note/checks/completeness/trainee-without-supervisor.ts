import { operationCheck, type About } from '../check.ts';

const TRAINEES = ['senior trainee', 'junior trainee', 'student'];

export const traineeWithoutSupervisor = operationCheck({
  id: 'trainee-without-supervisor',
  group: 'completeness',
  summary: 'A trainee operated, and no supervisor is named.',
  severity: 'unfinished',
  allowable: true,
  run: ({ team }, say, { status }) => {
    if (status === 'planned') return;
    const members = team?.items ?? [];
    const trainee = members.find(
      ({ role, grade }) => role?.value === 'surgeon' && grade !== undefined && TRAINEES.includes(grade.value),
    );
    if (trainee?.grade === undefined) return;
    if (
      members.some(
        ({ role, grade }) =>
          role === undefined ||
          role.value === 'supervisor' ||
          (role.value === 'assistant' && grade?.value === 'consultant'),
      )
    )
      return;
    say({ at: trainee.grade, message: `Team: the surgeon is a ${trainee.grade.value}, but no supervisor is named.` });
  },
});

export const aboutTraineeWithoutSupervisor: About = () => ({
  why: 'The named senior surgeon answers for the operation, present or not.',
  whatToDo: 'Name the supervisor in the team, also when not scrubbed.',
  source: 'RCS Good Surgical Practice 2014, 1.3 (named senior surgeon)',
  since: '1.0',
  faulty: { note: 'team:\n  - role: surgeon\n    ref: S-07\n    grade: senior trainee' },
  sound: {
    note: 'team:\n  - role: surgeon\n    ref: S-07\n    grade: senior trainee\n  - role: supervisor\n    ref: S-02\n    grade: consultant',
  },
});
