import type { Vector } from '../../server/src/note/calculations/quantities.ts';
import { dateAfter, type InventedCase } from './case.ts';
import type { SeededRandom } from './random.ts';
import { FORGOTTEN } from './truth.ts';

const signed = (value: number, decimals = 2): string => `${value < 0 ? '-' : '+'}${Math.abs(value).toFixed(decimals)}`;
const listed = (words: readonly string[]): string => (words.length === 0 ? 'none' : `[${words.join(', ')}]`);

/** Both principal meridians of a cornea with this mean power, each as a keratometer prints it. */
function keratometry(mean: number, { magnitude, axis }: Vector, indent: string): string {
  const steepAxis = axis ?? 90;
  const flatAxis = ((steepAxis + 90 - 1) % 180) + 1;
  return [
    `${indent}k1: ${(mean - magnitude / 2).toFixed(2)} D @ ${flatAxis}`,
    `${indent}k2: ${(mean + magnitude / 2).toFixed(2)} D @ ${steepAxis}`,
  ].join('\n');
}

/** A refraction with this spherical equivalent; the sphere is a multiple of a quarter, as glasses are. */
function refraction(equivalentD: number, axis: number): string {
  const cylinder = Math.round(equivalentD * 8) % 2 === 0 ? -0.5 : -0.75;
  const sphere = Math.round((equivalentD - cylinder / 2) * 4) / 4;
  return `${signed(sphere)} / ${signed(cylinder)} x ${axis}`;
}

function complicationLines(one: InventedCase): string {
  const entries = [
    ...(one.rupture
      ? [
          '  - what: posterior capsule rupture',
          '    when: nucleus',
          '    action: dispersive viscoelastic, anterior vitrectomy',
          '    account: the last fragment turned and caught the capsule',
          '    told: yes',
          '  - what: vitreous loss',
          '    when: nucleus',
          '    action: anterior vitrectomy',
          '    account: vitreous followed the fragment into the chamber',
          '    told: yes',
        ]
      : []),
    ...(one.minor === null
      ? []
      : [`  - what: ${one.minor}`, '    when: cortex', '    action: managed without further harm', '    told: yes']),
  ];
  return entries.length === 0 ? 'complications: none' : `complications:\n${entries.join('\n')}`;
}

