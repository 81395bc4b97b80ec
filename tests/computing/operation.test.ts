import { describe, expect, test } from 'vitest';
import { compute, department, one, operation, why } from './notes.ts';

const biometry = (axialLength: number, k1: string, k2: string, depth: number, more = ''): string => `preop:
  biometry:
    method: optical
    axial-length: ${axialLength} mm
    k1: ${k1}
    k2: ${k2}
    chamber-depth: ${depth} mm
${more}`;
const plan = (target: number, power: number, more = '', model = 'HX-1'): string => `plan:
  target: ${target.toFixed(2)} D
  formula: [SRK/T, Haigis]
  lens:
    maker: Halden Optics
    model: ${model}
    power: ${power.toFixed(1)} D
${more}`;

const measured = (k1: string, k2: string, more = '') =>
  compute(operation(`preop:\n  biometry:\n    k1: ${k1}\n    k2: ${k2}\n${more}`));

describe('keratometry', () => {
  test('mean, astigmatism and kind, as check case C007', () => {
    const note = measured('42.50 D @ 180', '44.00 D @ 90');
    expect(one(note, 'mean-keratometry').value).toBeCloseTo(43.25, 9);
    expect(one(note, 'corneal-astigmatism')).toMatchObject({
      value: { magnitude: 1.5, axis: 90 },
      unit: 'D',
      display: '1.50 D @ 90°',
      path: ['preop', 'biometry', 'k2'],
      inline: true,
    });
    expect(one(note, 'astigmatism-kind')).toMatchObject({ value: 'with-the-rule', display: 'with the rule' });
  });
  test('radii are converted one by one, so that the mean is one of powers (trap 5)', () => {
    const note = measured('8.00 mm @ 5', '7.50 mm @ 95');
    expect(one(note, 'mean-keratometry').value).toBeCloseTo(43.59375, 9);
    expect(one(note, 'corneal-power', 'preop.biometry.k2').value).toBeCloseTo(45, 9);
    expect(one(note, 'corneal-astigmatism').value).toMatchObject({ axis: 95 });
  });
  test('another index is stated, and brought to 1.3375 for the formulas', () => {
    const text = operation(biometry(23.5, '42.88 D @ 180', '42.88 D @ 90', 3.2, '    index: 1.3325\n') + plan(0, 20.5));
    const note = compute(text, { department });
    expect(one(note, 'mean-keratometry').inputs).toMatchObject({ index: 1.3325 });
    expect(one(note, 'mean-keratometry').value).toBeCloseTo(42.88, 9);
    // 42.88 D under 1.3325 is a radius of 7.754 mm, which is 43.53 D under 1.3375.
    expect(one(note, 'lens-power-srk-t').inputs['mean-keratometry']).toBeCloseTo(43.5248, 3);
  });
  test('the department may state the index of its keratometers', () => {
    const note = compute(operation('preop:\n  biometry:\n    k1: 7.75 mm @ 180\n    k2: 7.75 mm @ 90\n'), {
      department: 'sideport: 1\nkeratometric-index: 1.332\n',
    });
    expect(one(note, 'mean-keratometry').value).toBeCloseTo(332 / 7.75, 9);
  });
  test('equal powers have no axis and no kind', () => {
    const note = measured('43.00 D @ 180', '43.00 D @ 90');
    expect(one(note, 'corneal-astigmatism').value).toEqual({ magnitude: 0, axis: null });
    expect(why(note, 'astigmatism-kind')).toContain('no astigmatism');
  });
  test('what is missing is named', () => {
    const note = compute(operation('preop:\n  biometry:\n    k1: 43.00 D @ 180\n'));
    expect(why(note, 'mean-keratometry')).toBe('K2 is missing');
    expect(why(compute(operation('')), 'axial-length-class')).toBe('the axial length is missing');
  });
});

const incisionAt = (site: string, more = '') =>
  compute(operation(`${more}incisions:\n  - kind: main\n    at: ${site}\n    width: 2.2 mm\n`), { department });

