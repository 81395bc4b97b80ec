import { describe, expect, it } from 'vitest';
import { dateAt } from '../../server/src/note/dictation/dates.ts';
import { numbersAt } from '../../server/src/note/dictation/numbers.ts';
import { sayDecimal, sayDate } from '../../server/src/note/dictation/say-number.ts';
import { readSlot } from '../../server/src/note/dictation/slots.ts';
import { tokensOf } from '../../server/src/note/dictation/tokens.ts';

/** The longest reading of a phrase that is one number from its first word to its last. */
function whole(phrase: string): { readonly value: number; readonly written: string } | undefined {
  const tokens = tokensOf(phrase);
  const reading = numbersAt(tokens, 0).find(({ end }) => end === tokens.length);
  return reading === undefined ? undefined : { value: reading.value, written: reading.written };
}

// How numbers are said in theatre: common practice, no source.
const said: [phrase: string, value: number, written?: string][] = [
  ['five', 5],
  ['nineteen', 19],
  ['twenty one', 21],
  ['twenty-one', 21],
  ['a hundred', 100],
  ['one hundred', 100],
  ['one hundred and sixty five', 165],
  ['one hundred sixty five', 165],
  ['one eighty', 180],
  ['one seventy five', 175],
  ['one oh five', 105],
  ['four fifty', 450],
  ['three thirty', 330],
  ['two thousand four hundred', 2400],
  ['two point four', 2.4],
  ['two point seven five', 2.75, '2.75'],
  ['two point seventy five', 2.75],
  ['five point zero', 5, '5.0'],
  ['twenty one point zero', 21, '21.0'],
  ['nought point one', 0.1],
  ['zero point one two five', 0.125, '0.125'],
  ['point five', 0.5, '0.5'],
  ['point oh five', 0.05, '0.05'],
  ['five and a quarter', 5.25],
  ['three and a half', 3.5],
  ['four and three quarters', 4.75],
  ['twenty six and a quarter', 26.25],
  ['half', 0.5],
  ['plus twenty one point five', 21.5, '+21.5'],
  ['minus two point two five', -2.25, '-2.25'],
  ['minus three', -3, '-3'],
  ['plus sixteen and a half', 16.5, '+16.5'],
  ['2.2', 2.2, '2.2'],
  ['20.0', 20, '20.0'],
  ['+20.0', 20, '+20.0'],
  ['-0.25', -0.25, '-0.25'],
  ['−0.25', -0.25, '-0.25'],
  ['2,75', 2.75, '2.75'],
  ['5½', 5.5],
  ['2 point 4', 2.4],
];

describe('spoken numbers', () => {
  it.each(said)('%s', (phrase: string, value: number, written?: string) => {
    const reading = whole(phrase);
    expect(reading?.value).toBe(value);
    if (written !== undefined) expect(reading?.written).toBe(written);
  });

  it('are read again from the words for every number from 0 to 9999', () => {
    for (let value = 0; value < 10_000; value += 1) expect(whole(sayDecimal(String(value)) ?? '')?.value).toBe(value);
  });

  it('keep every decimal place and the sign', () => {
    for (const typed of ['0.10', '5.0', '21.50', '+5.5', '-0.25', '-12.75', '31.20', '43.25', '1.3375']) {
      const reading = whole(sayDecimal(typed) ?? '');
      expect(reading?.written).toBe(typed);
    }
  });

  it.each(['no', 'oh', 'to', 'for', 'a lens', 'hundreds', 'quarterly', ''])('“%s” is no number', (phrase) => {
    expect(numbersAt(tokensOf(phrase), 0).filter(({ heard }) => !heard)).toEqual([]);
  });

  it('take a word that only sounds like one as no more than that', () => {
    const [reading] = numbersAt(tokensOf('for hundred'), 0);
    expect(reading).toMatchObject({ value: 400, heard: true });
  });
});

// ISO 8601 for the written form; how dates are said: common practice, no source.
describe('spoken dates', () => {
  it.each([
    ['the fourteenth of March twenty thirty one', '2031-03-14'],
    ['third of November twenty thirty', '2030-11-03'],
    ['twelfth of May, twenty thirty', '2030-05-12'],
    ['the thirty first of January two thousand and thirty one', '2031-01-31'],
    ['the twenty second of June 2031', '2031-06-22'],
    ['14 March 2031', '2031-03-14'],
    ['March 14th, 2031', '2031-03-14'],
    ['14/11/2030', '2030-11-14'],
    ['2031-03-14', '2031-03-14'],
  ])('%s', (phrase, date) => {
    expect(dateAt(tokensOf(phrase), 0)).toMatchObject({ text: date, unsure: false });
  });

  it('are unsure where day and month could be exchanged, and none where the calendar has no such day', () => {
    expect(dateAt(tokensOf('3/4/2031'), 0)).toMatchObject({ text: '2031-04-03', unsure: true });
    expect(dateAt(tokensOf('thirtieth of February twenty thirty'), 0)).toBeUndefined();
    expect(dateAt(tokensOf('the fourteenth of March'), 0)).toBeUndefined();
  });

  it('are read again from the words for every day of two years, one of them a leap year', () => {
    for (let day = Date.UTC(2027, 0, 1); day < Date.UTC(2029, 0, 1); day += 86_400_000) {
      const date = new Date(day).toISOString().slice(0, 10);
      expect(dateAt(tokensOf(sayDate(date) ?? ''), 0)?.text).toBe(date);
    }
  });
});

describe('other things that are said', () => {
  it.each([
    ['gauge', 'ten oh', '10-0'],
    ['gauge', 'ten zero', '10-0'],
    ['gauge', '10-0', '10-0'],
    ['gauge', '10/0', '10-0'],
    ['pair', 'twelve fourteen', '12/14'],
    ['pair', '13/11', '13/11'],
    ['pair', 'thirteen by eleven', '13/11'],
    ['serial', 'four zero seven one nine, zero five two', '40719052'],
    ['serial', 'eight eight one four, double two seven', '8814227'],
    ['duration', 'four weeks', '4 weeks'],
    ['duration', 'a fortnight', '2 weeks'],
    ['duration', '4/52', '4 weeks'],
    ['duration', '1/7', '1 day'],
    ['frequency', 'four times a day', '4'],
    ['frequency', 'qds', '4'],
    ['frequency', 'twice daily', '2'],
    ['frequency', 'every six hours', '4'],
    ['clock', "eleven o'clock", "11 o'clock"],
    ['place', 'superotemporally', 'superotemporal'],
    ['place', 'supero nasal', 'superonasal'],
    ['count', 'a single', '1'],
    ['count', 'pair of', '2'],
  ] as const)('%s: %s', (slot, phrase, text) => {
    const tokens = tokensOf(phrase);
    expect(readSlot(slot, tokens, 0).find(({ end }) => end === tokens.length)?.text).toBe(text);
  });
});
