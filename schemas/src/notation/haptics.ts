import { bad, good, type Notation, type Reading } from './notation.ts';
import { readSite, site, writeSite, type Site } from './site.ts';

const pair = /^(?<one>.+?)\s*(?:\band\b|&|\/|-|–)\s*(?<other>\d.*)$/iu;
const expected = "where one of the two lies, such as 90°, 12 o'clock, vertical, or 6 and 12 o'clock";

/** The places of the two haptics, which lie opposite each other: the place of the one that is written first. */
export const haptics: Notation<Site> = {
  ...site,
  expected,
  examples: ['90°', 'vertical', "6 and 12 o'clock"],
  read: readHaptics,
  write: (text) => {
    const one = site.read(text);
    return one.ok ? writeSite(one.value, text) : text.trim();
  },
};

function readHaptics(text: string): Reading<Site> {
  const folded = text.trim().toLowerCase();
  if (/^vertical(?:ly)?$/u.test(folded)) return good({ kind: 'degrees', degrees: 90 });
  if (/^horizontal(?:ly)?$/u.test(folded)) return good({ kind: 'degrees', degrees: 0 });
  const single = readSite(text);
  const two = single.ok ? undefined : pair.exec(folded)?.groups;
  if (two === undefined) return single;
  const [first = '', second = ''] = [two['one'], two['other']];
  const other = readSite(asHour(second));
  // What stands behind the second number is meant for both: 3 and 9 o'clock.
  const one = readSite(asHour(/\d$/u.test(first) ? `${first}${/[^\d:.]*$/u.exec(second)?.[0] ?? ''}` : first));
  if (!one.ok || !other.ok)
    return bad('unreadable-value', `“${text}” does not say where the haptics lie. Expected ${expected}.`);
  return areOpposite(one.value, other.value)
    ? one
    : bad(
        'unreadable-value',
        `“${text}” are not opposite each other, as the two haptics of a lens are. Expected ${expected}.`,
      );
}

/** Two bare numbers up to 12 are hours: 3-9. */
function asHour(text: string): string {
  return /^(?:[1-9]|1[0-2])(?::30)?$/u.test(text) ? `${text} o'clock` : text;
}

function areOpposite(one: Site, other: Site): boolean {
  if (one.kind === 'clock' && other.kind === 'clock') return Math.abs(one.hour - other.hour) === 6;
  return one.kind === 'degrees' && other.kind === 'degrees' && Math.abs(one.degrees - other.degrees) === 180;
}
