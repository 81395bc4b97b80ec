import { operationCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';

const OLDEST = 120;

export const birthYearImpossible = operationCheck({
  id: 'birth-year-impossible',
  group: 'plausibility',
  summary: 'The year of birth lies after the operation, or more than 120 years before it.',
  severity: 'error',
  allowable: false,
  run: ({ patient, date }, say) => {
    const born = patient?.born;
    if (born === undefined || date === undefined) return;
    const age = Number(date.value.slice(0, 4)) - born.value;
    if (age >= 0 && age <= OLDEST) return;
    say({
      at: born,
      message: `Patient: born ${born.text} and operated ${date.text} do not go together${age < 0 ? '' : ` (an age of ${age})`}.`,
      related: [related(`the operation: ${date.text}`, date)],
    });
  },
});

export const aboutBirthYearImpossible: About = () => ({
  why: 'The age is wrong, and with it every risk computed from it; or the note is of another patient.',
  whatToDo: 'Correct the year of birth, or the date of the operation.',
  source: 'arithmetic',
  since: '1.0',
  faulty: { note: 'patient:\n  born: 2058' },
  sound: { note: 'patient:\n  born: 2025' },
});
