import { describe, expect, test } from 'vitest';
import { compute, department, one, operation, visit, why } from './notes.ts';

const before = operation(`preop:
  acuity:
    corrected: 6/60
  refraction: -1.00 / -0.50 x 90
  biometry:
    method: optical
    axial-length: 30.00 mm
    k1: 42.00 D @ 180
    k2: 44.00 D @ 90
    chamber-depth: 3.60 mm
plan:
  target: -1.00 D
  predicted: -1.10 D
  predicted-by: SRK/T
  lens:
    maker: Halden Optics
    model: HX-1
    power: +5.0 D
incisions:
  - kind: main
    at: 90°
    width: 2.8 mm
lens:
  maker: Halden Optics
  model: HX-1
  power: +5.0 D
  placed: capsular bag
`);
const after = visit(`acuity:
  corrected: 6/12
refraction: -0.25 / -1.00 x 170
keratometry:
  k1: 42.50 D @ 150
  k2: 44.50 D @ 60
`);
const together = (text = after, partner = before) =>
  compute(text, { department, files: { 'op.opnote.yaml': partner, 'visit.opnote.yaml': text } });

describe('cornea before and after, as check case C029', () => {
  const note = together();
  test('induced astigmatism and its parts at the incision', () => {
    expect(one(note, 'induced-astigmatism').value).toEqual({
      magnitude: expect.closeTo(2, 9),
      axis: expect.closeTo(30, 6),
    });
    expect(one(note, 'flattening-effect').value).toBeCloseTo(1, 6);
    expect(one(note, 'torque').value).toBeCloseTo(1.732051, 5);
    expect(one(note, 'induced-astigmatism').path).toEqual(['keratometry', 'k2']);
  });
  test.each([
    ['magnitude-of-error', 0],
    ['angle-of-error', 30],
    ['correction-index', 1],
    ['flattening-index', 0.5],
    ['index-of-success', 1],
  ])('%s', (name, value) => {
    expect(one(note, name).value).toBeCloseTo(value, 5);
    expect(one(note, name).cautions.join()).toContain('The target is taken as no corneal astigmatism');
  });
  test('the intended change and what is left', () => {
    expect(one(note, 'target-induced-astigmatism').value).toEqual({ magnitude: expect.closeTo(2, 9), axis: 180 });
    expect(one(note, 'difference-vector').value).toEqual({
      magnitude: expect.closeTo(2, 9),
      axis: expect.closeTo(150, 6),
    });
  });
});

describe('refraction', () => {
  test('the whole change at the cornea, as check case C035', () => {
    const note = together();
    const { value } = one(note, 'refractive-change');
    expect(value).toEqual({
      sphere: expect.closeTo(1.214364, 5),
      cylinder: expect.closeTo(-1.447887, 5),
      axis: expect.closeTo(173.291601, 4),
    });
    expect(one(note, 'change-with-the-wound').value).toBeCloseTo(-0.213766, 5);
    expect(one(note, 'change-against-the-wound').value).toBeCloseTo(1.194606, 5);
    expect(one(note, 'refraction-at-cornea').cautions.join()).toContain('No vertex distance is written');
  });
  test('the error is against the recorded prediction, not the target', () => {
    const note = together();
    expect(one(note, 'prediction-error')).toMatchObject({ display: '+0.35 D', inputs: { predicted: -1.1 } });
    expect(one(note, 'prediction-error').method).toContain('the recorded prediction (SRK/T)');
    expect(one(note, 'difference-from-target').value).toBeCloseTo(0.25, 9);
  });
  test('where another power went in, against the prediction for that power', () => {
    const other = before.replace('  power: +5.0 D\n  placed', '  power: +6.0 D\n  placed');
    const error = one(together(after, other), 'prediction-error');
    // One dioptre of lens power is about 0.65 D of refraction in so long an eye; the 5 D lens is check case C048.
    expect(error.inputs['predicted']).toBeCloseTo(-1.082 - 0.65, 1);
    expect(error.cautions.join()).toContain('Another lens than planned was implanted');
    expect(error.value).toBeGreaterThan(0.9);
  });
  test('a lens outside the bag is not what the constant describes', () => {
    const sulcus = before.replace('placed: capsular bag', 'placed: sulcus');
    expect(one(together(after, sulcus), 'prediction-error').cautions.join()).toContain('elsewhere than in the bag');
  });
  test('where no prediction can be had, nothing is computed', () => {
    const other = before.replace(/ {2}predicted(-by)?:.*\n/gu, '').replaceAll('HX-1', 'XX-9');
    expect(why(together(after, other), 'prediction-error')).toContain('does not have the model XX-9');
  });
});

