import { array, assert, constantFrom, oneof, property, string, stringMatching } from 'fast-check';
import { describe, expect, test } from 'vitest';
import { gs1Bracketed } from '../../server/src/note/label/gs1.ts';
import { GS1_ELEMENTS } from '../../server/src/note/label/gs1-table.ts';
import { hibcCheckCharacter } from '../../server/src/note/label/check-digits.ts';
import { readLabel } from '../../server/src/note/label/label.ts';

const messages = (text: string, year = 2026) =>
  readLabel(text, year).faults.map((fault) => `${fault.message} [${text.slice(fault.span.start, fault.span.end)}]`);

describe('what the person reads', () => {
  test.each([
    [
      '(01)09521234543214',
      'The device number (01) 09521234543214 ends in 4, but its check digit should be 3: a digit is misread or two are swapped. Compare it with the box. [09521234543214]',
    ],
    [
      '(01)9521234543213',
      'The device number (01) has 13 digits, and should have exactly 14. A 13-digit trade number takes a 0 in front of it here. [9521234543213]',
    ],
    [
      '(01)09521234543213(17)271301',
      'The expiry date (17) 271301 is not a date: there is no month 13. It is written year, month, day (YYMMDD). [271301]',
    ],
    [
      '(01)09521234543213(17)260230',
      'The expiry date (17) 260230 is not a date: 2026-02 has no day 30. It is written year, month, day (YYMMDD). [260230]',
    ],
    ['(10)ABC123', 'The lot (10) means nothing without the device number (01), and the label has none. [ABC123]'],
    [
      '(01)09521234543213(10)AB#1',
      'The lot (10) may hold letters A to Z, digits and common signs only; "#" is not one of them. [#]',
    ],
    // The numbers of 8 to 13 digits are those of the GS1 dictionary and its demonstration.
    ...['9521234543213', '1234567890128', '416000336108', '02345673', '09521234543213'].map((number) => [
      number,
      `${number} is a trade number by itself. On a label it stands behind (01), with 14 digits: (01)${number.padStart(14, '0')}. The line marked UDI on the box says more: scan or type that. [${number}]`,
    ]),
    [
      '(00)123456789012345675',
      'The label has no device number (01), so that it names no lens; it was read as (00) shipping container. Scan or type the line marked UDI on the box. [(00)123456789012345675]',
    ],
    [
      '9521234543214',
      'The label has no device number (01), so that it names no lens; it was read as (95) company internal. Scan or type the line marked UDI on the box. [9521234543214]',
    ],
    ['(01)09521234543213(21)', 'The serial number (21) has no value. [(21)]'],
    [
      '(01)09521234543213(10)AB (21)7',
      'There is a space beside the value of (10). GS1 data have none: take it out. [ ]',
    ],
    ['(01)09521234543213(10)A(21)7(10)B', '(10) stands twice with different values: A and B. [B]'],
    ['(01)09521234543213(21)7(235)9', '(21) and (235) may not stand on the same label. [7]'],
    ['(01)09521234543213(9999)7', '(9999) is no identifier known on a lens label. Compare it with the box. [(9999)]'],
    [
      '(01)09521234543213(10)AB(C)D',
      '"(C)D" opens a bracket that is not an identifier. An identifier is 2 to 4 digits in brackets, such as (10); a bracket inside a value is written \\(. [(C)D]',
    ],
    [
      ']d1010952123454321310ABC',
      'The scanner says with ]d1 that this symbol does not hold GS1 data. Scan the symbol marked UDI. []d1]',
    ],
    [
      'lens box lost',
      'This is neither a GS1 label, which starts with (01) or with digits, nor a HIBC label, which starts with +. Type or scan the line marked UDI on the box. [lens box lost]',
    ],
    [
      '+A123BJC5D6E71H',
      'The label does not pass its check: its last character is "H", but the check character should be "G". Compare it with the box, or scan it again. [H]',
    ],
  ])('%s', (text, message) => expect(messages(text)).toEqual([message]));
});

describe('dates', () => {
  test('day 00 leaves the day open', () =>
    expect(readLabel('(01)09521234543213(17)270600', 2026).parts[1]).toMatchObject({
      value: '270600',
      date: '2027-06',
    }));
});

describe('a separator lost in scanning', () => {
  test('a lot that swallows the expiry date and the serial number', () =>
    expect(messages('010952123454321310ABC12317270630214711')).toEqual([
      'The lot ABC12317270630214711 may have swallowed what follows it: its end, 17270630214711, reads as expiry date (17) 2027-06-30, serial number (21) 4711. A separator may have been lost in scanning; compare the lot with the box. [ABC12317270630214711]',
    ]));
  test.each(['ABC123', 'A2101', '17B', 'LOT179901', 'X21'])('nothing is said of the lot %s', (lot) =>
    expect(messages(`010952123454321310${lot}`)).toEqual([]),
  );
  test('a date far from the year of the operation is part of the lot', () =>
    expect(messages('010952123454321310ABC17990630')).toEqual([]));
  test('typed brackets leave no doubt', () => expect(messages('(01)09521234543213(10)ABC12317270630')).toEqual([]));
});

