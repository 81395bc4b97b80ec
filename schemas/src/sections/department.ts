import { id, list, quantity, section, text, value, word } from '../fields/field.ts';
import { due } from '../notation/interval.ts';
import { count, pieces, yesNo } from '../notation/plain.ts';
import { site } from '../notation/site.ts';
import { calendarDate } from '../notation/time.ts';
import { vocabulary } from '../notation/words.ts';
import { grades, sides, staffRoles } from '../vocabulary/head.ts';
import { formulas, lensKinds, lensMaterials, lengthAdjustments, placements } from '../vocabulary/outcome.ts';
import { seats } from '../vocabulary/theatre.ts';
import { machineSettings } from './nucleus.ts';

const number = (label: string, meaning: string, example: string) =>
  quantity('', { label, meaning, example, possible: [-100, 200] });

const constants = {
  a: number('A constant', 'A constant of SRK/T and T2.', '118.9'),
  sf: number('Surgeon factor', 'Constant of Holladay 1.', '1.75'),
  pacd: number('pACD', 'Constant of Hoffer Q.', '5.55'),
  a0: number('a0', 'First constant of Haigis.', '1.10'),
  a1: number('a1', 'Second constant of Haigis.', '0.4'),
  a2: number('a2', 'Third constant of Haigis.', '0.1'),
};

export const lensList = list(
  { label: 'Lenses', meaning: 'The lenses this department implants, with their constants.', says: ['none'] },
  section(
    { label: 'Lens', meaning: 'One model.' },
    {
      maker: id({ label: 'Maker', meaning: 'The maker as on the box.', example: 'Halden Optics' }),
      model: id({ label: 'Model', meaning: 'The model as on the box.', example: 'HX-1' }),
      kind: word(lensKinds, { label: 'Kind', meaning: 'Monofocal, toric, …', example: 'monofocal' }),
      pieces: value(pieces, { label: 'Pieces', meaning: 'One-piece or three-piece.', example: '1' }),
      material: word(lensMaterials, {
        label: 'Material',
        meaning: 'Material of the optic.',
        example: 'hydrophobic acrylic',
      }),
      'optic-diameter': quantity('mm', {
        label: 'Optic diameter',
        meaning: 'Diameter of the optic.',
        example: '6.0 mm',
        possible: [4, 8],
      }),
      'overall-diameter': quantity('mm', {
        label: 'Overall diameter',
        meaning: 'From haptic to haptic.',
        example: '13.0 mm',
        possible: [7, 16],
      }),
      placements: list(
        { label: 'Placements', meaning: 'Where this model may be placed.' },
        word(placements, { label: 'Placement', meaning: 'One placement.', example: 'capsular bag' }),
      ),
      'device-identifier': id({
        label: 'Device identifier',
        meaning: 'The part of the barcode that names the model (a GTIN or a HIBC primary).',
        example: '09521234543213',
      }),
      powers: section(
        { label: 'Powers', meaning: 'Powers in stock.' },
        {
          from: quantity('D', { label: 'From', meaning: 'Lowest power.', example: '-10.0 D', possible: [-25, 50] }),
          to: quantity('D', { label: 'To', meaning: 'Highest power.', example: '+30.0 D', possible: [-25, 50] }),
          step: quantity('D', { label: 'Step', meaning: 'Step between powers.', example: '0.5 D', possible: [0.1, 2] }),
        },
      ),
      constants: section(
        { label: 'Constants', meaning: 'Constants for plus powers; the user’s responsibility.' },
        constants,
      ),
      'minus-constants': section(
        {
          label: 'Constants for minus powers',
          meaning: 'Separate constants for minus powers.',
          source: 'Haigis, J Cataract Refract Surg 2009;35:906-11',
        },
        constants,
      ),
    },
  ),
);

const incisionEffect = list(
  { label: 'Incision effect', meaning: 'The surgeon’s own centroid of flattening at the incision, by width and site.' },
  section(
    { label: 'Effect', meaning: 'One width and site.' },
    {
      width: quantity('mm', {
        label: 'Width',
        meaning: 'Width of the incision.',
        example: '2.2 mm',
        possible: [0.3, 14],
      }),
      site: value(site, { label: 'Site', meaning: 'Where the incision lies.', example: 'temporal' }),
      eye: word(sides, {
        label: 'Eye',
        meaning: 'Which eye, when the effect was found for one eye only.',
        example: 'right',
      }),
      flattening: quantity('D', {
        label: 'Flattening',
        meaning: 'Centroid of the flattening along the meridian of the incision.',
        example: '0.20 D',
        possible: [-2, 5],
      }),
      eyes: value(count, { label: 'Eyes', meaning: 'On how many eyes it rests.', example: '84' }),
      since: value(calendarDate, {
        label: 'Since',
        meaning: 'From which date the eyes were counted.',
        example: '2029-01-01',
      }),
    },
  ),
);