test('lines and letters gained, each acuity against its own kind', () => {
  const note = together();
  expect(one(note, 'lines-gained').value).toBeCloseTo(6.9897, 3);
  expect(one(note, 'letters-gained').value).toBeCloseTo(34.9485, 3);
  const counted = together(after, before.replace('corrected: 6/60', 'corrected: CF'));
  expect(one(counted, 'lines-gained').cautions.join()).toContain('rests on a scheme');
  const uncounted = together(after, before.replace('corrected', 'uncorrected'));
  expect(why(uncounted, 'lines-gained')).toBe('the corrected acuity before the operation is missing');
});

test('the day of the visit; a visit without its operation says so', () => {
  expect(one(together(), 'days-after-operation')).toMatchObject({ value: 28 });
  const alone = compute(after);
  expect(why(alone, 'days-after-operation')).toBe('the operation OP-2033-0100 is not in this set');
  expect(why(alone, 'prediction-error')).toBe('the operation OP-2033-0100 is not in this set');
  expect(why(alone, 'induced-astigmatism')).toBe('the operation OP-2033-0100 is not in this set');
  expect(one(alone, 'spherical-equivalent').value).toBe(-0.75);
});

test('an earlier gap is named as the gap of the operation', () => {
  const note = together(after, before.replace(/ {4}k2:.*\n/u, ''));
  expect(why(note, 'induced-astigmatism')).toBe('before the operation, K2 is missing');
});

describe('toric lens', () => {
  const toric = before
    .replace('model: HX-1\n    power: +5.0 D', 'model: HX-1\n    power: +5.0 D\n    cylinder: 3.0 D\n    axis: 90°')
    .replace('  power: +5.0 D\n  placed', '  power: +5.0 D\n  cylinder: 3.0 D\n  axis: 95°\n  placed');
  test('the cylinder is brought to the cornea by the eye’s own ratio (trap 14)', () => {
    const note = compute(toric, { department });
    const lens = one(note, 'corneal-plane-cylinder', 'lens.cylinder');
    expect(lens.value).toBeLessThan(3 / 1.29);
    expect(lens.value).toBeGreaterThan(3 / 1.86);
    expect(one(note, 'lens-rotation').value).toBe(5);
    expect(one(note, 'rotation-effect').value).toBeCloseTo(Number(lens.value) * 0.174311, 5);
  });
  test('the axis found at a visit is held against the axis at the end of the operation', () => {
    const found = visit('refraction: -0.25 / -1.00 x 170\nlens:\n  axis: 101°\n');
    const note = together(found, toric);
    expect(one(note, 'lens-rotation')).toMatchObject({ value: 6, inputs: { 'axis-at-end': 95, 'axis-found': 101 } });
    expect(one(note, 'residual-astigmatism').path).toEqual(['lens', 'axis']);
  });
  test('it is judged by the refraction, at the corneal plane', () => {
    const note = together(after, toric);
    expect(one(note, 'difference-vector')).toMatchObject({ path: ['refraction'], display: '0.98 D @ 170°' });
    expect(one(note, 'correction-index').cautions.join()).toContain('Toric lens');
    expect(one(note, 'induced-astigmatism').path).toEqual(['keratometry', 'k2']);
  });
});
