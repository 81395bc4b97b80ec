import type { Removal } from '../../note/deidentify/removal.ts';

const HEADINGS: Readonly<Record<Removal['how'], string>> = {
  dropped: 'Left out',
  pseudonym: 'Replaced by a pseudonym',
  'date changed': 'Dates changed',
  'text withheld': 'Free text withheld',
  'text kept': 'Free text kept at your wish: it may name people',
  'age capped': 'Ages over 89 told as 90',
};

/** What was removed, by field and count and never by value. */
export function removalText(removals: readonly Removal[]): string {
  const lines = Object.entries(HEADINGS).flatMap(([how, heading]) => {
    const fields = removals.filter((removal) => removal.how === how).map(({ field, count }) => `${field} (${count})`);
    return fields.length === 0 ? [] : [`${heading}: ${fields.join(', ')}.`];
  });
  return [
    'Identifiers were taken out; look at what is left before it is handed on. Pseudonyms stay personal data for whoever holds the key.',
    ...lines,
  ].join('\n');
}
