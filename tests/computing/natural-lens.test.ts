import { describe, expect, test } from 'vitest';
import { compute, department, one, operation, why } from './notes.ts';

const torn = 'capsule-state:\n  posterior: torn\n  zonule: ruptured\n  vitreous: prolapsed\n';
const person = 'patient:\n  born: 1950\n  sex: female\n';
const eye =
  'preop:\n  biometry:\n    axial-length: 23.5 mm\n    k1: 43.00 D @ 180\n    k2: 44.00 D @ 90\n    chamber-depth: 4.1 mm\n';
const plan = 'plan:\n  target: -0.50 D\n  formula: [Haigis]\n  lens:\n    maker: Halden Optics\n    model: HX-1\n';

// UK national cataract audit: the rate is one of cataract operations; Narendran et al. 2009 describe the same.
describe('an operation that removes no natural lens', () => {
  test.each([
    ['procedure: secondary lens\n', 'a secondary lens does not remove the natural lens'],
    ['diagnosis:\n  cataract: [aphakia]\n', 'the diagnosis is aphakia'],
    ['procedure: lens exchange\ndiagnosis:\n  cataract: [pseudophakia]\n', 'the diagnosis is pseudophakia'],
  ])('%s is no case of the rupture audit and has no risk by its model', (head, because) => {
    const note = compute(operation(head + person + torn));
    expect(why(note, 'posterior-capsule-rupture')).toContain(because);
    expect(why(note, 'rupture-risk')).toContain(because);
  });

  test('has no chamber depth that Haigis could use', () => {
    const note = compute(operation(`diagnosis:\n  cataract: [aphakia]\n${eye}${plan}`), { department });
    expect(why(note, 'lens-power-haigis')).toContain('the chamber depth of the eye with its natural lens');
    expect(one(note, 'lens-power-srk-t').value).toBeTypeOf('number');
  });
});

describe('what was so before the operation', () => {
  test('does not count as happened in it', () => {
    const state = 'capsule-state:\n  posterior: intact\n  zonule: ruptured\n  vitreous: prolapsed\n';
    expect(one(compute(operation(state)), 'posterior-capsule-rupture').value).toBe(true);
    const before = compute(operation(`${state}  before: [zonule, vitreous]\n`));
    expect(one(before, 'posterior-capsule-rupture').value).toBe(false);
  });
});

describe('the risk model', () => {
  test('says what it does not know of an eye', () => {
    const note = compute(operation(`${person}diagnosis:\n  cataract: [posterior polar]\n`));
    expect(one(note, 'rupture-risk').cautions).toContain(
      'The model does not know a posterior polar cataract: the risk of this eye is higher.',
    );
  });

  test('describes adults', () => {
    expect(why(compute(operation('patient:\n  born: 2027\n')), 'rupture-risk')).toContain('18');
  });
});

describe('constants for minus powers', () => {
  const long = eye.replace('23.5 mm', '33.0 mm');
  const listed = (minus: string): string =>
    `sideport: 1\nlenses:\n  - maker: Halden Optics\n    model: HX-1\n    constants:\n      a: 118.9\n    minus-constants:\n      ${minus}\n`;

  // Published A constants for minus powers lie near 104 (J Cataract Refract Surg letter of 2010, quoted: 104.43).
  test('near 104 are used, though they put the lens before the cornea', () => {
    const note = compute(operation(long + plan), { department: listed('a: 104.43') });
    const power = one(note, 'lens-power-srk-t');
    expect(power.inputs['a-constant']).toBe(104.43);
    expect(power.cautions).toContain('Computed with the constant for minus powers.');
    expect(power.value).toBeLessThan(0);
    expect(power.value).toBeGreaterThan(-2);
  });

  test('that cannot be used are never left out silently', () => {
    const note = compute(operation(long + plan), { department: listed('a0: -5.0') });
    expect(one(note, 'lens-power-srk-t').cautions.join(' ')).toContain(
      'Not computed with the constants for minus powers of HX-1: the A constant of HX-1 is missing',
    );
  });
});

describe('a capsulotomy without an unbroken rim', () => {
  test.each(['outcome: converted to can-opener', 'outcome: radial tear', 'technique: can-opener'])(
    '%s has no overlap',
    (line) => {
      const round = `capsulotomy:\n  diameter: 5.0 mm\n  off-centre: centred\n  ${line}\nlens:\n  optic-diameter: 6.0 mm\n`;
      const note = compute(operation(round));
      expect(note.values.filter(({ name }) => name.startsWith('capsulotomy-'))).toEqual([]);
      expect(why(note, 'capsulotomy-overlap-least')).toContain('its rim is not unbroken');
    },
  );
});
