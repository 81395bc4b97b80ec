import { describe, expect, test } from 'vitest';
import { recordPlan, fieldsBelow, type Fault, type Notation } from '@sideport/schemas';
import { acuity } from '@sideport/schemas/notation/acuity.ts';
import { dose } from '@sideport/schemas/notation/dose.ts';
import { due } from '@sideport/schemas/notation/interval.ts';
import { keratometry } from '@sideport/schemas/notation/keratometry.ts';
import { offset } from '@sideport/schemas/notation/offset.ts';
import { quantityIn } from '@sideport/schemas/notation/quantity.ts';
import { refraction } from '@sideport/schemas/notation/refraction.ts';
import { regimen } from '@sideport/schemas/notation/regimen.ts';
import { ringSize } from '@sideport/schemas/notation/ring-size.ts';
import { site } from '@sideport/schemas/notation/site.ts';
import { calendarDate, dateAndTime, expiryDate, timeOfDay } from '@sideport/schemas/notation/time.ts';

function value(notation: Notation<unknown>, text: string): unknown {
  const reading = notation.read(text);
  return reading.ok ? reading.value : reading.fault.check;
}

describe('quantities', () => {
  const mm = quantityIn('mm', { example: '2.2 mm' });
  const dioptres = quantityIn('D', { signed: true, example: '+5.5 D' });
  const pressure = quantityIn('mmHg', { example: '15 mmHg' });

  test('keep the decimals as typed', () => {
    expect(value(dioptres, '+21.50 D')).toEqual({ amount: 21.5, unit: 'D', typed: '+21.50', typedUnit: 'D' });
    expect(value(mm, '2.20')).toEqual({ amount: 2.2, unit: 'mm', typed: '2.20' });
  });

  test('understand signs, also typographic ones, and powers below zero', () => {
    expect(value(dioptres, '−3.0 D')).toMatchObject({ amount: -3 });
    expect(value(dioptres, '0 D')).toMatchObject({ amount: 0 });
    expect(value(mm, '-2.2 mm')).toBe('unreadable-value');
  });

  test('convert units of the same kind', () => {
    expect(value(quantityIn('µm', { example: '545 µm' }), '0.545 mm')).toMatchObject({ amount: 545, typedUnit: 'mm' });
    // NIST SP 811, table B.8: 1 cmH2O = 98.0665 Pa, 1 mmHg = 133.3224 Pa.
    expect(value(pressure, '60 cmH2O')).toMatchObject({ amount: expect.closeTo((60 * 98.0665) / 133.3224, 3) });
  });

  test('refuse units that measure something else, and decimal commas', () => {
    expect(value(mm, '2.2 D')).toBe('wrong-unit');
    expect(value(mm, '2.2 furlongs')).toBe('wrong-unit');
    expect(mm.read('2,2 mm')).toEqual({
      ok: false,
      fault: {
        check: 'decimal-comma',
        message: '“2,2 mm” has a decimal comma; write a point: 2.2 mm.',
        suggestion: '2.2 mm',
      },
    });
  });

  // NIST SP 811, 10.5.3 (from memory): digits are grouped by a thin space and not by a comma, which is a decimal sign elsewhere.
  test.each([
    [dose, '1,000 µg', '1.000', '1000'],
    [dose, '1,000 µg in 0,1 mL', '1.000', '1000'],
    [quantityIn('/mm²', { example: '2150 /mm²' }), '2,150 /mm²', '2.150', '2150'],
    [dioptres, '+1,250 D', '1.250', '1250'],
    [refraction, '-1,250', '1.250', '1250'],
    [keratometry, '43,250 D @ 5', '43.250', '43250'],
  ])('suggest nothing for a comma that may mark the thousands: %#', (notation, text, point, whole) => {
    const { fault } = notation.read(text) as { readonly fault: Fault };
    expect(fault.check).toBe('decimal-comma');
    expect(fault.suggestion).toBeUndefined();
    expect(fault.message).toContain(`Write ${point} or ${whole}, whichever is meant.`);
  });

  test('a comma behind a nought can only stand for a point', () => {
    expect(dose.read('0,125 mg')).toMatchObject({ fault: { suggestion: '0.125 mg' } });
  });

  test('are written with their unit', () => {
    expect(mm.write?.('2.20')).toBe('2.20 mm');
    expect(dioptres.write?.('+5.5D')).toBe('+5.5 D');
    expect(quantityIn('°', { example: '95°' }).write?.('95 degrees')).toBe('95°');
  });
});