describe('incisions', () => {
  test('words mirror in a left eye; the position is kept beside the meridian', () => {
    const note = incisionAt('temporal');
    expect(one(note, 'incision-position').value).toBe(0);
    expect(one(note, 'incision-meridian')).toMatchObject({ value: 180, display: '180°' });
  });
  test("a clock as the surgeon sees it needs the seat; temporally in a left eye 3 o'clock is superior", () => {
    const clock = "3 o'clock, surgeon's view";
    expect(one(incisionAt(clock, 'seat: temporal\n'), 'incision-position').value).toBe(90);
    expect(why(incisionAt(clock), 'incision-position')).toContain("the surgeon's seat is missing");
    expect(one(incisionAt("3 o'clock"), 'incision-site').value).toBe('temporal');
    // Where the surgeon meant to sit says nothing about where the surgeon sat.
    const planned = incisionAt(clock, 'plan:\n  seat: temporal\n');
    expect(why(planned, 'incision-position')).toContain("the surgeon's seat is missing");
  });
  test("the surgeon's own centroid: found for this eye before found for both, with a caution for few eyes", () => {
    const induced = one(incisionAt('temporal'), 'expected-induced-astigmatism');
    expect(induced.value).toEqual({ magnitude: 0.25, axis: 90 });
    expect(induced.inputs).toMatchObject({ flattening: 0.25, width: 2.2, eyes: 12 });
    expect(induced.cautions.join()).toContain('rests on 12 eyes only');
  });
  test('no centroid for such an incision: nothing is supposed', () => {
    expect(why(incisionAt('superior'), 'expected-induced-astigmatism')).toBe(
      'the department file has no incision effect of S-31 for a superior incision of 2.2 mm',
    );
    expect(why(incisionAt('superior'), 'expected-corneal-astigmatism')).toBe('K1 is missing');
  });
  test('the enlarged width counts', () => {
    const note = compute(
      operation('incisions:\n  - kind: main\n    at: 90°\n    width: 2.2 mm\n    enlarged-to: 2.8 mm\n'),
      { department },
    );
    expect(one(note, 'expected-induced-astigmatism').value).toEqual({ magnitude: 0.5, axis: 180 });
  });
  test('expected cornea as check case C025, and the planned incision while none is made', () => {
    const note = compute(
      operation(
        `preop:\n  biometry:\n    k1: 42.50 D @ 180\n    k2: 43.50 D @ 90\nplan:\n  incision:\n    at: superior\n    width: 2.8 mm\n`,
      ),
      { department },
    );
    expect(one(note, 'expected-corneal-astigmatism')).toMatchObject({
      value: { magnitude: 0.5, axis: 90 },
      path: ['plan', 'incision', 'at'],
    });
  });
});

const byThickness = (more: string) =>
  operation(
    biometry(30, '42.50 D @ 180', '43.50 D @ 90', 3.6, more) + plan(0, 5, '  length-adjustment: Cooke-modified\n'),
  );