const staff = list(
  { label: 'Staff', meaning: 'Who works here, by reference.' },
  section(
    { label: 'Staff member', meaning: 'One person.' },
    {
      ref: id({ label: 'Reference', meaning: 'The local reference.', example: 'S-02' }),
      role: word(staffRoles, { label: 'Role', meaning: 'Usual role.', example: 'surgeon' }),
      grade: word(grades, { label: 'Grade', meaning: 'Present grade.', example: 'consultant' }),
      'may-sign': value(yesNo, { label: 'May sign', meaning: 'Whether the person may sign notes.', example: 'yes' }),
      seat: word(seats, { label: 'Usual seat', meaning: 'Where the surgeon usually sits.', example: 'temporal' }),
      'incision-effect': incisionEffect,
      settings: section({ label: 'Usual settings', meaning: 'The surgeon’s usual machine settings.' }, machineSettings),
    },
  ),
);

const severities = vocabulary('severity', ['error', 'warning', 'info', 'off']);

const checkSettings = list(
  {
    label: 'Checks',
    meaning:
      'Severities raised or lowered in this department. Checks of side, identity and wrong lens cannot be changed.',
  },
  section(
    { label: 'Check', meaning: 'One check.' },
    {
      check: id({ label: 'Check', meaning: 'The id of the check.', example: 'unusual-value' }),
      severity: word(severities, { label: 'Severity', meaning: 'error, warning, info or off.', example: 'warning' }),
      because: text({ label: 'Because', meaning: 'Why.', example: 'our theatre records times in another system' }),
    },
  ),
);

const reviewSchedule = list(
  { label: 'Review schedule', meaning: 'The reviews this department plans after every operation.' },
  section(
    { label: 'Review', meaning: 'One review.' },
    {
      what: text({ label: 'What', meaning: 'What is looked at.', example: 'dilated peripheral retina' }),
      due: value(due, { label: 'Due', meaning: 'When, after the operation.', example: '4 weeks' }),
      when: word(
        vocabulary('case', [
          ['always', ['every eye']],
          ['long eye', []],
          ['complication', []],
          ['suture', []],
        ]),
        { label: 'When', meaning: 'For which eyes.', example: 'long eye' },
      ),
    },
  ),
);

export const departmentFields = {
  sideport: word(vocabulary('format version', ['1']), {
    label: 'Format version',
    meaning: 'The version of the department file.',
    example: '1',
  }),
  department: text({
    label: 'Department',
    meaning: 'What the department calls itself.',
    example: 'Eye unit, invented hospital',
  }),
  'code-system': word(vocabulary('code selection', ['icd10cm', 'icd10-opcs4']), {
    label: 'Code systems',
    meaning: 'Which codes are suggested.',
    example: 'icd10-opcs4',
  }),
  'keratometric-index': quantity('', {
    label: 'Keratometric index',
    meaning: 'Index of the keratometers here.',
    example: '1.3375',
    possible: [1.3, 1.4],
  }),
  'vertex-distance': quantity('mm', {
    label: 'Vertex distance',
    meaning: 'Vertex distance of refractions here.',
    example: '12 mm',
    possible: [5, 25],
  }),
  formulas: list(
    { label: 'Formulas', meaning: 'Preferred formulas, in order.' },
    word(formulas, { label: 'Formula', meaning: 'One formula.', example: 'Haigis' }),
  ),
  'length-adjustment': word(lengthAdjustments, {
    label: 'Axial length adjustment',
    meaning: 'Adjustment shown for long eyes.',
    example: 'Wang-Koch 2018',
  }),
  staff,
  lenses: lensList,
  'review-schedule': reviewSchedule,
  thresholds: section(
    { label: 'Thresholds', meaning: 'Limits this department uses.' },
    {
      'biometry-age': value(due, {
        label: 'Age of biometry',
        meaning: 'How old a biometry may be.',
        example: '12 months',
      }),
      'long-eye': quantity('mm', {
        label: 'Long eye',
        meaning: 'Axial length from which an eye counts as long.',
        example: '26 mm',
        possible: [24, 30],
      }),
      'steep-meridian-tolerance': quantity('°', {
        label: 'Steep meridian tolerance',
        meaning: 'How far an incision may lie from the steep meridian and still count as on it.',
        example: '10°',
        possible: [0, 45],
      }),
      'lens-length-difference': quantity('mm', {
        label: 'Difference between eyes',
        meaning: 'Difference in axial length that asks for a second measurement.',
        example: '0.3 mm',
        possible: [0, 5],
      }),
    },
  ),
  checks: checkSettings,
  'also-required': list(
    { label: 'Also required', meaning: 'Fields that a final note must have here, besides the usual.' },
    id({ label: 'Field', meaning: 'Path of the field.', example: 'preop.endothelial-count' }),
  ),
  patterns: section(
    { label: 'Patterns', meaning: 'How references are written here, with # for a digit and A for a letter.' },
    {
      note: id({ label: 'Note id', meaning: 'Pattern of note ids.', example: 'OP-####-####' }),
      patient: id({ label: 'Patient reference', meaning: 'Pattern of patient references.', example: 'P-####' }),
      staff: id({ label: 'Staff reference', meaning: 'Pattern of staff references.', example: 'A-##' }),
    },
  ),
};
