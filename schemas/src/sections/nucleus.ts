import { list, quantity, section, text, value, word } from '../fields/field.ts';
import { yesNo } from '../notation/plain.ts';
import { cortexMethods, nucleusTechniques, phacoSteps, ultrasoundModes } from '../vocabulary/theatre.ts';

const practice = 'common practice, no source';

/** The machine's settings in one step; infusion is a bottle height or a set pressure, whichever the machine has. */
export const machineSettings = {
  'bottle-height': quantity('cm', {
    label: 'Bottle height',
    meaning: 'Height of the bottle above the eye.',
    example: '70 cm',
    possible: [5, 160],
    usual: [20, 140],
    limitsSource: practice,
    spoken: ['bottle height', 'bottle'],
  }),
  'set-pressure': quantity('mmHg', {
    label: 'Set infusion pressure',
    meaning: 'The pressure set on a machine that controls pressure.',
    example: '45 mmHg',
    possible: [5, 130],
    usual: [20, 110],
    limitsSource: practice,
    spoken: ['infusion pressure', 'target pressure'],
  }),
  vacuum: quantity('mmHg', {
    label: 'Vacuum',
    meaning: 'Vacuum limit.',
    example: '380 mmHg',
    possible: [0, 750],
    usual: [0, 700],
    limitsSource: practice,
    spoken: ['vacuum'],
  }),
  flow: quantity('mL/min', {
    label: 'Aspiration flow',
    meaning: 'Flow rate.',
    example: '32 mL/min',
    possible: [0, 100],
    usual: [5, 60],
    limitsSource: practice,
    spoken: ['flow', 'aspiration rate'],
  }),
};

export const nucleus = section(
  {
    label: 'Nucleus removal',
    meaning: 'How the nucleus was removed, step by step, with the machine settings.',
    says: ['not done'],
    source: 'RCS Good Surgical Practice 2014, 1.3 (procedure carried out)',
    spoken: ['nucleus'],
  },
  {
    technique: word(nucleusTechniques, {
      label: 'Technique',
      meaning: 'How the nucleus was divided or delivered.',
      example: 'stop and chop',
    }),
    steps: list(
      { label: 'Steps', meaning: 'The steps with their machine settings.' },
      section(
        { label: 'Step', meaning: 'One step.' },
        {
          step: word(phacoSteps, { label: 'Step', meaning: 'Which step.', example: 'sculpt' }),
          ...machineSettings,
          'ultrasound-mode': word(ultrasoundModes, {
            label: 'Ultrasound mode',
            meaning: 'How the ultrasound was delivered.',
            example: 'burst',
          }),
          power: quantity('%', {
            label: 'Ultrasound power',
            meaning: 'Power limit.',
            example: '60 %',
            possible: [0, 100],
            limitsSource: practice,
            spoken: ['power'],
          }),
        },
      ),
    ),
    'ultrasound-time': quantity('s', {
      label: 'Ultrasound time',
      meaning: 'Ultrasound time; of longitudinal ultrasound where a torsional time is written beside it.',
      example: '48 s',
      possible: [0, 1200],
      usual: [0, 300],
      limitsSource: practice,
      spoken: ['ultrasound time', 'phaco time'],
    }),
    'mean-power': quantity('%', {
      label: 'Mean power',
      meaning: 'Mean power over the ultrasound time.',
      example: '20 %',
      possible: [0, 100],
      limitsSource: practice,
      spoken: ['mean power', 'average power'],
    }),
    'torsional-time': quantity('s', {
      label: 'Torsional time',
      meaning: 'Time of torsional ultrasound.',
      example: '45 s',
      possible: [0, 1200],
    }),
    'torsional-power': quantity('%', {
      label: 'Torsional amplitude',
      meaning: 'Mean torsional amplitude.',
      example: '60 %',
      possible: [0, 100],
    }),
    'dissipated-energy': quantity('', {
      label: 'Dissipated energy as shown by the machine',
      meaning: 'The figure on the machine; it is bound to the machine and no physical unit.',
      example: '7.42',
      possible: [0, 500],
      usual: [0, 80],
      limitsSource: practice,
      spoken: ['cumulative dissipated energy', 'c d e'],
    }),
    'fluid-used': quantity('mL', {
      label: 'Fluid used',
      meaning: 'Infusion fluid used.',
      example: '70 mL',
      possible: [0, 2000],
    }),
    text: text({ label: 'Nucleus in words', meaning: 'What the fields cannot say.' }),
  },
);

export const cortex = section(
  {
    label: 'Cortex removal',
    meaning: 'How the cortex was removed.',
    says: ['not done'],
    source: practice,
    spoken: ['cortex', 'irrigation and aspiration'],
  },
  {
    method: word(cortexMethods, { label: 'Method', meaning: 'Coaxial, bimanual or manual.', example: 'bimanual' }),
    ...machineSettings,
    complete: value(yesNo, { label: 'Complete', meaning: 'Whether all cortex was removed.', example: 'yes' }),
    'polished-anterior': value(yesNo, {
      label: 'Anterior capsule polished',
      meaning: 'Whether the anterior capsule was polished.',
      example: 'no',
    }),
    'polished-posterior': value(yesNo, {
      label: 'Posterior capsule polished',
      meaning: 'Whether the posterior capsule was polished.',
      example: 'yes',
    }),
  },
);