describe('lens power', () => {
  const c045 = operation(biometry(30, '42.50 D @ 180', '43.50 D @ 90', 3.6) + plan(-1, 5));

  test('every formula for the target and for the planned lens, as check cases C045 and C048', () => {
    const note = compute(c045, { department });
    for (const [slug, power, refraction] of [
      ['srk-t', 4.873366, -1.082119],
      ['holladay-1', 4.180108, -1.567656],
      ['hoffer-q', 4.135613, -1.554153],
      ['haigis', 5.028047, -0.98089],
    ] as const) {
      expect(one(note, `lens-power-${slug}`).value).toBeCloseTo(power, 3);
      expect(one(note, `predicted-refraction-${slug}`).value).toBeCloseTo(refraction, 3);
    }
    expect(one(note, 'lens-power-t2').value).toBeCloseTo(5.102175, 3);
    expect(one(note, 'formula-spread').value).toBeCloseTo(5.102175 - 4.135613, 3);
  });
  test('the formulas of the plan stand behind the line, the others in the explanation', () => {
    const note = compute(c045, { department });
    expect(one(note, 'lens-power-srk-t').inline).toBe(true);
    expect(one(note, 'lens-power-hoffer-q').inline).toBe(false);
    expect(one(note, 'lens-power-srk-t').display).toBe('+4.87 D');
  });
  test('low powers and long eyes carry their cautions', () => {
    const cautions = one(compute(c045, { department }), 'lens-power-srk-t').cautions.join('\n');
    expect(cautions).toContain('Over 26 mm SRK/T tends to leave the eye hyperopic');
    expect(cautions).toContain('Power below 6 D');
    expect(cautions).toContain('Compare with the biometry print-out and the lens box');
  });
  test('a named adjustment is shown beside the unadjusted value, never instead of it', () => {
    const note = compute(
      operation(
        biometry(30, '42.50 D @ 180', '43.50 D @ 90', 3.6) + plan(0, 5, '  length-adjustment: Wang-Koch 2018\n'),
      ),
      { department },
    );
    expect(one(note, 'lens-power-srk-t').value).toBeCloseTo(3.3, 1);
    expect(one(note, 'lens-power-srk-t-adjusted').value).toBeCloseTo(4.63, 1);
    expect(one(note, 'lens-power-srk-t-adjusted').cautions.join()).not.toContain('hyperopic');
    expect(note.values.some(({ name }) => name === 'lens-power-haigis-adjusted')).toBe(false);
    expect(note.values.filter(({ name }) => name === 'adjusted-axial-length').map(({ value }) => value)).toEqual([
      expect.closeTo(29.4363, 4),
      expect.closeTo(29.2113, 4),
    ]);
  });
  test('the adjustment by lens thickness needs the thickness', () => {
    expect(why(compute(byThickness(''), { department }), 'adjusted-axial-length')).toBe(
      'the lens thickness is missing',
    );
    const note = compute(byThickness('    lens-thickness: 4.5 mm\n'), { department });
    expect(one(note, 'adjusted-axial-length').value).toBeCloseTo(29.749015, 5);
    expect(one(note, 'lens-power-holladay-1-adjusted').value).toBeCloseTo(3.27, 1);
  });
  test('minus powers take the constants for minus powers where the lens has them (trap 9)', () => {
    const text = operation(biometry(33.5, '41.50 D @ 180', '42.50 D @ 90', 3.7) + plan(0, -3, '', 'HL-2'));
    const note = compute(text, { department });
    const haigis = one(note, 'lens-power-haigis');
    expect(haigis.inputs['a0']).toBe(-1.73);
    expect(haigis.cautions.join()).toContain('Computed with the constant for minus powers');
    expect(one(note, 'predicted-refraction-haigis').inputs['a0']).toBe(-1.73);
    expect(one(note, 'lens-power-srk-t').cautions.join()).toContain('constants made for plus lenses do not apply');
  });
  test('a missing constant is converted as a starting value, and says so', () => {
    const text = operation(
      `${biometry(23.5, '43.00 D @ 180', '44.00 D @ 90', 3.2)}plan:\n  target: 0 D\n  lens:\n    maker: Orrin Lens Works\n    model: OV-21\n    power: 20.5 D\n`,
    );
    const holladay = one(compute(text, { department }), 'lens-power-holladay-1');
    expect(holladay.inputs['surgeon-factor']).toBeCloseTo(1.44992, 5);
    expect(holladay.cautions.join()).toContain('a starting value only');
  });
  test.each([
    ['without a department file', {}, 'there is no department file with the constants of the lens'],
    ['without the lens in its list', { department: 'sideport: 1\nlenses: []\n' }, 'does not have the model HX-1'],
  ])('%s nothing is computed', (_what, around, because) => {
    expect(why(compute(c045, around), 'lens-power-srk-t')).toContain(because);
  });
  test('Haigis without a chamber depth is not computed; the others are (trap 13)', () => {
    const note = compute(c045.replace(/ {4}chamber-depth.*\n/u, ''), { department });
    expect(why(note, 'lens-power-haigis')).toBe('the chamber depth is missing');
    expect(one(note, 'lens-power-srk-t').value).toBeCloseTo(4.873366, 3);
  });
  test('after corneal refractive surgery no formula is used', () => {
    const note = compute(`${c045}comorbidity: [previous corneal refractive surgery]\n`, { department });
    expect(why(note, 'lens-power-srk-t')).toContain('do not hold after corneal refractive surgery');
  });
  test('the print-out is compared, never replaced', () => {
    const note = compute(
      operation(
        biometry(30, '42.50 D @ 180', '43.50 D @ 90', 3.6) +
          plan(-1, 5, '  predicted: -1.50 D\n  predicted-by: SRK/T\n'),
      ),
      { department },
    );
    expect(one(note, 'prediction-difference')).toMatchObject({ inputs: { recorded: -1.5 }, display: '-0.42 D' });
    expect(one(note, 'prediction-difference').cautions.join()).toContain('differ by over 0.25 D');
  });
  test('the implanted lens has its own prediction, beside its own power', () => {
    const note = compute(`${c045}lens:\n  maker: Halden Optics\n  model: HX-1\n  power: +6.0 D\n  placed: sulcus\n`, {
      department,
    });
    const implanted = one(note, 'predicted-refraction-srk-t', 'lens.power');
    expect(implanted.value).toBeLessThan(-1.5);
    expect(implanted.cautions.join()).toContain('elsewhere than in the bag (sulcus)');
    expect(one(note, 'predicted-refraction-srk-t', 'plan.lens.power').value).toBeCloseTo(-1.082119, 3);
  });
});

const withSections = (sections: string) => compute(operation(sections), { department });

