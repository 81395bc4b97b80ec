import { list, quantity, section, text, value, word } from '../fields/field.ts';
import { count, yesNo } from '../notation/plain.ts';
import { offset } from '../notation/offset.ts';
import {
  capsulotomyOutcomes,
  capsulotomyTechniques,
  dyes,
  ovdAgents,
  ovdKinds,
  pupilAids,
} from '../vocabulary/theatre.ts';

const practice = 'common practice, no source';

export const ovd = list(
  {
    label: 'Viscoelastics',
    meaning: 'Viscoelastics used, or none.',
    source: practice,
    says: ['none'],
    spoken: ['viscoelastic', 'ovd'],
  },
  section(
    { label: 'Viscoelastic', meaning: 'One viscoelastic.' },
    {
      kind: word(ovdKinds, { label: 'Kind', meaning: 'How it behaves.', example: 'cohesive' }),
      agent: word(ovdAgents, { label: 'Agent', meaning: 'What it is made of.', example: 'sodium hyaluronate' }),
      strength: quantity('%', {
        label: 'Strength',
        meaning: 'Strength of the agent.',
        example: '1.4 %',
        possible: [0.1, 10],
      }),
      purpose: text({ label: 'Purpose', meaning: 'For which step.', example: 'capsulotomy' }),
    },
  ),
);

export const dye = word(dyes, {
  label: 'Dye',
  meaning: 'Dye used to see the capsule, or none.',
  example: 'trypan blue',
  source: practice,
  says: ['none'],
  spoken: ['dye', 'stain'],
});

export const pupilAid = list(
  {
    label: 'Pupil aids',
    meaning: 'What was done for a small pupil, or none.',
    source: 'RCS Good Surgical Practice 2014, 1.3 (extra procedure and the reason)',
    says: ['none'],
    spoken: ['pupil aid'],
  },
  section(
    { label: 'Pupil aid', meaning: 'One aid.' },
    {
      kind: word(pupilAids, { label: 'Kind', meaning: 'What was used.', example: 'iris hooks' }),
      count: value(count, { label: 'Number', meaning: 'How many.', example: '4' }),
      reason: text({ label: 'Reason', meaning: 'Why it was needed.', example: 'pupil 4 mm' }),
    },
  ),
);

export const capsulotomy = section(
  {
    label: 'Capsulotomy',
    meaning: 'The opening of the anterior capsule.',
    says: ['not done'],
    source: practice,
    spoken: ['capsulotomy', 'capsulorhexis', 'rhexis'],
  },
  {
    technique: word(capsulotomyTechniques, {
      label: 'Technique',
      meaning: 'How it was made.',
      example: 'continuous curvilinear',
    }),
    aimed: quantity('mm', {
      label: 'Diameter aimed at',
      meaning: 'The diameter intended.',
      example: '5.0 mm',
      possible: [1, 10],
      usual: [4, 6.5],
      limitsSource: practice,
    }),
    diameter: quantity('mm', {
      label: 'Diameter',
      meaning: 'The diameter achieved.',
      example: '5.1 mm',
      possible: [1, 10],
      usual: [4, 6.5],
      limitsSource: practice,
      spoken: ['diameter'],
    }),
    'off-centre': value(offset, {
      label: 'Off-centre',
      meaning: 'How far its centre lies from the centre of the optic, and toward which place.',
      example: "0.3 mm toward 3 o'clock",
    }),
    'corneal-marker': quantity('mm', {
      label: 'Corneal marker',
      meaning: 'Diameter of the ring mark on the cornea used as a guide.',
      example: '6.0 mm',
      possible: [2, 10],
      usual: [5, 7],
      limitsSource: practice,
      says: ['none'],
    }),
    outcome: word(capsulotomyOutcomes, { label: 'Outcome', meaning: 'Whether it was completed.', example: 'complete' }),
    text: text({ label: 'Capsulotomy in words', meaning: 'What the fields cannot say.' }),
  },
);

export const hydrodissection = section(
  {
    label: 'Hydrodissection',
    meaning: 'Freeing the nucleus with fluid.',
    says: ['not done'],
    source: practice,
    spoken: ['hydrodissection'],
  },
  {
    cortex: value(yesNo, { label: 'Cortical cleaving', meaning: 'Hydrodissection under the capsule.', example: 'yes' }),
    delineation: value(yesNo, {
      label: 'Hydrodelineation',
      meaning: 'Fluid between nucleus and epinucleus.',
      example: 'no',
    }),
    rotation: value(yesNo, { label: 'Nucleus turned freely', meaning: 'Whether the nucleus rotated.', example: 'yes' }),
  },
);