describe('the notations of the trade', () => {
  test('keratometry in dioptres and in mm', () => {
    expect(value(keratometry, '43.25 D @ 5')).toEqual({ amount: 43.25, unit: 'D', typed: '43.25', meridian: 5 });
    expect(value(keratometry, '7.65 mm @ 95')).toMatchObject({ amount: 7.65, unit: 'mm', meridian: 95 });
    expect(value(keratometry, '44.12')).toMatchObject({ unit: 'D', meridian: null });
    expect(value(keratometry, '7.65')).toMatchObject({ unit: 'mm' });
    expect(value(keratometry, '43.25 D @ 200')).toBe('unreadable-value');
  });

  test('refraction in either sign of cylinder', () => {
    expect(value(refraction, '-14.25 / -1.50 x 95')).toEqual({ sphere: -14.25, cylinder: -1.5, axis: 95 });
    expect(value(refraction, '-0.75 +1.25 x 70')).toEqual({ sphere: -0.75, cylinder: 1.25, axis: 70 });
    expect(value(refraction, 'plano')).toEqual({ sphere: 0, cylinder: 0, axis: null });
    expect(value(refraction, '-2.00 DS')).toEqual({ sphere: -2, cylinder: 0, axis: null });
    expect(value(refraction, '-1.00 / -0.50')).toBe('unreadable-value');
    expect(value(refraction, '+75 / -0.75 x 175')).toBe('unreadable-value');
    expect(value(refraction, '-1.50 / -50 x 95')).toBe('unreadable-value');
    expect(value(refraction, '-36.00 / -4.00 x 10')).toMatchObject({ sphere: -36 });
  });

  test('acuity in every notation', () => {
    expect(value(acuity, '6/24')).toMatchObject({ kind: 'fraction', distance: 6, line: 24 });
    expect(value(acuity, '20/80')).toMatchObject({ kind: 'fraction', distance: 20, line: 80 });
    expect(value(acuity, '6/9 -2')).toMatchObject({ letters: -2 });
    expect(value(acuity, '0.25')).toEqual({ kind: 'decimal', decimal: 0.25 });
    expect(value(acuity, 'logMAR 0.60')).toEqual({ kind: 'logmar', logmar: 0.6 });
    expect(value(acuity, 'NLP')).toEqual({ kind: 'category', category: 'NPL' });
    expect(value(acuity, '6/4')).toMatchObject({ kind: 'fraction', distance: 6, line: 4 });
    expect(value(acuity, '24/6')).toBe('unreadable-value');
    expect(value(acuity, '6/0')).toBe('unreadable-value');
    expect(value(acuity, 'logMAR 9.0')).toBe('unreadable-value');
    expect(value(acuity, 'logMAR -0.20')).toMatchObject({ logmar: -0.2 });
  });

  test('places: degrees, words, hours of either clock', () => {
    expect(value(site, '100°')).toEqual({ kind: 'degrees', degrees: 100 });
    expect(value(site, 'superotemporal')).toEqual({ kind: 'word', word: 'superotemporal' });
    expect(value(site, "11 o'clock")).toEqual({ kind: 'clock', hour: 11, view: 'anatomical' });
    expect(value(site, '11 o’clock')).toEqual({ kind: 'clock', hour: 11, view: 'anatomical' });
    expect(value(site, "7:30 o'clock")).toMatchObject({ hour: 7.5 });
    expect(value(site, "4 o'clock, surgeon's view")).toEqual({ kind: 'clock', hour: 4, view: 'surgeon' });
    expect(value(site, "13 o'clock")).toBe('unreadable-value');
    expect(value(site, '400°')).toBe('unreadable-value');
  });

  test.each(['°', 'º', '˚'])('%s counts as the sign of a degree', (sign) => {
    expect(value(site, `100${sign}`)).toEqual({ kind: 'degrees', degrees: 100 });
    expect(value(keratometry, `43.25 D @ 5${sign}`)).toMatchObject({ meridian: 5 });
    expect(value(refraction, `-14.25 / -1.50 x 95${sign}`)).toMatchObject({ axis: 95 });
    expect(value(quantityIn('°', { example: '95°' }), `95${sign}`)).toMatchObject({ amount: 95 });
  });

  test('offsets keep “not measured” apart from zero', () => {
    expect(value(offset, "0.3 mm toward 3 o'clock")).toMatchObject({
      distance: 0.3,
      toward: { kind: 'clock', hour: 3 },
    });
    expect(value(offset, 'toward nasal')).toEqual({ distance: null, toward: { kind: 'word', word: 'nasal' } });
    expect(value(offset, 'centred')).toEqual({ distance: 0 });
  });

  test('doses, regimens, rings, due dates', () => {
    expect(value(dose, '1 mg in 0.1 mL')).toEqual({ mass: 1, volume: 0.1 });
    expect(value(dose, '500 µg in 0.1 ml')).toEqual({ mass: 0.5, volume: 0.1 });
    expect(value(dose, '5 %')).toEqual({ strength: 5 });
    expect(value(regimen, '4 times a day for 4 weeks')).toEqual({ timesDaily: 4, days: 28 });
    expect(value(regimen, 'once daily')).toEqual({ timesDaily: 1 });
    expect(value(regimen, 'four times daily')).toEqual({ timesDaily: 4 });
    expect(value(regimen, 'every 2 hours for 1 week, then 4 times a day for 3 weeks')).toEqual({
      timesDaily: 12,
      days: 28,
    });
    expect(value(regimen, '4 times a day for 2 weeks, then tapering')).toEqual({ timesDaily: 4, days: 14 });
    expect(value(regimen, '0 times a day')).toBe('unreadable-value');
    expect(value(ringSize, '11/13')).toEqual({ free: 13, compressed: 11 });
    expect(value(due, '4 weeks')).toEqual({ kind: 'after', count: 4, unit: 'week' });
    expect(value(due, '2031-04-11')).toEqual({ kind: 'date', date: '2031-04-11' });
  });

  test('dates are days of the calendar (ISO 8601)', () => {
    expect(value(calendarDate, '2032-02-29')).toBe('2032-02-29');
    expect(value(calendarDate, '2031-02-29')).toBe('unreadable-value');
    expect(value(expiryDate, '2034-06')).toBe('2034-06');
    expect(value(expiryDate, '2034-13')).toBe('unreadable-value');
    expect(value(timeOfDay, '9:12')).toBe('09:12');
    expect(value(timeOfDay, '25:12')).toBe('unreadable-value');
    expect(value(dateAndTime, '2031-03-14T10:02+01:00')).toBe('2031-03-14T10:02+01:00');
    expect(value(dateAndTime, '2031-03-14T10:02')).toBe('unreadable-value');
  });
});

