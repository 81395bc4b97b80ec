import { describe, expect, it } from 'vitest';
import { tokensOf } from '../../server/src/note/dictation/tokens.ts';
import { ownExamples, referenceExamples } from './score.ts';

function words(text: string): string {
  return tokensOf(text)
    .map(({ word, strength }) => (strength === undefined ? word : strength === 'sentence' ? '|' : ','))
    .join(' ');
}

describe('the tokens of a dictation', () => {
  it('stand where they were said, in order, without overlap', () => {
    for (const { text } of [...ownExamples, ...referenceExamples]) {
      let end = 0;
      for (const token of tokensOf(text)) {
        expect(token.start).toBeGreaterThanOrEqual(end);
        expect(token.end).toBeGreaterThan(token.start);
        expect(token.end).toBeLessThanOrEqual(text.length);
        end = token.end;
      }
    }
  });

  it.each([
    ['right eye full stop new line topical comma', 'right eye | | topical ,'],
    ['the post operative period was quiet period', 'the post operative period was quiet |'],
    ["Descemet's, sub-Tenon's, o'clock", 'descemet , sub tenon , oclock'],
    ['2.2 mm @ 95°; +20.0 D', '2.2 mm at 95 degrees | plus 20.0 d'],
    ['target -0.25 D - plano', 'target minus 0.25 d , plano'],
    ['10-0 nylon, 12/14 ring', '10 - 0 nylon , 12 / 14 ring'],
    ['Seidel -ve', 'seidel negative'],
    ['two millimeters, centered capsulorrhexis', 'two millimetres , centred capsulorhexis'],
    ['2.75mm 1mg/0.1ml', '2.75 mm 1 mg / 0.1 ml'],
    ['hæmorrhage 😀 naïve', 'hæmorrhage 😀 naive'],
  ])('%s', (text, expected) => {
    expect(words(text)).toBe(expected);
  });
});
