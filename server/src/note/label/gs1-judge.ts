import { firstOutsideSet82, gs1CheckDigit, gs1CheckPair } from './check-digits.ts';
import type { Gs1Element } from './gs1-table.ts';
import type { SplitElement } from './gs1-split.ts';
import { fullYear, labelDate } from './label-dates.ts';
import type { LabelFault, LabelFaultName } from './reading.ts';

export interface JudgedValue {
  readonly faults: readonly LabelFault[];
  readonly date?: string;
}

const named = (element: Gs1Element): string => `The ${element.title} (${element.ai})`;

/**
 * What is wrong with the value of one element, and the date it means when it is one.
 * @param year the year that two-digit years are counted from
 */
export function judgeValue(found: SplitElement, element: Gs1Element, year: number): JudgedValue {
  const { value, span } = found;
  const at = (
    name: LabelFaultName,
    message: string,
    start = span.start,
    end = Math.max(span.end, start + 1),
  ): JudgedValue => ({
    faults: [{ fault: name, severity: 'error', message, span: { start, end } }],
  });
  if (value === '') {
    return at('label-value-missing', `${named(element)} has no value.`, found.keySpan.start, found.keySpan.end);
  }
  const odd = element.characters === 'digits' ? value.search(/\D/) : firstOutsideSet82(value);
  if (odd >= 0) {
    const allowed =
      element.characters === 'digits'
        ? 'may hold digits only'
        : 'may hold letters A to Z, digits and common signs only';
    const place = span.start + odd;
    return at(
      'label-value-character',
      `${named(element)} ${allowed}; ${shown(String.fromCodePoint(value.codePointAt(odd) ?? 0))} is not one of them.`,
      place,
      place + 1,
    );
  }
  if (value.length < element.shortest || value.length > element.longest) {
    return at('label-value-length', lengthMessage(element, value));
  }
  if (element.check === 'digit') return judgeCheckDigit(value, element, at);
  if (element.check === 'pair') {
    const expected = gs1CheckPair(value.slice(0, -2));
    if (expected !== value.slice(-2)) {
      return at(
        'label-check-digit',
        `${named(element)} ends in ${value.slice(-2)}, but its check characters should be ${expected ?? 'others'}. Compare it with the box.`,
      );
    }
  }
  return element.date ? judgeDate(element, value, year, at) : { faults: [] };
}

type At = (name: LabelFaultName, message: string) => JudgedValue;

function judgeCheckDigit(value: string, element: Gs1Element, at: At): JudgedValue {
  const expected = gs1CheckDigit(value.slice(0, -1));
  if (expected === value.slice(-1)) return { faults: [] };
  return at(
    'label-check-digit',
    `${named(element)} ${value} ends in ${value.slice(-1)}, but its check digit should be ${expected}: a digit is misread or two are swapped. Compare it with the box.`,
  );
}

function judgeDate(element: Gs1Element, value: string, year: number, at: At): JudgedValue {
  const [yy, month, day] = [0, 2, 4].map((place) => Number(value.slice(place, place + 2)));
  const date = labelDate(fullYear(yy ?? 0, year), month ?? 0, day ?? 0);
  if ('date' in date) return { faults: [], date: date.date };
  return at(
    'label-date',
    `${named(element)} ${value} is not a date: ${date.because}. It is written year, month, day (YYMMDD).`,
  );
}

function lengthMessage(element: Gs1Element, value: string): string {
  const unit = element.characters === 'digits' ? 'digits' : 'characters';
  const wanted = element.shortest === element.longest ? `exactly ${element.longest}` : `at most ${element.longest}`;
  const hint =
    element.ai === '01' && value.length === 13 ? ' A 13-digit trade number takes a 0 in front of it here.' : '';
  return `${named(element)} has ${value.length} ${unit}, and should have ${wanted}.${hint}`;
}

const shown = (character: string): string => (character === ' ' ? 'a space' : `"${character}"`);
