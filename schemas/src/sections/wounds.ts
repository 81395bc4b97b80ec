import { list, quantity, section, text, value, word } from '../fields/field.ts';
import { count, yesNo } from '../notation/plain.ts';
import { site } from '../notation/site.ts';
import { calendarDate } from '../notation/time.ts';
import { vocabulary } from '../notation/words.ts';
import { leakTests, sutureMaterials } from '../vocabulary/outcome.ts';
import { architectures, incisionKinds, incisionPlanes } from '../vocabulary/theatre.ts';

const practice = 'common practice, no source';
const gauges = vocabulary('suture gauge', [
  ['7-0', ['7/0']],
  ['8-0', ['8/0']],
  ['9-0', ['9/0']],
  ['10-0', ['10/0']],
  ['11-0', ['11/0']],
]);

/** Sutures of one wound, or of the closure as a whole. */
export const sutures = section(
  {
    label: 'Sutures',
    meaning: 'Sutures placed, or none.',
    source: 'RCS Good Surgical Practice 2014, 1.3 (closure technique)',
    says: ['none'],
    spoken: ['sutures', 'suture'],
  },
  {
    count: value(count, { label: 'Number', meaning: 'How many sutures.', example: '1' }),
    gauge: word(gauges, { label: 'Gauge', meaning: 'Gauge of the suture.', example: '10-0' }),
    material: word(sutureMaterials, { label: 'Material', meaning: 'Material of the suture.', example: 'nylon' }),
    'remove-by': value(calendarDate, {
      label: 'Remove by',
      meaning: 'When a non-absorbable suture should be out.',
      example: '2031-04-14',
    }),
  },
);

export const incisions = list(
  {
    label: 'Incisions',
    meaning: 'Every opening of the eye: main, side-ports, others.',
    source: 'RCS Good Surgical Practice 2014, 1.3 (incision)',
    spoken: ['incisions'],
  },
  section(
    { label: 'Incision', meaning: 'One opening of the eye.' },
    {
      kind: word(incisionKinds, { label: 'Kind', meaning: 'Main, side-port, relaxing or other.', example: 'main' }),
      at: value(site, {
        label: 'Site',
        meaning: 'Where on the eye: degrees of the dial, a sector word or an anatomical clock hour.',
        example: 'temporal',
        source: 'ISO 8429:1986 (dial)',
        spoken: ['at'],
      }),
      width: quantity('mm', {
        label: 'Width',
        meaning: 'Width as made.',
        example: '2.2 mm',
        possible: [0.3, 14],
        usual: [0.5, 7],
        limitsSource: practice,
        spoken: ['width'],
      }),
      plane: word(incisionPlanes, {
        label: 'Place of the wound',
        meaning: 'Cornea, limbus or sclera.',
        example: 'clear corneal',
      }),
      architecture: word(architectures, {
        label: 'Architecture',
        meaning: 'How many planes the wound has.',
        example: 'three planes',
      }),
      tunnel: quantity('mm', {
        label: 'Tunnel length',
        meaning: 'Length of the tunnel.',
        example: '1.75 mm',
        possible: [0.2, 6],
        usual: [1, 3],
        limitsSource: practice,
      }),
      'enlarged-to': quantity('mm', {
        label: 'Enlarged to',
        meaning: 'Width after enlarging it for the lens.',
        example: '2.8 mm',
        possible: [0.5, 14],
        usual: [1.5, 8],
        limitsSource: practice,
      }),
      sutures,
      text: text({ label: 'Incision in words', meaning: 'What the fields cannot say.' }),
    },
  ),
);

export const closure = section(
  {
    label: 'Closure',
    meaning: 'How the wounds were closed and tested.',
    source: 'RCS Good Surgical Practice 2014, 1.3 (closure technique)',
    spoken: ['closure'],
  },
  {
    hydration: value(yesNo, {
      label: 'Stromal hydration',
      meaning: 'Whether the wounds were hydrated.',
      example: 'yes',
      spoken: ['hydration'],
    }),
    sutures,
    'leak-test': word(leakTests, {
      label: 'Leak test',
      meaning: 'Result of testing the wounds.',
      example: 'no leak',
      says: ['not done'],
      spoken: ['leak test'],
    }),
    pressure: quantity('mmHg', {
      label: 'Pressure at the end',
      meaning: 'Pressure at the end, measured.',
      example: '18 mmHg',
      possible: [0, 90],
      usual: [5, 40],
      limitsSource: practice,
    }),
    'pressure-by-touch': word(
      vocabulary('pressure by touch', [
        ['normal', ['physiological']],
        ['soft', ['low']],
        ['firm', ['high']],
      ]),
      {
        label: 'Pressure by touch',
        meaning: 'Pressure at the end, judged by touch.',
        example: 'normal',
      },
    ),
  },
);
