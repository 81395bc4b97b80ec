import { list, section, text, word } from '../fields/field.ts';
import { cataractKinds, comorbidities, difficulties, gradingScales } from '../vocabulary/findings.ts';
import { sides } from '../vocabulary/head.ts';

export const diagnosis = section(
  {
    label: 'Diagnosis',
    meaning: 'What was wrong with the eye before and after the operation.',
    source: '42 CFR 482.51(b)(6)',
  },
  {
    eye: word(sides, {
      label: 'Side of the diagnosis',
      meaning: 'The side written with the diagnosis, when it names one.',
      example: 'left',
    }),
    cataract: list(
      {
        label: 'Cataract',
        meaning: 'The kinds of opacity, pre-operatively.',
        source: '42 CFR 482.51(b)(6)',
        spoken: ['cataract'],
      },
      word(cataractKinds, {
        label: 'Kind of cataract',
        meaning: 'One kind of opacity.',
        example: 'nuclear',
        spoken: ['cataract'],
      }),
    ),
    grade: text({
      label: 'Grade',
      meaning: 'The grade of the opacity, in the notation of the scale.',
      example: 'NO4 NC4 C2 P1',
      spoken: ['grade'],
    }),
    scale: word(gradingScales, {
      label: 'Grading scale',
      meaning: 'The scale in which the grade is written.',
      example: 'LOCS III',
      source: 'Chylack et al., Arch Ophthalmol 1993;111:831-6 (from memory)',
    }),
    'post-operative': list(
      {
        label: 'Post-operative diagnosis',
        meaning: 'The diagnosis after the operation.',
        source: '42 CFR 482.51(b)(6); Joint Commission RC.02.01.03',
      },
      word(cataractKinds, {
        label: 'Post-operative diagnosis',
        meaning: 'One kind of opacity or lens status.',
        example: 'pseudophakia',
      }),
    ),
    text: text({
      label: 'Diagnosis in words',
      meaning: 'What the vocabulary cannot say.',
      example: 'dense posterior plaque',
    }),
  },
);

export const comorbidity = list(
  {
    label: 'Ocular comorbidity',
    meaning: 'Other disease of this eye, or none.',
    source: 'Mahmud et al., JAMA Ophthalmol 2015;133:1247-52; Lundström et al. 2021',
    says: ['none'],
    spoken: ['comorbidity', 'other eye disease'],
  },
  word(comorbidities, { label: 'Comorbidity', meaning: 'One other disease of this eye.', example: 'high myopia' }),
);

export const difficulty = list(
  {
    label: 'Surgical difficulty',
    meaning: 'What makes the operation harder, or none.',
    source: 'Lundström et al., J Cataract Refract Surg 2021;47:373-8; Sim et al., Eye 2024',
    says: ['none'],
    spoken: ['difficulty'],
  },
  word(difficulties, {
    label: 'Difficulty',
    meaning: 'One circumstance that makes the operation harder.',
    example: 'zonular weakness',
  }),
);

export const indication = text({
  label: 'Indication',
  meaning: 'Why the operation is done: what the patient can no longer do.',
  example: 'glare when driving at night, anisometropia after the first eye',
  source: 'RCS Good Surgical Practice 2014, 1.3 (extra)',
  spoken: ['indication'],
});
