import { median } from '../statistics/summaries.ts';
import type { Case } from './cases.ts';
import { figure, share, shareOf, type Figure, type FigureText, type Group } from './figure.ts';
import { type CaseGroup } from './group.ts';
import { groupBy } from './group-by.ts';

const COUNTED = 'count of final operations';
const PRACTICE = 'common practice, no source';
const LONG_EYE_MM = 26;

const OPERATIONS: FigureText = { name: 'operations', label: 'Operations', method: COUNTED, source: PRACTICE };
const AGE: FigureText = {
  name: 'age-median',
  label: 'Age at operation, median',
  unit: 'years',
  method: 'median of the ages recorded (year of operation minus year of birth)',
  source: PRACTICE,
};
const AXIAL: FigureText = {
  name: 'axial-length-median',
  label: 'Axial length, median',
  unit: 'mm',
  method: 'median of the lengths recorded',
  source: PRACTICE,
};
const LONG: FigureText = {
  name: 'long-eyes',
  label: `Eyes longer than ${LONG_EYE_MM} mm`,
  method: `share of eyes with an axial length above ${LONG_EYE_MM} mm among those with one recorded`,
  source: PRACTICE,
};
const FEMALE: FigureText = {
  name: 'female',
  label: 'Female patients',
  method: 'share of operations among those with the sex recorded',
  source: PRACTICE,
};
const SECOND: FigureText = {
  name: 'second-eyes',
  label: 'Second eyes',
  method: 'share of operations among those that say first or second eye',
  source: PRACTICE,
};

function medianOf(text: FigureText, { group, cases }: CaseGroup, valueOf: (one: Case) => number | null): Figure {
  const values = cases.map(valueOf).filter((value) => value !== null);
  return figure(text, group, { value: median(values), n: values.length, missing: cases.length - values.length });
}

/** One share for every word that occurs in a list field of the notes. */
export function wordShares(
  text: (word: string) => FigureText,
  groupOf: (word: string) => Group,
  cases: readonly Case[],
  wordsOf: (one: Case) => readonly string[] | null,
): readonly Figure[] {
  const known = cases.map(wordsOf).filter((words) => words !== null);
  const words = known.flatMap((list) => [...new Set(list)]);
  return groupBy(words, (word) => word).map(([word, found]) =>
    share(text(word), groupOf(word), found.length, known.length, cases.length - known.length),
  );
}

/** Who was operated: the case mix of a group. */
export function caseMix({ group, cases }: CaseGroup): readonly Figure[] {
  const within = { group, cases };
  return [
    figure(OPERATIONS, group, { value: cases.length, n: cases.length, missing: 0 }),
    medianOf(AGE, within, (one) => one.operation.ageYears),
    medianOf(AXIAL, within, (one) => one.operation.axialLengthMm),
    shareOf(LONG, group, cases, ({ operation: { axialLengthMm: length } }) =>
      length === null ? null : length > LONG_EYE_MM,
    ),
    shareOf(FEMALE, group, cases, ({ operation: { sex } }) => (sex === null ? null : sex === 'female')),
    shareOf(SECOND, group, cases, ({ operation: { whichEye } }) => (whichEye === null ? null : whichEye === 'second')),
  ];
}

/** Comorbidity and difficulty of the whole set, word by word. */
export function caseMixWords(cases: readonly Case[]): readonly Figure[] {
  const method = 'share of operations that list it among those where the list was filled in or said "none"';
  return [
    ...wordShares(
      (word) => ({
        name: 'comorbidity',
        label: `Comorbidity: ${word}`,
        method,
        source: 'Sim et al., Eye 2024 (risk factors named)',
        sensitive: true,
      }),
      (comorbidity) => ({ comorbidity }),
      cases,
      (one) => one.operation.comorbidity,
    ),
    ...wordShares(
      (word) => ({
        name: 'difficulty',
        label: `Difficulty: ${word}`,
        method,
        source: 'Lundström et al., J Cataract Refract Surg 2021;47:373-8',
        sensitive: true,
      }),
      (difficulty) => ({ difficulty }),
      cases,
      (one) => one.operation.difficulty,
    ),
  ];
}
