import { parse } from 'csv-parse/sync';
import { assert, array, constantFrom, oneof, property, string } from 'fast-check';
import { describe, expect, test } from 'vitest';
import { csvRecord } from '../../server/src/note/export/csv.ts';
import { canonicalJson, jsonText } from '../../server/src/note/export/json-text.ts';

describe('one record', () => {
  // RFC 4180, section 2: the examples of rules 1, 5, 6 and 7.
  test.each([
    [['aaa', 'bbb', 'ccc'], 'aaa,bbb,ccc\r\n'],
    [['aaa', 'b\r\nbb', 'ccc'], 'aaa,"b\r\nbb",ccc\r\n'],
    [['aaa', 'b"bb', 'ccc'], 'aaa,"b""bb",ccc\r\n'],
    [['aaa', 'b,bb', 'ccc'], 'aaa,"b,bb",ccc\r\n'],
  ])('%j', (cells, text) => expect(csvRecord(cells)).toBe(text));
  test('a bare line feed or carriage return is quoted too', () =>
    expect(csvRecord(['a\nb', 'a\rb'])).toBe('"a\nb","a\rb"\r\n'));
  test('yes, no and nothing', () => expect(csvRecord([true, false, undefined])).toBe('true,false,\r\n'));
  test('an independent reader gets back what was written', () => {
    const cell = oneof(string(), constantFrom('a,b', '"', '\r\n', '\n', '', ' x ', 'ä–😀'));
    assert(
      property(array(cell, { minLength: 1, maxLength: 6 }), (cells) => {
        const text = csvRecord(cells, { guard: false });
        expect(parse(text, { skip_empty_lines: false, relax_column_count: true })).toEqual([cells]);
      }),
    );
  });
});

// OWASP ASVS 1.2.10, CWE-1236: what makes a spreadsheet run a cell.
describe('formulas', () => {
  test.each(['=1+1', '+cmd', '-x', '@SUM(A1)', '\tx', '\rx', '\0x', '=HYPERLINK("x")', '-1-1', '+1e', '-1e3x'])(
    '%j is kept from running',
    (cell) => {
      expect(parse(csvRecord([cell]))).toEqual([[`'${cell}`]]);
    },
  );
  test.each(['-0.50', '+0.75', '-14.25', '0', '21.50', '+3', '+1e3'])('%s stays a number', (cell) =>
    expect(csvRecord([cell])).toBe(`${cell}\r\n`),
  );
  test('the guard can be switched off', () => expect(csvRecord(['=1+1'], { guard: false })).toBe('=1+1\r\n'));
});

describe('JSON', () => {
  // RFC 8785, section 3.2.3: the example of sorting by UTF-16 units.
  test('canonical order', () => {
    const input = {
      '\u20ac': 'Euro Sign',
      '\r': 'Carriage Return',
      '\ufb33': 'Hebrew Letter Dalet With Dagesh',
      '1': 'One',
      '\ud83d\ude00': 'Emoji: Grinning Face',
      '\u0080': 'Control',
      '\u00f6': 'Latin Small Letter O With Diaeresis',
    };
    expect(Object.values(JSON.parse(canonicalJson(input)) as object)).toHaveLength(7);
    expect(Array.from(canonicalJson(input).matchAll(/:"([^"]*)"/gu), ([, name]) => name)).toEqual([
      'Carriage Return',
      'One',
      'Control',
      'Latin Small Letter O With Diaeresis',
      'Euro Sign',
      'Emoji: Grinning Face',
      'Hebrew Letter Dalet With Dagesh',
    ]);
  });
  // RFC 8785, section 3.2.2: the sample and its canonical form. Its numbers have more digits than a double holds.
  test('canonical numbers and strings', () => {
    const input = {
      numbers: JSON.parse('[333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001]') as unknown,
      string: '\u20ac$\u000f\u000aA\'\u0042\u0022\u005c\\"\u002f',
      literals: [null, true, false],
    };
    expect(canonicalJson(input)).toBe(
      String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`,
    );
  });
  test.each([Number.NaN, Number.POSITIVE_INFINITY, undefined, [undefined]])('%j has no canonical form', (value) =>
    expect(() => canonicalJson(value)).toThrow('JSON holds no such value'),
  );
  test('decimals keep their digits', () =>
    expect(jsonText({ a: { decimal: '21.50' }, b: [{ decimal: '-0.00' }, 'x', null], c: undefined })).toBe(
      '{"a":21.50,"b":[-0.00,"x",null]}',
    ));
});
