import { calculation } from '../calculation.ts';
import { quantity, shaped } from '../fields.ts';
import { found, refused } from '../outcome.ts';
import { parseDate } from './calendar.ts';

/** A calendar date written YYYY-MM-DD. */
export const dateField = (label: string) =>
  shaped(label, 'a calendar date, YYYY-MM-DD', (value) =>
    typeof value === 'string' && parseDate(value) !== undefined ? undefined : `${label} is not a calendar date`,
  );

type Given = { born: number; operationDate: string };

export const ageAtOperation = calculation<Given, number>({
  name: 'age-at-operation',
  topic: 'Time',
  definition: 'Age on the day of the operation, in years.',
  inputs: { born: quantity('year of birth', '', 1900, 2200), operationDate: dateField('date of the operation') },
  unit: 'years',
  domain: 'From the year of birth, which is all that a pseudonymous note holds.',
  method: 'year of the operation - year of birth',
  source: { citation: 'arithmetic', status: 'derived' },
  cautions: ['From the year of birth alone: before the birthday the age is one year less.'],
  example: { input: { born: 1974, operationDate: '2026-03-12' }, gives: 52 },
  compute: ({ born, operationDate }) => {
    const age = (parseDate(operationDate)?.year ?? NaN) - born;
    if (age < 0) return refused(`the year of birth ${born} is after the operation (${operationDate})`);
    return age > 120 ? refused(`an age of ${age} years is not possible`) : found(age);
  },
});