/** The operation note. Some fields were forgotten, as they are in life. */
export function operationNote(one: InventedCase, status: 'final' | 'draft', random: SeededRandom): string {
  const { eye, surgeon, side, date } = one;
  const keep = (lines: string): string => (random.chance(FORGOTTEN) ? '' : `${lines}\n`);
  const model = one.rupture ? 'HT-3' : 'HX-1';
  const power = one.rupture ? eye.powerD - 0.5 : eye.powerD;
  const isLong = eye.axialLengthMm > 26;
  const vitreous = one.rupture ? 'prolapsed' : 'not prolapsed';
  const start = `${String(8 + (random.whole(0, 8) % 9)).padStart(2, '0')}:${String(random.whole(0, 35)).padStart(2, '0')}`;
  const minutes = one.rupture ? 22 : random.whole(12, 20);
  const finish = `${start.slice(0, 3)}${String(Number(start.slice(3)) + minutes).padStart(2, '0')}`;
  const serial = String(random.whole(10_000_000, 99_999_999));
  return `opnote: 1
record: operation
status: ${status}
id: ${one.id}
date: ${date}
start: ${start}
finish: ${finish}
place: Theatre 1
urgency: elective
procedure: phacoemulsification with lens

patient:
  ref: ${one.patient}
  born: ${one.born}
  sex: ${one.sex}
  allergies: none
  anticoagulant: none
  alpha-blocker: never
  lies-flat: yes
eye: ${side}
${keep(`which-eye: ${one.whichEye}`)}
team:
  - role: surgeon
    ref: ${surgeon.ref}
    grade: ${surgeon.grade}
  - role: scrub nurse
    ref: N-11
    grade: nurse

diagnosis:
  cataract: [${one.cataract.join(', ')}]
  grade: NO${random.whole(2, 5)} NC${random.whole(2, 5)} C${random.whole(0, 3)} P${random.whole(0, 2)}
  scale: LOCS III
  post-operative: [pseudophakia]
${keep(`comorbidity: ${listed(one.comorbidity)}`)}${keep(`difficulty: ${listed(one.difficulty)}`)}indication: glare and poor reading vision

preop:
  acuity:
    corrected: ${one.before}
  refraction: ${refraction((24 - eye.axialLengthMm) * 2.5, random.whole(1, 180))}
  pressure: ${random.whole(11, 21)} mmHg
  biometry:
    method: optical
    date: ${dateAfter(date, -random.whole(10, 80))}
    eye: ${side}
    axial-length: ${eye.axialLengthMm.toFixed(2)} mm
${keratometry(eye.meanKeratometryD, eye.corneaBefore, '    ')}
    chamber-depth: ${eye.chamberDepthMm.toFixed(2)} mm
  pupil: ${one.pupilMm.toFixed(1)} mm
  fundus:
    view: ${one.cataract.includes('white') ? 'no view' : 'clear'}
    macula: flat
${isLong ? '    periphery: [flat]\n  counselling: [lifelong risk of retinal detachment in a long eye]\n' : ''}
plan:
  eye: ${side}
  target: ${signed(eye.targetD)} D
  formula: [${isLong ? 'SRK/T, Haigis' : 'SRK/T'}]
${keep(`  predicted: ${signed(eye.predictedD)} D\n  predicted-by: SRK/T`)}  lens:
    maker: Halden Optics
    model: HX-1
    kind: monofocal
    power: ${signed(eye.powerD, 1)} D
  spare-lens:
    maker: Halden Optics
    model: HT-3
    power: ${signed(eye.powerD - 0.5, 1)} D
    placed: sulcus
  incision:
    at: ${surgeon.site}
    width: ${surgeon.widthMm.toFixed(1)} mm
  anaesthesia: [topical]
${isLong ? '  precautions: [reverse pupillary block, low bottle]\n' : ''}
safety:
  consent:
    eye: ${side}
    date: ${dateAfter(date, -8)}
    confirmed: yes
  site-marked: ${side}
  sign-in:
    time: 07:50
    by: N-11
  time-out:
    time: 07:58
    by: ${surgeon.ref}
  lens-verified:
    eye: ${side}
    model: ${model}
    power: ${signed(power, 1)} D
    by: [${surgeon.ref}, N-11]
  sign-out:
    time: ${finish}
    by: N-11

anaesthesia:
  kinds: [topical]
  drug: proxymetacaine 0.5 %
  given-by: ${surgeon.ref}
  anaesthetist: none
antisepsis:
  agent: povidone-iodine
  strength: 5 %
  contact: 3 min
seat: ${surgeon.site}

incisions:
  - kind: main
    at: ${surgeon.site}
    width: ${surgeon.widthMm.toFixed(1)} mm
    plane: clear corneal
    sutures: none
  - kind: side-port
    at: ${surgeon.site === 'superior' ? '30°' : '60°'}
    width: 1.0 mm

ovd:
  - kind: dispersive
dye: ${one.cataract.includes('white') ? 'trypan blue' : 'none'}
${one.pupilMm < 5 ? 'pupil-aid:\n  - kind: intracameral phenylephrine\n    reason: small pupil\n' : 'pupil-aid: none\n'}capsulotomy:
  technique: continuous curvilinear
  aimed: 5.0 mm
  diameter: 5.0 mm
  outcome: complete
hydrodissection:
  cortex: yes
  rotation: yes
nucleus:
  technique: stop and chop
  ultrasound-time: ${random.whole(20, 70)} s
  mean-power: ${random.whole(10, 30)} %
cortex:
  method: bimanual
  complete: yes
${keep(`capsule-state:\n  anterior: ${one.minor === 'anterior capsule tear' ? 'torn, contained' : 'intact'}\n  posterior: ${one.rupture ? 'torn' : 'intact'}\n  zonule: intact\n  vitreous: ${vitreous}${one.rupture ? '\n  vitreous-in-wound: no' : ''}`)}${
    one.rupture ? 'vitrectomy:\n  approach: anterior\n' : 'vitrectomy: not done\n'
  }ring:
  used: no
lens:
  maker: Halden Optics
  model: ${model}
  kind: monofocal
  power: ${signed(power, 1)} D
  optic-diameter: 6.0 mm
  serial: "${serial}"
  lot: ${model.slice(0, 2)}${serial.slice(0, 5)}
  expiry: ${Number(date.slice(0, 4)) + 3}-06
  placed: ${one.rupture ? 'sulcus' : 'capsular bag'}
  ovd-removed-behind: yes
  card-given: yes
${one.rupture ? '  changed-because: posterior capsule torn, three-piece lens in the sulcus\n' : ''}
drugs:
  - drug: cefuroxime
    purpose: antibiotic
    route: intracameral
    dose: 1 mg in 0.1 mL
closure:
  hydration: yes
  sutures: none
  leak-test: no leak
${keep(complicationLines(one))}findings: as described
specimens: none
blood-loss: minimal
condition-at-end: comfortable, chamber formed
${keep('after-care:\n  drops:\n    - drug: dexamethasone 0.1 %\n      kind: steroid\n      regimen: 4 times a day for 4 weeks\n  shield: yes\n  instructions: warned of pain, redness and a fall of vision; to come the same day')}reviews:
${one.rupture ? '  - what: pressure, wound and dilated retina\n    due: 1 day\n' : ''}  - what: refraction and keratometry
    due: 4 weeks
${isLong ? '  - what: dilated peripheral retina\n    due: 4 weeks\n' : ''}
signed:
  - by: ${surgeon.ref}
    meaning: author
    at: ${date}T${finish}+00:00
`;
}

/** The note of the visit about a month later. */
export function followUpNote(one: InventedCase, visitDays: number, random: SeededRandom): string {
  const { eye } = one;
  return `opnote: 1
record: follow-up
status: final
id: FU-${one.id.slice(3)}
operation: ${one.id}
date: ${dateAfter(one.date, visitDays)}
patient:
  ref: ${one.patient}
eye: ${one.side}
visit: month 1
by: ${one.surgeon.ref}
acuity:
  corrected: ${one.after}
refraction: ${refraction(eye.achievedD, random.whole(1, 180))}
keratometry:
${keratometry(eye.meanKeratometryD, eye.corneaAfter, '  ')}
  method: automated
pressure: ${random.whole(10, 19)} mmHg
cornea: clear
wound: no leak
${one.eye.axialLengthMm > 26 ? 'fundus:\n  dilated: yes\n  periphery: [flat]\n' : ''}${
    random.chance(FORGOTTEN)
      ? ''
      : one.late === null
        ? 'complications: none\n'
        : `complications:\n  - what: ${one.late}\n    action: drops\n`
  }signed:
  - by: ${one.surgeon.ref}
    meaning: author
    at: ${dateAfter(one.date, visitDays)}T12:00+00:00
`;
}
