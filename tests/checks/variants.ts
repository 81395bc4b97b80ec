import type { Example } from '../../server/src/note/checks/check.ts';
import { composeNote } from '../../server/src/note/checks/examples/compose.ts';
import { longEye, tornCapsule } from '../../server/src/note/checks/examples/scenarios.ts';

const ring = (reason: string): string =>
  `ring:\n  used: yes\n  kind: tension ring\n  size: 13/11 mm\n  reason: [${reason}]\n  inserted: after cortex removal\n  placed: capsular bag\n  serial: R-50311`;
const toric = (axis: string): string =>
  `preop:\n  biometry:\n    k1: 42.00 D @ 178\n    k2: 44.50 D @ 88\nplan:\n  lens:\n    kind: toric\n    cylinder: +3.00 D\n    axis: ${axis}\nlens:\n  kind: toric\n  cylinder: +3.00 D\n  axis: ${axis}`;
const drug = (dose: string, name = 'moxifloxacin'): string =>
  `drugs:\n  - drug: ${name}\n    purpose: antibiotic\n    route: intracameral\n    dose: ${dose}`;
const surgeon = (effect: string): string =>
  `staff:\n  - ref: S-02\n    role: surgeon\n    grade: consultant\n    may-sign: yes\n    incision-effect:\n      - width: 2.4 mm\n        site: temporal\n${effect}`;
const lens = (rest: string): string =>
  `lenses:\n  - maker: Halden Optics\n    model: HX-1\n    kind: monofocal\n    optic-diameter: 6.0 mm\n${rest}`;
const earlier = (rest: string): Record<string, string> => ({
  'earlier.opnote.yaml': `id: OP-2031-0087\ndate: 2031-03-11\nlens:\n  serial: "0040719087"\n  udi: not recorded\n${rest}`,
});

