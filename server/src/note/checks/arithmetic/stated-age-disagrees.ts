import type { About } from '../check.ts';
import { related } from '../support/place.ts';
import { statedCheck } from '../support/stated.ts';

export const statedAgeDisagrees = statedCheck({
  id: 'stated-age-disagrees',
  what: 'the age',
  topic: 'Patient',
  summary: 'The age in the text is not that from the year of birth.',
  wording: { hints: ['year', ' yo'], pattern: /\b(\d{1,3})[ -]?(?:years?[ -]old|year old|yo\b)/giu },
  within: 1,
  derive: ({ patient, date }) => {
    if (patient?.born === undefined || date === undefined) return undefined;
    const value = Number(date.value.slice(0, 4)) - patient.born.value;
    return { value, shown: `${value}`, related: [related(`born: ${patient.born.text}`, patient.born)] };
  },
});

export const aboutStatedAgeDisagrees: About = () => ({
  why: 'The text is from another patient, or the year of birth is mistyped.',
  whatToDo: 'Correct the number in the text, or the fields. A number that is computed need not be typed at all.',
  source: 'arithmetic',
  since: '1.0',
  faulty: { note: 'free-text: 52-year-old with glare at night' },
  sound: { note: 'free-text: 73-year-old with glare at night' },
});