describe('the field guide', () => {
  const all = (['operation', 'follow-up', 'amendment', 'department'] as const).flatMap((kind) =>
    [...fieldsBelow(recordPlan(kind))].map(({ path, plan }) => ({ name: `${kind}: ${path.join('.')}`, plan })),
  );

  test('has an example for every value, which its own notation reads and whose tidy form is stable', () => {
    for (const { name, plan } of all) {
      if (plan.kind !== 'value') continue;
      const example = plan.guide.example ?? plan.notation.examples[0];
      if (example === undefined) continue;
      const reading = plan.notation.read(example);
      expect(reading.ok, `${name}: ${example}`).toBe(true);
      const tidy = plan.notation.write?.(example) ?? example;
      expect(plan.notation.read(tidy), name).toEqual(reading);
      expect(plan.notation.write?.(tidy) ?? tidy, name).toBe(tidy);
    }
  });

  test('names every field in the trade’s way: lower-case words joined by hyphens', () => {
    for (const { name } of all) expect(name.split(': ')[1]).toMatch(/^[a-z][a-z0-9-]*(?:\.[a-z][a-z0-9-]*)*$/u);
  });

  test('keeps usual limits inside possible ones', () => {
    for (const { name, plan } of all) {
      const { possible, usual } = plan.guide;
      if (possible === undefined || usual === undefined) continue;
      expect(usual[0], name).toBeGreaterThanOrEqual(possible[0]);
      expect(usual[1], name).toBeLessThanOrEqual(possible[1]);
    }
  });
});