/** What checks say besides what their own examples show: other grades, other fields, other reasons. */
export const variants: readonly (readonly [check: string, example: Example])[] = [
  ['eye-missing', { note: 'eye: not recorded' }],
  ['implanted-lens-differs-from-verified', { note: 'safety:\n  lens-verified:\n    model: HX-3' }],
  ['implanted-lens-differs-from-verified', { note: 'safety:\n  lens-verified:\n    model: HX-3\n    power: +22.5 D' }],
  ['implanted-lens-differs-from-plan', { note: 'plan:\n  lens:\n    maker: Nordvik Lenses' }],
  ['implanted-lens-differs-from-plan', { note: 'plan:\n  lens:\n    kind: multifocal' }],
  ['implanted-lens-differs-from-plan', { note: composeNote(tornCapsule, 'lens:\n  changed-because: not recorded') }],
  ['implanted-power-differs-from-plan', { note: 'plan:\n  lens:\n    power: -21.5 D' }],
  ['incision-mirrored', { note: 'plan:\n  incision:\n    at: nasal' }],
  [
    'incision-mirrored',
    {
      note: 'plan:\n  seat: nasal\n  incision:\n    at: not recorded\nseat: nasal',
    },
  ],
  ['incision-differs-from-plan', { note: 'plan:\n  incision:\n    width: 2.8 mm' }],
  ['complications-not-recorded', { note: 'complications: not recorded' }],
  ['complications-not-recorded', { note: 'without: complications\nstatus: draft' }],
  ['safety-checks-incomplete', { note: 'without: safety' }],
  ['capsulotomy-incomplete', { note: 'without: capsulotomy' }],
  ['patient-incomplete', { note: 'without: patient.born, patient.sex, patient.alpha-blocker' }],
  ['lens-incomplete', { note: 'without: lens.maker, lens.expiry, lens.card-given' }],
  ['team-incomplete', { note: 'team:\n  - role: surgeon\n    ref: S-02\n' }],
  ['incision-incomplete', { note: 'incisions:\n  - kind: side-port\n    at: 110°' }],
  [
    'incision-incomplete',
    { note: 'incisions:\n  - kind: main\n    at: temporal\n    width: 2.4 mm\n    plane: limbal\n  - kind: side-port' },
  ],
  ['complication-incomplete', { note: 'complications:\n  - what: hyphaema\n    when: closure\n    told: yes' }],
  ['signature-missing', { note: 'signed:\n  - by: S-02\n    meaning: author' }],
  ['amendment-incomplete', { base: 'amendment', note: 'without: changes' }],
  ['amendment-incomplete', { base: 'amendment', note: 'changes:\n  - field: antisepsis.contact\n    was: 3 min' }],
  [
    'keratometry-without-meridian',
    { note: composeNote(toric('88°'), 'preop:\n  biometry:\n    k1: 42.00 D\n    k2: 44.50 D') },
  ],
  ['label-differs-from-fields', { note: 'lens:\n  lot: L2031C' }],
  ['label-differs-from-fields', { note: 'lens:\n  expiry: 2034-07' }],
  ['label-differs-from-fields', { note: 'lens:\n  serial: "0040719110"\n  lot: L2031C\n  expiry: 2031-03' }],
  ['label-not-valid', { note: 'lens:\n  udi: "0040719101"' }],
  ['label-not-valid', { note: 'lens:\n  udi: "9521234543213"' }],
  ['label-not-valid', { note: 'lens:\n  udi: (00)123456789012345675' }],
  [
    'label-of-another-model',
    {
      note: 'lens:\n  udi: (01)09521234543206(17)340630(10)L2031B(21)0040719101',
      files: {
        'sideport.yaml': `${lens('    device-identifier: "09521234543213"')}\n  - maker: Halden Optics\n    model: HT-3\n    kind: monofocal\n    device-identifier: "09521234543206"`,
      },
    },
  ],
  ['unusual-value', { note: 'nucleus:\n  steps:\n    - step: sculpt\n      bottle-height: 150 cm' }],
  ['unusual-value', { base: 'follow-up', note: 'pressure: 3 mmHg' }],
  [
    'lens-power-unusual-for-eye',
    {
      note: 'plan:\n  lens:\n    power: +12.0 D\nsafety:\n  lens-verified:\n    power: +12.0 D\nlens:\n  power: +12.0 D',
    },
  ],
  ['uncorrected-better-than-corrected', { base: 'follow-up', note: 'acuity:\n  uncorrected: 6/6\n  corrected: 6/9' }],
  ['dose-implausible', { note: drug('5 mg in 1 mL') }],
  ['dose-implausible', { note: drug('0.01 mg in 0.1 mL') }],
  ['dose-implausible', { note: drug('1 mg in 1 mL', 'cefuroxime') }],
  ['biometry-date-implausible', { note: 'preop:\n  biometry:\n    date: 2029-11-03' }],
  ['signed-before-finish', { note: 'signed:\n  - by: S-02\n    meaning: author\n    at: 2031-04-07T10:48+01:00' }],
  ['high-pressure-untreated', { note: 'closure:\n  pressure: 34 mmHg' }],
  ['ring-reason-disagrees', { note: ring('ruptured zonule') }],
  ['ring-reason-disagrees', { note: ring('long eye') }],
  ['ring-reason-disagrees', { note: ring('toric lens stability') }],
  ['ring-reason-disagrees', { note: ring('pseudoexfoliation') }],
  ['ring-reason-disagrees', { note: ring('previous vitrectomy') }],
  ['high-myopia-disagrees-with-length', { note: 'comorbidity: [high myopia]' }],
  [
    'torn-but-no-complication',
    { note: 'capsule-state:\n  posterior: torn\nlens:\n  text: tear of 1 mm in the centre, bag stable' },
  ],
  ['complication-without-finding', { note: composeNote(tornCapsule, 'capsule-state:\n  posterior: intact') }],
  ['excluded-complication-recorded', { note: composeNote(tornCapsule, 'complications-excluded: [vitreous loss]') }],
  [
    'procedure-disagrees-with-lens',
    {
      note: 'lens: {placed: none, changed-because: the bag could not hold a lens}\nsafety:\n  lens-verified: not applicable',
    },
  ],
  [
    'sutures-disagree',
    {
      note: `incisions:\n  - kind: main\n    at: temporal\n    width: 2.4 mm\n    plane: clear corneal\n    sutures:\n      count: 1\n      gauge: 10-0\n      material: nylon\n      remove-by: 2031-05-20`,
    },
  ],
  [
    'lens-wider-than-wound',
    {
      note: 'incisions:\n  - kind: main\n    at: temporal\n    width: 2.4 mm\n    plane: clear corneal\n    enlarged-to: 2.2 mm',
    },
  ],
  [
    'refraction-sign-disagrees-with-length',
    {
      note: 'preop:\n  refraction: -7.25 / -0.75 x 175\n  biometry:\n    axial-length: 21.20 mm\n  fellow-eye:\n    axial-length: 21.10 mm\nplan:\n  lens:\n    power: +29.0 D\n  spare-lens:\n    power: +28.0 D\nsafety:\n  lens-verified:\n    power: +29.0 D\nlens:\n  power: +29.0 D',
    },
  ],
  ['toric-axis-off-steep-meridian', { note: toric('68°') }],
  [
    'toric-lens-in-torn-bag',
    {
      note: composeNote(
        tornCapsule,
        composeNote(toric('88°'), 'lens:\n  placed: capsular bag\n  text: optic captured, axis stable'),
      ),
    },
  ],
  [
    'ring-after-uncontained-tear',
    {
      note: `capsule-state:\n  anterior: torn, uncontained\ncomplications:\n  - what: anterior capsule tear\n    when: capsulotomy\n    account: ran out\n    told: yes\ncapsulotomy:\n  outcome: radial tear\n${ring('centration')}`,
    },
  ],
  [
    'vitreous-left-in-wound',
    {
      note: composeNote(tornCapsule, 'capsule-state:\n  vitreous: prolapsed').replace('  vitreous-in-wound: no\n', ''),
    },
  ],
  [
    'needle-block-risky',
    {
      note: 'patient:\n  anticoagulant: apixaban\nplan:\n  anaesthesia: [peribulbar]\nanaesthesia:\n  kinds: [peribulbar]',
    },
  ],
  ['drug-against-allergy', { note: 'patient:\n  allergies:\n    - penicillin (anaphylaxis)' }],
  ['drug-against-allergy', { note: 'patient:\n  allergies:\n    - iodine' }],
  ['hydrodissection-of-posterior-polar', { note: 'plan:\n  precautions: [no hydrodissection]' }],
  ['small-pupil-without-aid', { note: 'preop:\n  pupil: 4.5 mm' }],
  ['long-eye-periphery-not-examined', { note: composeNote(longEye, 'preop:\n  fundus: {view: clear, macula: flat}') }],
  [
    'amendment-of-unfinished-note',
    { base: 'amendment', note: 'kind: correction', files: { 'operation.opnote.yaml': 'without: status, signed' } },
  ],
  [
    'eye-order-disagrees',
    {
      note: 'which-eye: second',
      files: {
        'later.opnote.yaml':
          'id: OP-2031-0140\ndate: 2031-04-22\neye: left\nwhich-eye: second\npreop:\n  biometry:\n    eye: left\nlens:\n  serial: "0040719140"\n  udi: not recorded',
      },
    },
  ],
  ['operation-not-found', { base: 'amendment', note: 'amends: OP-2031-9999' }],
  ['person-named', { note: '# seen with Dr Elm in clinic\nurgency: elective' }],
  ['identifying-file-name', { note: 'urgency: elective', file: '4471902.opnote.yaml' }],
  ['incision-effect-doubtful', { base: 'department', note: surgeon('        flattening: 0.20 D\n        eyes: 9') }],
  [
    'powers-disagree',
    { base: 'department', note: lens('    powers:\n      from: -10.0 D\n      to: +30.2 D\n      step: 0.5 D') },
  ],
  ['constants-disagree', { base: 'department', note: lens('    constants:\n      a: 118.9\n      sf: 4.75') }],
  [
    'entry-given-twice',
    {
      base: 'department',
      note: `${lens('    pieces: 1')}\n  - maker: Halden Optics\n    model: HX-1\n    kind: monofocal\n    optic-diameter: 6.0 mm`,
    },
  ],
  ['staff-entry-incomplete', { base: 'department', note: 'staff:\n  - role: scrub nurse' }],
  [
    'setting-of-unknown-check',
    { base: 'department', note: 'checks:\n  - check: everything\n    severity: info\n    because: too loud' },
  ],
  ['same-eye-operated-twice', { note: 'which-eye: first', files: earlier('patient:\n  ref: P-1042') }],
  ['times-out-of-order', { note: 'safety:\n  lens-verified:\n    time: 10:41' }],
  ['times-out-of-order', { note: 'safety:\n  sign-out:\n    time: 09:29' }],
];
