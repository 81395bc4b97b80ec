import { id, list, quantity, section, text, value, word } from '../fields/field.ts';
import { offset } from '../notation/offset.ts';
import { yesNo } from '../notation/plain.ts';
import { refraction } from '../notation/refraction.ts';
import { calendarDate } from '../notation/time.ts';
import { vocabulary } from '../notation/words.ts';
import { keratometryMethods, peripheryFindings } from '../vocabulary/findings.ts';
import { complicationKinds, leakTests, placements } from '../vocabulary/outcome.ts';
import { meridian } from './lens-fields.ts';
import { acuities, keratometryFields } from './preop.ts';

const visits = vocabulary('visit', [
  ['day of the operation', ['same day', 'day 0', 'd0']],
  ['day 1', ['1 day', 'one day', 'first day', 'next day', 'd1']],
  ['day 2', ['2 days', 'two days', 'd2']],
  ['week 1', ['1 week', 'one week', 'first week', '1 wk']],
  ['week 2', ['2 weeks', 'two weeks', '2 wks']],
  ['month 1', ['1 month', 'one month', 'first month', 'week 4', '4 weeks', 'four weeks', '4 wks']],
  ['week 6', ['6 weeks', 'six weeks', '6 wks']],
  ['month 2', ['2 months', 'two months', 'week 8', '8 weeks', '8 wks']],
  ['month 3', ['3 months', 'three months']],
  ['month 6', ['6 months', 'six months']],
  ['year 1', ['1 year', 'one year', 'first year', 'month 12', '12 months']],
  ['later', []],
  ['unplanned', ['emergency visit']],
]);

export const visitFields = {
  operation: id({
    label: 'Operation',
    meaning: 'The id of the operation this visit follows.',
    example: 'OP-2031-0417',
  }),
  date: value(calendarDate, { label: 'Date of the visit', meaning: 'The day of the visit.', example: '2031-04-11' }),
  visit: word(visits, { label: 'Visit', meaning: 'Which visit it is.', example: 'month 1' }),
  by: id({ label: 'Seen by', meaning: 'Staff reference of the examiner.', example: 'S-02' }),
};

export const examination = {
  acuity: acuities,
  refraction: value(refraction, {
    label: 'Refraction',
    meaning: 'Spectacle refraction achieved.',
    example: '-0.50 / -0.75 x 100',
    source: 'ICHOM Cataracts Data Collection; DICOM (0046,0146)',
  }),
  'vertex-distance': quantity('mm', {
    label: 'Vertex distance',
    meaning: 'From the glasses to the cornea; 12 mm where none is written.',
    example: '12 mm',
    possible: [5, 25],
  }),
  keratometry: section(
    { label: 'Keratometry', meaning: 'Keratometry at this visit.', says: ['not done'] },
    {
      ...keratometryFields,
      method: word(keratometryMethods, {
        label: 'Method',
        meaning: 'How the cornea was measured.',
        example: 'automated',
      }),
    },
  ),
  pressure: quantity('mmHg', {
    label: 'Intraocular pressure',
    meaning: 'Pressure at this visit.',
    example: '15 mmHg',
    possible: [0, 90],
    usual: [5, 30],
    limitsSource: 'common practice, no source',
  }),
  cornea: text({ label: 'Cornea', meaning: 'The cornea in words.', example: 'clear' }),
  chamber: text({ label: 'Anterior chamber', meaning: 'Depth, cells and flare.', example: 'deep, quiet' }),
  wound: word(leakTests, { label: 'Wound', meaning: 'Whether the wound is tight.', example: 'no leak' }),
  lens: section(
    { label: 'Lens at the visit', meaning: 'Position of the lens.' },
    {
      placed: word(placements, { label: 'Placed', meaning: 'Where it lies now.', example: 'capsular bag' }),
      'off-centre': value(offset, { label: 'Off-centre', meaning: 'Offset of the optic.', example: 'centred' }),
      axis: meridian('Axis found', 'Axis at which the toric marks are found.'),
      power: quantity('D', {
        label: 'Power',
        meaning: 'Power of the lens in the eye, when the visit repeats it.',
        example: '+5.5 D',
        possible: [-25, 50],
      }),
    },
  ),
  capsule: word(
    vocabulary('state of the capsule', [
      ['clear', ['no pco', 'no opacification']],
      ['opacification', ['pco', 'posterior capsule opacification', 'opacified'], 'How much is not said.'],
      ['slight opacification', ['mild opacification', 'early opacification', 'slight pco', 'mild pco', 'early pco']],
      ['marked opacification', ['opaque', 'dense opacification', 'marked pco', 'dense pco', 'significant pco']],
      ['opened by laser', ['laser capsulotomy', 'yag done', 'yag capsulotomy', 'yag laser capsulotomy']],
      ['open', ['opened'], 'Open, however it came about.'],
      ['torn', ['ruptured']],
    ]),
    {
      label: 'Posterior capsule',
      meaning: 'State of the posterior capsule.',
      example: 'clear',
    },
  ),
  fundus: section(
    { label: 'Fundus', meaning: 'The retina at this visit.', says: ['not done'] },
    {
      dilated: value(yesNo, { label: 'Dilated', meaning: 'Whether the pupil was dilated.', example: 'yes' }),
      macula: text({ label: 'Macula', meaning: 'The macula in words.', example: 'flat' }),
      periphery: list(
        { label: 'Periphery', meaning: 'The peripheral retina.', says: ['not done'] },
        word(peripheryFindings, { label: 'Finding of the periphery', meaning: 'One finding.', example: 'flat' }),
      ),
    },
  ),
  complications: list(
    { label: 'Complications', meaning: 'Complications found at this visit, or none.', says: ['none'] },
    section(
      { label: 'Complication', meaning: 'One complication.' },
      {
        what: word(complicationKinds, { label: 'What', meaning: 'What was found.', example: 'cystoid macular oedema' }),
        found: value(calendarDate, { label: 'Found', meaning: 'When it was first found.', example: '2031-04-11' }),
        action: text({ label: 'Action', meaning: 'What was done.', example: 'non-steroidal drops' }),
      },
    ),
  ),
  treatment: text({
    label: 'Treatment',
    meaning: 'Treatment from now on.',
    example: 'steroid drops to stop in two weeks',
  }),
};