describe('capsulotomy', () => {
  test('overlap from diameter, offset and optic, as check case C067', () => {
    const note = withSections(
      "capsulotomy:\n  diameter: 5.5 mm\n  off-centre: 0.4 mm toward 3 o'clock\nlens:\n  model: HX-1\n  placed: capsular bag\n",
    );
    expect(one(note, 'capsulotomy-overlap-least')).toMatchObject({ display: '-0.15 mm' });
    expect(one(note, 'capsulotomy-overlap-least').cautions.join()).toContain('does not cover');
    expect(one(note, 'capsulotomy-overlap-most').value).toBeCloseTo(0.65, 9);
    expect(one(note, 'capsulotomy-covered-share')).toMatchObject({ display: '70 %' });
    expect(one(note, 'capsulotomy-largest-offset').value).toBeCloseTo(0.25, 9);
  });
  test('an offset that was not measured is not taken as none', () => {
    const note = withSections(
      'capsulotomy:\n  diameter: 5.0 mm\n  off-centre: toward nasal\nlens:\n  optic-diameter: 6.0 mm\n',
    );
    expect(why(note, 'capsulotomy-overlap-least')).toContain('was not measured');
    expect(one(note, 'capsulotomy-overlap-centred').value).toBeCloseTo(0.5, 9);
  });
  test('a lens in the sulcus has no overlap to speak of', () => {
    const note = withSections(
      'capsulotomy:\n  diameter: 5.0 mm\n  off-centre: centred\nlens:\n  model: HX-1\n  placed: sulcus\n',
    );
    expect(note.values.some(({ name }) => name.startsWith('capsulotomy-overlap'))).toBe(false);
  });
  test('what a corneal mark encloses, as check case C062, with its uncertainty', () => {
    const note = withSections(
      `${biometry(24, '43.50 D @ 180', '43.50 D @ 90', 3.2)}capsulotomy:\n  aimed: 5.25 mm\n  corneal-marker: 6.0 mm\n`,
    );
    expect(one(note, 'capsulotomy-under-marker').value).toBeCloseTo(5.37485, 4);
    expect(one(note, 'capsulotomy-under-marker').cautions.join()).toContain('5.16 to 5.59 mm');
    expect(one(note, 'marker-for-capsulotomy').value).toBeCloseTo(5.8606, 3);
  });
});

describe('machine', () => {
  test('pressure of each step, by bottle height or as set; energy with torsional ultrasound, as C069 and C071', () => {
    const note = compute(
      operation(`nucleus:
  steps:
    - step: sculpt
      bottle-height: 75 cm
    - step: chop
      set-pressure: 45 mmHg
  ultrasound-time: 5 s
  mean-power: 20 %
  torsional-time: 45 s
  torsional-power: 60 %
`),
    );
    const pressures = note.values.filter(({ name }) => name === 'infusion-pressure');
    expect(pressures.map(({ value, path }) => [value, path.join('.')])).toEqual([
      [expect.closeTo(55.166935, 5), 'nucleus.steps.0.bottle-height'],
      [45, 'nucleus.steps.1.set-pressure'],
    ]);
    expect(one(note, 'effective-phaco-time').value).toBeCloseTo(1, 9);
    expect(one(note, 'dissipated-energy').value).toBeCloseTo(11.8, 9);
    expect(one(note, 'dissipated-energy').cautions.join()).toContain('Bound to the device');
  });
});

const corrected = (acuity: string) =>
  one(compute(operation(`preop:\n  acuity:\n    corrected: ${acuity}\n`)), 'acuity-logmar');

const capsule = (posterior: string, zonule: string, vitreous: string) =>
  compute(operation(`capsule-state:\n  posterior: ${posterior}\n  zonule: ${zonule}\n  vitreous: ${vitreous}\n`));

