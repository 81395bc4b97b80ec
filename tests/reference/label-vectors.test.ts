import { describe, expect, test } from 'vitest';
import { gs1CheckDigit, gs1CheckPair, hibcCheckCharacter } from '../../server/src/note/label/check-digits.ts';
import { fullYear, labelDate } from '../../server/src/note/label/label-dates.ts';
import { readLabel } from '../../server/src/note/label/label.ts';

const GS = String.fromCharCode(0x1d);

describe('GS1 check digit', () => {
  // gs1.org manual check digit page; GS1 UK, GS1 India and GS1 Sweden sheets.
  test.each([
    ['629104150021', '3'],
    ['501234567890', '0'],
    ['890400021003', '7'],
    ['730001100001', '7'],
    ['5102222223333', '6'],
  ])('%s takes %s', (body, digit) => expect(gs1CheckDigit(body)).toBe(digit));

  // GS1 Barcode Syntax Dictionary, unit tests of the check `csum`.
  test.each(['02345673', '416000336108', '1234567890128', '12345678901231', '123456789012345675'])(
    '%s passes',
    (whole) => expect(gs1CheckDigit(whole.slice(0, -1))).toBe(whole.slice(-1)),
  );
  test.each(['12345673', '416000336109', '1234567890129', '12345678901232', '123456789012345670'])(
    '%s fails',
    (whole) => expect(gs1CheckDigit(whole.slice(0, -1))).not.toBe(whole.slice(-1)),
  );
  test.each([' 2345678901234567', '12345678 01234567'])('%j is not a number', (body) =>
    expect(gs1CheckDigit(body)).toBeUndefined(),
  );
});

describe('GS1 check character pair', () => {
  // GS1 Barcode Syntax Dictionary, unit tests of the check `csumalpha`.
  test.each([
    '22',
    '!22',
    '!!22',
    '1987654Ad4X4bL5ttr2310c2K',
    '12345678901234567890123NT',
    '12345_ABCDEFGHIJKLMCP',
    '12345_NOPQRSTUVWXYZDN',
    '12345_abcdefghijklmN3',
    '12345_nopqrstuvwxyzP2',
    '12345_!"%&\'()*+,-./LC',
    '12345_0123456789:;<=>?62',
    '7907665Bm8v2AB',
    '97850l6KZm0yCD',
    '225803106GSpEF',
    '149512464PM+GH',
    '62577B8fRG7HJK',
    '515942070CYxLM',
    '390800494sP6NP',
    '386830132uO+QR',
    '53395376X1:nST',
    '957813138Sb6UV',
    '530790no0qOgWX',
    '62185314IvwmYZ',
    '23956qk1&dB!23',
    '794394895ic045',
    '57453Uq3qA<H67',
    '0881063PhHvY89',
    '00000!HV',
    '99999zzzzzzzzzzzzzzzzzzT2',
  ])('%s passes', (whole) => expect(gs1CheckPair(whole.slice(0, -2))).toBe(whole.slice(-2)));
  test.each(['33', '1987654Ad4X4bL5ttr2310cXK', '1987654Ad4X4bL5ttr2310c2X'])('%s fails', (whole) =>
    expect(gs1CheckPair(whole.slice(0, -2))).not.toBe(whole.slice(-2)),
  );
  test.each([' 2345678901234567890123', '123456789 1234567890123', '123456789012345678901234'])(
    '%j has no pair',
    (body) => expect(gs1CheckPair(body)).toBeUndefined(),
  );
});

const read = (text: string) =>
  labelDate(fullYear(Number(text.slice(0, 2)), 2021), Number(text.slice(2, 4)), Number(text.slice(4, 6)));

describe('GS1 dates', () => {
  // GS1 Barcode Syntax Dictionary, unit tests of the check `yymmd0`, whose current year is 2021.
  test.each([
    '000606',
    '250606',
    '500606',
    '750606',
    '990606',
    '200131',
    '200229',
    '210228',
    '240229',
    '000229',
    '960229',
    '200600',
  ])('%s is a date', (text) => expect(read(text)).toHaveProperty('date'));
  test.each([
    '200010',
    '201310',
    '209910',
    '200132',
    '200230',
    '200431',
    '210229',
    '220229',
    '230229',
    '000230',
    '960230',
  ])('%s is none', (text) => expect(read(text)).toHaveProperty('because'));
  // GS1 General Specifications, the sliding century.
  test.each([
    [72, 1972],
    [71, 2071],
    [0, 2000],
    [99, 1999],
  ])('%i counted from 2021 is %i', (two, four) => expect(fullYear(two, 2021)).toBe(four));
  test('fifty years back is the coming century', () => expect(fullYear(10, 2060)).toBe(2110));
});

