import { id, list, section, text, value, word } from '../fields/field.ts';
import { yesNo } from '../notation/plain.ts';
import { calendarYear } from '../notation/time.ts';
import { vocabulary } from '../notation/words.ts';
import { grades, sexes, staffRoles } from '../vocabulary/head.ts';

const alphaBlockers = vocabulary('answer', [
  ['never', ['no', 'none']],
  ['now', ['yes', 'current', 'taking']],
  ['in the past', ['past', 'stopped', 'previously']],
]);

export const patient = section(
  {
    label: 'Patient',
    meaning: 'Who was operated, by a local reference: no name, no full date of birth.',
    source: '42 CFR 482.24(c)',
  },
  {
    ref: id({
      label: 'Patient reference',
      meaning: 'The local pseudonym of the patient.',
      example: 'P-3107',
      source: 'RCS Good Surgical Practice 2014',
    }),
    born: value(calendarYear, {
      label: 'Year of birth',
      meaning: 'The year of birth only, so that the age at operation can be computed.',
      example: '1979',
      source: 'Lundström et al., J Cataract Refract Surg 2021;47:373-8',
      spoken: ['born in', 'year of birth'],
    }),
    sex: word(sexes, {
      label: 'Sex',
      meaning: 'As recorded by the clinic.',
      example: 'male',
      source: 'Lundström et al., J Cataract Refract Surg 2021;47:373-8',
    }),
    allergies: list(
      {
        label: 'Allergies',
        meaning: 'Known allergies, or none.',
        source: 'WHO Surgical Safety Checklist 2009, sign in',
        says: ['none'],
        spoken: ['allergies', 'allergic to'],
      },
      text({ label: 'Allergy', meaning: 'One known allergy.', example: 'penicillin' }),
    ),
    anticoagulant: text({
      label: 'Anticoagulant',
      meaning: 'Anticoagulant or antiplatelet drug taken, or none.',
      example: 'apixaban',
      source: 'common practice, no source',
      says: ['none'],
      spoken: ['anticoagulant', 'blood thinner'],
    }),
    'alpha-blocker': word(alphaBlockers, {
      label: 'Alpha-blocker',
      meaning: 'Whether an alpha-1 blocker is or was taken: the iris may be floppy even years later.',
      example: 'never',
      source: 'common practice, no source',
      spoken: ['alpha blocker'],
    }),
    'lies-flat': value(yesNo, {
      label: 'Lies flat',
      meaning: 'Whether the patient can lie flat for the operation.',
      example: 'yes',
      source: 'Sim et al., Eye 2024 (risk factor)',
    }),
  },
);

export const team = list(
  {
    label: 'Team',
    meaning: 'Who took part, in which role and grade, and who did which step.',
    source: 'RCS Good Surgical Practice 2014, 1.3; Joint Commission RC.02.01.03',
    spoken: ['team'],
  },
  section(
    { label: 'Team member', meaning: 'One person, by the local staff reference.' },
    {
      role: word(staffRoles, {
        label: 'Role',
        meaning: 'What the person did in the operation.',
        example: 'surgeon',
        spoken: ['role'],
      }),
      ref: id({ label: 'Staff reference', meaning: 'The local reference of the person; no name.', example: 'S-02' }),
      grade: word(grades, {
        label: 'Grade',
        meaning: 'The grade at the time of the operation.',
        example: 'consultant',
        source: 'Cataract National Data Set (UK); Sim et al., Eye 2024',
        spoken: ['grade'],
      }),
      tasks: list(
        { label: 'Tasks', meaning: 'Which steps the person did, when not all.', says: ['none'] },
        text({ label: 'Task', meaning: 'One step of the operation.', example: 'capsulotomy' }),
      ),
    },
  ),
);