describe('acuity, eye and risk', () => {
  test('every notation, and categories by a named scheme', () => {
    expect(corrected('6/18').value).toBeCloseTo(0.477121, 5);
    expect(corrected('20/40 -2').value).toBeCloseTo(0.30103 + 0.04, 5);
    expect(corrected('0.8').value).toBeCloseTo(0.09691, 5);
    expect(corrected('logMAR 0.60')).toMatchObject({ value: 0.6, inline: false });
    expect(corrected('CF')).toMatchObject({ value: 1.85, method: 'CF by the scheme schulze-bonsel-2006' });
    expect(corrected('NPL')).toMatchObject({ value: 3 });
    expect(corrected('NPL').cautions.join()).toContain('never average it silently');
  });
  test('risk of rupture as check case C079; what is not recorded is named', () => {
    const note = compute(
      operation(`patient:
  born: 1970
  sex: male
  alpha-blocker: never
comorbidity: [pseudoexfoliation]
difficulty: none
preop:
  pupil: 5.0 mm
  biometry:
    axial-length: 26.10 mm
`),
    );
    expect(one(note, 'rupture-risk-odds').value).toBeCloseTo(7.140356, 4);
    expect(one(note, 'rupture-risk')).toMatchObject({ display: '5.1 %' });
    expect(one(note, 'rupture-risk').value).toBeCloseTo(0.051195, 5);
    expect(one(note, 'rupture-risk').cautions.join('\n')).toContain('overstates the risk of today about two-fold');
    const bare = compute(operation('patient:\n  born: 1970\n'));
    expect(one(bare, 'rupture-risk').cautions.join()).toContain('not recorded: male, glaucoma');
  });
  test('the audit definition from facts, never from the word (trap: zonule without vitreous)', () => {
    expect(one(capsule('torn', 'intact', 'not prolapsed'), 'posterior-capsule-rupture').value).toBe(true);
    expect(one(capsule('intact', 'ruptured', 'prolapsed'), 'posterior-capsule-rupture').value).toBe(true);
    expect(one(capsule('intact', 'ruptured', 'not prolapsed'), 'posterior-capsule-rupture').value).toBe(false);
    expect(one(capsule('opened on purpose', 'intact', 'not prolapsed'), 'posterior-capsule-rupture').value).toBe(false);
    expect(why(capsule('not recorded', 'intact', 'not prolapsed'), 'posterior-capsule-rupture')).toContain(
      'not recorded',
    );
  });
  test('length, bag, ring, maculopathy', () => {
    const note = compute(
      operation(
        `${biometry(30, '43.00 D @ 180', '43.00 D @ 90', 3.6)}  fundus:\n    myopic-maculopathy: 2\nring:\n  used: yes\n  size: 13/11 mm\n`,
      ),
    );
    expect(one(note, 'axial-length-class').value).toBe('long');
    expect(why(note, 'capsular-bag-diameter')).toContain('top at 26.4 mm');
    expect(one(note, 'ring-size-advice')).toMatchObject({
      value: { free: 14.5, compressed: 12 },
      display: '14.5/12 mm',
      path: ['ring', 'size'],
      inline: true,
    });
    expect(one(note, 'pathologic-myopia').value).toBe(true);
    expect(one(note, 'myopic-maculopathy-meaning').value).toBe('diffuse chorioretinal atrophy');
    const context = JSON.stringify(one(note, 'retinal-detachment-context').value);
    expect(context).toContain('3.98');
    expect(context).toContain('Petousis');
  });
});

describe('time and reviews', () => {
  const note = `start: 23:50
finish: 23:59
patient:
  born: 1981
${biometry(27, '43.00 D @ 180', '43.00 D @ 90', 3.6)}reviews:
  - what: pressure, wound
    due: 1 day
`;
  test('age and duration', () => {
    const computed = compute(operation(note));
    expect(one(computed, 'age-at-operation')).toMatchObject({ value: 52, display: '52 years' });
    expect(one(computed, 'operation-duration')).toMatchObject({ value: 9, display: '9 min' });
    expect(why(compute(operation(note.replace('23:59', '00:15'))), 'operation-duration')).toContain('before the start');
  });
  test("reviews of the note and of the department's schedule for such an eye", () => {
    const computed = compute(operation(note), { department });
    expect(one(computed, 'review-date')).toMatchObject({ value: '2033-05-18', path: ['reviews', 0, 'due'] });
    expect(one(computed, 'review-dates').value).toEqual([
      { what: 'pressure, wound', due: '2033-05-18', by: 'note' },
      { what: 'dilated peripheral retina', due: '2033-06-14', by: "department's schedule" },
    ]);
  });
  test('overdue ones need today, and a visit of the set meets them', () => {
    expect(why(compute(operation(note), { department }), 'overdue-reviews')).toContain('date is not known');
    const late = compute(operation(note), { department, today: '2033-06-20' });
    expect(one(late, 'overdue-reviews')).toMatchObject({
      value: [
        { what: 'pressure, wound', due: '2033-05-18', days: 33 },
        { what: 'dilated peripheral retina', due: '2033-06-14', days: 6 },
      ],
      inline: true,
    });
    const files = {
      'visit.opnote.yaml':
        'opnote: 1\nrecord: follow-up\nid: FU-1\noperation: OP-2033-0100\ndate: 2033-06-13\neye: left\n',
    };
    const met = one(compute(operation(note), { department, today: '2033-06-20', files }), 'overdue-reviews');
    expect(met).toMatchObject({ value: [], inline: false });
  });
});