describe('GS1 labels', () => {
  // FDA, UDI formats by FDA-accredited issuing agency, version 1.3, 27 January 2017.
  test('the example of the United States regulator', () => {
    const reading = readLabel('(01)51022222233336(11)141231(17)150707(10)A213B1(21)1234', 2015);
    expect(reading.faults).toEqual([]);
    expect(reading.parts.map(({ kind, value, date }) => [kind, value, date])).toEqual([
      ['device-identifier', '51022222233336', undefined],
      ['made', '141231', '2014-12-31'],
      ['expiry', '150707', '2015-07-07'],
      ['lot', 'A213B1', undefined],
      ['serial', '1234', undefined],
    ]);
  });

  // Both forms as the GS1 reference engine gives them (its published demonstration build of 16 May 2026).
  test.each([
    '(01)09521234543213(17)270630(10)ABC123(21)SER-0042',
    '^01095212345432131727063010ABC123^21SER-0042',
    `01095212345432131727063010ABC123${GS}21SER-0042`,
    `${GS}01095212345432131727063010ABC123${GS}21SER-0042`,
    `]d201095212345432131727063010ABC123${GS}21SER-0042`,
    `]C101095212345432131727063010ABC123${GS}21SER-0042`,
    `]Q301095212345432131727063010ABC123${GS}21SER-0042${GS}`,
    ']d201095212345432131727063010ABC123<GS>21SER-0042',
  ])('%j', (text) => {
    const reading = readLabel(text, 2026);
    expect(reading.faults).toEqual([]);
    expect(reading.parts.map((part) => `${part.key}=${part.value}`)).toEqual([
      '01=09521234543213',
      '17=270630',
      '10=ABC123',
      '21=SER-0042',
    ]);
    for (const part of reading.parts) expect(text.slice(part.span.start, part.span.end)).toBe(part.value);
  });

  // Refused by the same engine.
  test.each([
    ['a wrong check digit', '(01)09521234543214', 'label-check-digit'],
    ['month 13', '(01)09521234543213(17)271301', 'label-date'],
    ['a lot of 21 characters', '(01)09521234543213(10)ABCDEFGHIJKLMNOPQRSTU', 'label-value-length'],
    ['a character outside set 82', '(01)09521234543213(10)ABC#1', 'label-value-character'],
    ['a lot without a device number', '(10)ABC123', 'label-part-needs-another'],
    ['a 13-digit number in 01', '(01)9521234543213', 'label-value-length'],
    ['a bracket in a lot that is not escaped', '(01)09521234543213(10)AB(C', 'label-bracket-not-closed'],
  ])('%s', (_, text, fault) => {
    const faults = readLabel(text, 2026).faults;
    expect(faults.map((each) => each.fault)).toEqual([fault]);
    expect(faults[0]?.severity).toBe('error');
  });

  // A trap of the same engine: legal and silent there, so only a warning here.
  test('a missing separator', () => {
    const reading = readLabel('010952123454321310ABC12317270630', 2026);
    expect(reading.parts.map((part) => part.value)).toEqual(['09521234543213', 'ABC12317270630']);
    expect(reading.faults.map(({ fault, severity }) => [fault, severity])).toEqual([
      ['label-separator-probably-missing', 'warning'],
    ]);
  });
});

describe('HIBC labels', () => {
  // hibcc.org, formatter of the primary data.
  test('the primary example of the standard', () => {
    const reading = readLabel('+A123BJC5D6E71G', 2026);
    expect(reading.faults).toEqual([]);
    expect(reading.parts.map((part) => [part.title, part.value])).toEqual([
      ['device number', 'A123BJC5D6E71'],
      ["maker's code", 'A123'],
      ['product number', 'BJC5D6E7'],
      ['unit of measure', '1'],
      ['check character', 'G'],
    ]);
  });

  // ANSI/HIBC 2.x, example of joined primary and secondary data.
  test('the joined example of the standard', () => {
    const reading = readLabel('+A99912345/$$52001510X33', 2026);
    expect(reading.faults).toEqual([]);
    expect(reading.parts.map((part) => [part.kind, part.date ?? part.value])).toEqual([
      ['device-identifier', 'A99912345'],
      ['labeller', 'A999'],
      ['other', '1234'],
      ['other', '5'],
      ['expiry', '2020-01-15'],
      ['lot', '10X3'],
      ['check', '3'],
    ]);
  });
  // The same standard, with the day of manufacture and the serial number; seen in the tests of open parsers.
  test('the example with supplements', () => {
    const reading = readLabel('*+A99912345/$$52001510X3/16D20111212/S77DEFG457*', 2026);
    expect(reading.faults).toEqual([]);
    expect(reading.parts.map((part) => [part.kind, part.date ?? part.value]).slice(4)).toEqual([
      ['expiry', '2020-01-15'],
      ['lot', '10X3'],
      ['made', '2011-12-12'],
      ['serial', '77DEFG45'],
      ['check', '7'],
    ]);
  });
  test('joined data of another published pair take C', () =>
    expect(hibcCheckCharacter('+A123BJC5D6E71/$$52001510X3')).toBe('C'));
});
