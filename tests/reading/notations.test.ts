import { describe, expect, test } from 'vitest';
import { recordPlan, fieldsBelow, type Fault, type Notation } from '@sideport/schemas';
import { acuity } from '@sideport/schemas/notation/acuity.ts';
import { dose } from '@sideport/schemas/notation/dose.ts';
import { haptics } from '@sideport/schemas/notation/haptics.ts';
import { due } from '@sideport/schemas/notation/interval.ts';
import { keratometry } from '@sideport/schemas/notation/keratometry.ts';
import { offset } from '@sideport/schemas/notation/offset.ts';
import { count, pieces } from '@sideport/schemas/notation/plain.ts';
import { quantityIn } from '@sideport/schemas/notation/quantity.ts';
import { refraction } from '@sideport/schemas/notation/refraction.ts';
import { regimen } from '@sideport/schemas/notation/regimen.ts';
import { ringSize } from '@sideport/schemas/notation/ring-size.ts';
import { site } from '@sideport/schemas/notation/site.ts';
import { calendarDate, dateAndTime, expiryDate, timeOfDay } from '@sideport/schemas/notation/time.ts';
import { dyes, ovdAgents } from '@sideport/schemas/vocabulary/theatre.ts';

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

  // The abbreviations are those of British and American prescriptions (from memory).
  test.each([
    ['qds', 4, undefined],
    ['q.d.s. for 4/52', 4, 28],
    ['QID for 4 weeks', 4, 28],
    ['tds 2/52', 3, 14],
    ['t.i.d. 3/7', 3, 3],
    ['bd for 1 month', 2, 30],
    ['bid x 2 weeks', 2, 14],
    ['nocte', 1, undefined],
    ['4x/day', 4, undefined],
    ['1 drop 4 times a day for a month', 4, 30],
    ['qds for 2/12 then stop', 4, 60],
    ['every 2 hours while awake for 1 week', 12, 7],
    ['6/5/4/3/2/1 weekly', 6, 42],
    ['qds reducing weekly', 4, undefined],
    ['4 times a day, reducing weekly over 4 weeks', 4, 28],
    ['stat', 1, 1],
    ['1 drop stat, then qds for 4 weeks', 4, 28],
    ['qds for 1 week, tds for 1 week, bd for 1 week', 4, 21],
    ['4 times a day, for 4 weeks', 4, 28],
    ['4 times a day as needed', 4, undefined],
    ['prn', undefined, undefined],
  ])('regimen: %s', (text, timesDaily, days) => {
    const wanted = { ...(timesDaily === undefined ? {} : { timesDaily }), ...(days === undefined ? {} : { days }) };
    expect(value(regimen, text)).toEqual(wanted);
  });

  test.each(['od', 'QD for 2 weeks', '1/7 weekly', '2 weeks', '1/52', 'reducing weekly', ''])(
    'regimen: “%s” is not guessed',
    (text) => {
      expect(value(regimen, text)).toBe('unreadable-value');
    },
  );

  test.each([
    ['day 1', 1, 'day'],
    ['D1', 1, 'day'],
    ['1/7', 1, 'day'],
    ['2/52', 2, 'week'],
    ['6/12', 6, 'month'],
    ['24 hours', 1, 'day'],
    ['1 wk', 1, 'week'],
    ['same day', 0, 'day'],
    ['2-3 weeks', 3, 'week'],
    ['4 to 6 weeks', 6, 'week'],
  ])('due: %s', (text, number, unit) => {
    expect(value(due, text)).toEqual({ kind: 'after', count: number, unit });
  });

  test.each(['30 hours', '3/9', '1 m', '2-3'])('due: “%s” is not guessed', (text) => {
    expect(value(due, text)).toBe('unreadable-value');
  });

  test('acuity as it is noted in clinics', () => {
    expect(value(acuity, 'CF 1 m')).toEqual({ kind: 'category', category: 'CF' });
    expect(value(acuity, 'HM close to face')).toEqual({ kind: 'category', category: 'HM' });
    expect(value(acuity, 'LP+')).toEqual({ kind: 'category', category: 'PL' });
    expect(value(acuity, 'PL 1 m')).toBe('unreadable-value');
    expect(value(acuity, '6/9p')).toEqual({ kind: 'fraction', distance: 6, line: 9, letters: 0 });
    expect(value(acuity, '6/9 partial')).toMatchObject({ line: 9 });
    expect(value(acuity, '1.0 logMAR')).toEqual({ kind: 'logmar', logmar: 1 });
  });

  // Five letters a line of 0.1 logMAR, 85 letters being 0.0 (Ferris et al. 1982, from memory).
  test.each([
    ['85 letters', 0],
    ['55 letters', 0.6],
    ['35 ETDRS letters', 1],
    ['ETDRS 90', -0.1],
  ])('acuity: %s', (text, logmar) => {
    expect(value(acuity, text)).toEqual({ kind: 'logmar', logmar });
  });

  test('a bare number is no score of letters, nor is one that no chart has', () => {
    expect(value(acuity, '55')).toBe('unreadable-value');
    expect(value(acuity, '0 letters')).toBe('unreadable-value');
    expect(value(acuity, '105 letters')).toBe('unreadable-value');
  });

  test('refraction with the words behind its numbers; no power at all', () => {
    expect(value(refraction, '-2.0 sph')).toEqual({ sphere: -2, cylinder: 0, axis: null });
    expect(value(refraction, '-2.00 DS / -0.50 DC x 90')).toEqual({ sphere: -2, cylinder: -0.5, axis: 90 });
    const power = quantityIn('D', { signed: true, example: '+5.5 D' });
    expect(value(power, 'plano')).toMatchObject({ amount: 0 });
    expect(power.write?.('plano')).toBe('plano');
    expect(value(quantityIn('mm', { example: '2.2 mm' }), 'plano')).toBe('unreadable-value');
  });

  test('clock hours without the word', () => {
    expect(value(site, '11h')).toEqual({ kind: 'clock', hour: 11, view: 'anatomical' });
    expect(value(site, '11:00')).toMatchObject({ hour: 11 });
    expect(value(site, '10:30')).toMatchObject({ hour: 10.5 });
    expect(value(site, '13:00')).toBe('unreadable-value');
    expect(value(site, '10.30°')).toEqual({ kind: 'degrees', degrees: 10.3 });
    expect(value(site, '10.5')).toEqual({ kind: 'degrees', degrees: 10.5 });
  });

  test('what may be an hour or degrees is not guessed', () => {
    expect(site.read('10.30')).toMatchObject({
      ok: false,
      fault: {
        message: "“10.30” may be a clock hour or degrees. Write 10:30 o'clock or 10.3°, whichever is meant.",
      },
    });
    expect(offset.read('0.3 mm toward 10.30')).toEqual(site.read('10.30'));
  });

  test('haptics lie opposite each other', () => {
    expect(value(haptics, 'vertical')).toEqual({ kind: 'degrees', degrees: 90 });
    expect(value(haptics, 'horizontal')).toEqual({ kind: 'degrees', degrees: 0 });
    expect(value(haptics, "3 and 9 o'clock")).toMatchObject({ kind: 'clock', hour: 3 });
    expect(value(haptics, '12-6')).toMatchObject({ kind: 'clock', hour: 12 });
    expect(value(haptics, '90° and 270°')).toEqual({ kind: 'degrees', degrees: 90 });
    expect(value(haptics, "3 and 8 o'clock")).toBe('unreadable-value');
    expect(haptics.write?.('12-6')).toBe('12-6');
  });

  test('offsets with their direction as an adverb', () => {
    expect(value(offset, '0.3 mm nasal')).toEqual({ distance: 0.3, toward: { kind: 'word', word: 'nasal' } });
    expect(value(offset, '0.3 mm nasally')).toEqual({ distance: 0.3, toward: { kind: 'word', word: 'nasal' } });
    expect(offset.write?.('0.3 mm nasally')).toBe('0.3 mm toward nasal');
    expect(value(offset, '0.3 mm 90')).toBe('unreadable-value');
    expect(value(offset, '0.3 mm')).toBe('unreadable-value');
  });

  test('doses in drops, units and strengths', () => {
    expect(value(dose, '1 drop')).toEqual({ drops: 1 });
    expect(value(dose, '20 IU')).toEqual({ units: 20 });
    expect(value(dose, '20 U')).toBe('wrong-unit');
    // 1 % is 1 g in 100 mL (from memory).
    expect(value(dose, '0.1 mL of 40 mg/mL')).toEqual({ volume: 0.1, strength: 4 });
    expect(value(dose, '1 mg/0.1 mL')).toEqual({ mass: 1, volume: 0.1 });
  });

  test('minutes and seconds', () => {
    const seconds = quantityIn('s', { example: '48 s' });
    expect(value(seconds, '1 min 24 s')).toMatchObject({ amount: 84 });
    expect(value(seconds, '1:24')).toMatchObject({ amount: 84 });
    expect(value(seconds, '0:32')).toMatchObject({ amount: 32 });
    expect(seconds.write?.('1:24')).toBe('1:24');
    expect(value(seconds, '1:75')).toBe('unreadable-value');
    expect(value(quantityIn('min', { example: '3 min' }), '1:24')).toBe('unreadable-value');
  });

  test('numbers of things in words', () => {
    expect(value(count, 'two')).toBe(2);
    expect(value(pieces, 'three')).toBe(3);
    expect(value(pieces, 'single-piece')).toBe(1);
    expect(value(pieces, '3-piece')).toBe(3);
    expect(value(pieces, 'blue')).toBe('unreadable-value');
  });

  test('agents with their strength, which is kept', () => {
    expect(value(dyes, 'trypan blue 0.06%')).toBe('trypan blue');
    expect(dyes.write?.('trypan 0.06%')).toBe('trypan blue 0.06 %');
    expect(value(ovdAgents, 'hyaluronic acid 1 %')).toBe('sodium hyaluronate');
    expect(value(dyes, 'blue 0.06%')).toBe('unknown-word');
  });

  test('an expiry with the month first is turned round', () => {
    expect(expiryDate.read('12/2027')).toMatchObject({ ok: false, fault: { suggestion: '2027-12' } });
    expect(expiryDate.read('12/27')).not.toMatchObject({ fault: { suggestion: expect.any(String) as string } });
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