const joined = (secondary: string) => {
  const body = `+A99912345/${secondary}`;
  return readLabel(body + hibcCheckCharacter(body), 2026);
};

describe('HIBC secondary data', () => {
  // Structure from memory of ANSI/HIBC 2.6; no published example of each form was seen.
  test.each([
    ['$LOT7', [['lot', 'LOT7']]],
    ['$+SER7', [['serial', 'SER7']]],
    [
      '$$0928LOT7',
      [
        ['expiry', '2028-09'],
        ['lot', 'LOT7'],
      ],
    ],
    [
      '$$2093028LOT7',
      [
        ['expiry', '2028-09-30'],
        ['lot', 'LOT7'],
      ],
    ],
    [
      '$$3280930LOT7',
      [
        ['expiry', '2028-09-30'],
        ['lot', 'LOT7'],
      ],
    ],
    [
      '$$428093012LOT7',
      [
        ['expiry', '2028-09-30'],
        ['lot', 'LOT7'],
      ],
    ],
    [
      '$$528274LOT7',
      [
        ['expiry', '2028-09-30'],
        ['lot', 'LOT7'],
      ],
    ],
    [
      '$$62827412LOT7',
      [
        ['expiry', '2028-09-30'],
        ['lot', 'LOT7'],
      ],
    ],
    ['$$7LOT7', [['lot', 'LOT7']]],
    [
      '$$8013280930LOT7',
      [
        ['quantity', '01'],
        ['expiry', '2028-09-30'],
        ['lot', 'LOT7'],
      ],
    ],
    [
      '$$+3280930SER7',
      [
        ['expiry', '2028-09-30'],
        ['serial', 'SER7'],
      ],
    ],
    [
      '28274LOT7',
      [
        ['expiry', '2028-09-30'],
        ['lot', 'LOT7'],
      ],
    ],
    [
      '$$7LOT7/S99/14D20280930',
      [
        ['lot', 'LOT7'],
        ['serial', '99'],
        ['expiry', '2028-09-30'],
      ],
    ],
  ])('%s', (secondary, expected) => {
    const reading = joined(secondary);
    expect(reading.faults).toEqual([]);
    expect(reading.parts.slice(4, -1).map((part) => [part.kind, part.date ?? part.value])).toEqual(expected);
  });
  test('a day that the year does not have', () =>
    expect(joined('$$526366LOT7').faults.map((fault) => fault.message)).toEqual([
      'The expiry date 26366 is not a date: 2026 has no day 366. It is written YYJJJ.',
    ]));
  test('a month that does not exist', () =>
    expect(joined('$$1328LOT7').faults.map((fault) => fault.message)).toEqual([
      'The expiry date 1328 is not a date: there is no month 13. It is written MMYY.',
    ]));
});

describe('any text', () => {
  const anyLabel = oneof(
    string(),
    array(
      constantFrom(
        '(01)',
        '(10)',
        '09521234543213',
        '17',
        '21',
        '\u001d',
        '+',
        '/',
        '$$',
        '(',
        ')',
        '\\',
        ']d2',
        'A1',
        '#',
        '😀',
      ),
    ).map((pieces) => pieces.join('')),
  );
  test('never throws, keeps every span inside the text, and says the same twice', () =>
    assert(
      property(anyLabel, (text) => {
        const reading = readLabel(text, 2026);
        for (const { span } of [...reading.parts, ...reading.faults]) {
          expect(span.start).toBeGreaterThanOrEqual(0);
          expect(span.end).toBeGreaterThanOrEqual(span.start);
          expect(span.end).toBeLessThanOrEqual(text.length);
        }
        for (const { span } of reading.faults) expect(span.end > span.start || text === '').toBe(true);
        expect(readLabel(text, 2026)).toEqual(reading);
        expect(structuredClone(reading)).toEqual(JSON.parse(JSON.stringify(reading)));
      }),
      { numRuns: 2000 },
    ));
  test('what is written with brackets reads back the same', () => {
    const value = stringMatching(/^[A-Za-z0-9()./-]{1,20}$/);
    assert(
      property(value, value, (lot, serial) => {
        const text = gs1Bracketed([
          { kind: 'device-identifier', key: '01', title: '', value: '09521234543213', span: { start: 0, end: 0 } },
          { kind: 'lot', key: '10', title: '', value: lot, span: { start: 0, end: 0 } },
          { kind: 'serial', key: '21', title: '', value: serial, span: { start: 0, end: 0 } },
        ]);
        const reading = readLabel(text, 2026);
        expect(reading.faults).toEqual([]);
        expect(reading.parts.map((part) => part.value)).toEqual(['09521234543213', lot, serial]);
      }),
    );
  });
});

test('no identifier is the beginning of another', () => {
  const all = GS1_ELEMENTS.map((element) => element.ai);
  for (const ai of all) expect(all.filter((other) => other !== ai && other.startsWith(ai))).toEqual([]);
});
