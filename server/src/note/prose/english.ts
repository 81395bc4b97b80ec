import type { Acuity, Field, Site } from '@sideport/schemas';

const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

/** `a, b and c`. */
export function and(parts: readonly (string | undefined)[], last = 'and'): string {
  const present = parts.filter((part) => part !== undefined && part !== '');
  if (present.length < 2) return present.join('');
  return `${present.slice(0, -1).join(', ')} ${last} ${present.at(-1) ?? ''}`;
}

/** The parts that are there, one after the other. */
export function join(parts: readonly (string | undefined | false)[], by = ' '): string {
  return parts.filter((part) => typeof part === 'string' && part !== '').join(by);
}

/** Text as the start of a sentence. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** A sentence with its full stop; undefined when there is nothing to say. */
export function sentence(text: string | undefined): string | undefined {
  const trimmed = text?.trim() ?? '';
  if (trimmed === '') return undefined;
  return capital(trimmed) + (/[.!?]$/u.test(trimmed) ? '' : '.');
}

/** `14 March 2031`, `June 2034`; anything that is no ISO date stays as it is. */
export function longDate(text: string): string {
  const [, year, month, day] = /^(\d{4})-(\d{2})(?:-(\d{2}))?$/u.exec(text) ?? [];
  const name = MONTHS[Number(month) - 1];
  if (year === undefined || name === undefined) return text;
  return day === undefined ? `${name} ${year}` : `${Number(day)} ${name} ${year}`;
}

/** `14 March 2031 at 10:02 (UTC+01:00)`. */
export function longInstant(text: string): string {
  const [, date, time, zone] =
    /^(\d{4}-\d{2}-\d{2})T(\d{2}:\d{2})(?::\d{2}(?:\.\d+)?)?(Z|[+-]\d{2}:\d{2})$/u.exec(text) ?? [];
  if (date === undefined || time === undefined || zone === undefined) return longDate(text);
  return `${longDate(date)} at ${time} (UTC${zone === 'Z' || zone === '+00:00' ? '' : zone})`;
}

/** Where on the eye: `temporally`, `at 60°`, `at 11 o'clock`. */
export function where(field: Field<Site> | undefined): string | undefined {
  const site = field?.value;
  if (!site) return undefined;
  if (site.kind === 'word') return `${site.word}ly`;
  if (site.kind === 'degrees') return `at ${site.degrees}°`;
  const hour = Number.isInteger(site.hour) ? String(site.hour) : `${Math.floor(site.hour)}:30`;
  return `at ${hour} o'clock${site.view === 'surgeon' ? " of the surgeon's own view" : ''}`;
}

const CATEGORIES = {
  CF: 'counting fingers',
  HM: 'hand movements',
  PL: 'perception of light',
  NPL: 'no perception of light',
};

export function acuityWords(field: Field<Acuity> | undefined, text: string | undefined): string | undefined {
  if (field?.value.kind !== 'category') return text;
  // “CF 1 m”: where they were seen.
  const distance = /\d+(?:\.\d+)?\s*(?:m|cm|ft|feet|metres?|meters?)\b/u.exec(field.text)?.[0];
  return `${CATEGORIES[field.value.category]}${distance === undefined ? '' : ` at ${distance}`}`;
}

/** `a lens`, `an eye`, `an 8 mm incision`: by the first letter or number, which is right for what stands here. */
export function withArticle(text: string): string {
  return `${/^(?:[aei]|o(?!ne)|8|1[18](?!\d))/iu.test(text) ? 'an' : 'a'} ${text}`;
}

const NUMBERS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

/** `two sutures`; the plural ends in s. */
export function counted(count: number, thing: string): string {
  return `${NUMBERS[count] ?? count} ${thing}${count === 1 ? '' : 's'}`;
}

/** `0.3 mm toward 3 o'clock` becomes `0.3 mm to the 3 o'clock side`. */
export function offsetWords(text: string | undefined): string {
  const [, distance = '', place = ''] = /^(.*?)\s*toward (.+)$/u.exec(text ?? '') ?? [];
  return join([distance, `to the ${place} side`]);
}
