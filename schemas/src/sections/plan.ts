import { list, quantity, section, text, value, word } from '../fields/field.ts';
import { yesNo } from '../notation/plain.ts';
import { site } from '../notation/site.ts';
import { vocabulary } from '../notation/words.ts';
import { sides } from '../vocabulary/head.ts';
import { formulas, lengthAdjustments, placements, precautions } from '../vocabulary/outcome.ts';
import { anaesthesiaKinds, seats } from '../vocabulary/theatre.ts';
import { lensIdentity, meridian } from './lens-fields.ts';

const iolStandard = 'IOL quality standard (RCOphth and UKOA 2018)';

const incisionPlan = section(
  { label: 'Planned incision', meaning: 'Where and how wide the main incision is planned.' },
  {
    at: value(site, { label: 'Planned site', meaning: 'Position of the main incision.', example: 'temporal' }),
    width: quantity('mm', {
      label: 'Planned width',
      meaning: 'Width of the main incision.',
      example: '2.2 mm',
      possible: [0.5, 14],
      usual: [1.5, 7],
    }),
    'on-steep-meridian': value(yesNo, {
      label: 'On the steep meridian',
      meaning: 'Whether the incision is meant to lie on the steep corneal meridian.',
      example: 'no',
    }),
  },
);

const step = section(
  { label: 'What-if step', meaning: 'What will be done if something happens.' },
  {
    if: text({ label: 'If', meaning: 'What may happen.', example: 'the zonule is weak at capsulotomy' }),
    then: text({ label: 'Then', meaning: 'What will be done.', example: 'ring before the cortex, low bottle' }),
  },
);

const ringPlans = vocabulary('plan for a ring', [
  ['planned', ['yes']],
  ['ready', ['standby', 'on standby']],
  ['not planned', ['no']],
]);

export const plan = section(
  { label: 'Plan', meaning: 'What was intended before the operation.', source: iolStandard, spoken: ['plan'] },
  {
    eye: word(sides, {
      label: 'Side on the operating list',
      meaning: 'The side written on the operating list.',
      example: 'left',
      source: 'WHO Surgical Safety Checklist 2009',
    }),
    target: quantity('D', {
      label: 'Target refraction',
      meaning: 'The refraction aimed at, spherical equivalent in the spectacle plane.',
      example: '-0.50 D',
      possible: [-12, 6],
      usual: [-4, 1],
      limitsSource: 'common practice, no source',
      source: 'WHO checklist adapted for cataract (NPSA and RCOphth 2010); ICHOM',
      spoken: ['target', 'target refraction', 'aiming for'],
    }),
    formula: list(
      { label: 'Formula', meaning: 'The formula or formulas the lens was chosen with.', source: 'DICOM CID 4236' },
      word(formulas, { label: 'Formula', meaning: 'One published formula.', example: 'Haigis' }),
    ),
    'length-adjustment': word(lengthAdjustments, {
      label: 'Axial length adjustment',
      meaning: 'The adjustment used for a long eye, or none.',
      example: 'none',
      source:
        'Wang et al., J Cataract Refract Surg 2011;37:2018-27; Wang and Koch 2018;44:1396-7; Cooke and Cooke 2019;45:320-4',
    }),
    predicted: quantity('D', {
      label: 'Predicted refraction',
      meaning: 'The refraction that the biometer predicted for the planned lens.',
      example: '-0.42 D',
      possible: [-15, 10],
      source: 'DICOM (0022,1054)',
      spoken: ['predicted refraction'],
    }),
    'predicted-by': word(formulas, {
      label: 'Prediction by',
      meaning: 'The formula of the recorded prediction.',
      example: 'Haigis',
    }),
    lens: section(
      { label: 'Planned lens', meaning: 'The lens chosen: maker, model and power.', source: iolStandard },
      { ...lensIdentity, axis: meridian('Planned axis', 'Axis at which the toric marks are meant to lie.') },
    ),
    'spare-lens': section(
      { label: 'Spare lens', meaning: 'The lens ready if the bag cannot hold the planned one.', says: ['none'] },
      {
        ...lensIdentity,
        placed: word(placements, { label: 'Placement', meaning: 'Where the spare lens would go.', example: 'sulcus' }),
      },
    ),
    incision: incisionPlan,
    anaesthesia: list(
      { label: 'Planned anaesthesia', meaning: 'The anaesthesia planned.' },
      word(anaesthesiaKinds, { label: 'Anaesthesia', meaning: 'One kind of anaesthesia.', example: 'sub-Tenon' }),
    ),
    seat: word(seats, { label: 'Planned seat', meaning: 'Where the surgeon will sit.', example: 'temporal' }),
    ring: word(ringPlans, {
      label: 'Tension ring',
      meaning: 'Whether a tension ring is planned or ready.',
      example: 'ready',
    }),
    precautions: list(
      { label: 'Precautions', meaning: 'Precautions taken for this eye.', says: ['none'], spoken: ['precautions'] },
      word(precautions, { label: 'Precaution', meaning: 'One precaution.', example: 'reverse pupillary block' }),
    ),
    'what-if': list(
      { label: 'What-if steps', meaning: 'What will be done if something happens.', says: ['none'] },
      step,
    ),
    text: text({ label: 'Plan in words', meaning: 'What the fields cannot say.' }),
  },
);
