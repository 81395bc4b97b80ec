import { bad, good, type Notation, type Reading } from './notation.ts';

/** How often drops are taken and for how long. */
export interface Regimen {
  readonly timesDaily: number;
  /** days; undefined when the text does not say. */
  readonly days?: number;
}

const shape =
  /^(?:(once|twice|\d{1,2}(?: times)?)(?: a day| daily| per day)?)(?:,?\s*(?:for )?(\d{1,3}) (day|week|month)s?)?$/u;
const daysPer: Readonly<Record<string, number>> = { day: 1, week: 7, month: 30 };
const expected = 'how often and how long, such as 4 times a day for 4 weeks';

export const regimen: Notation<Regimen> = {
  name: 'regimen',
  expected,
  bareNumber: false,
  examples: ['4 times a day for 4 weeks', 'once daily'],
  read: readRegimen,
};

function readRegimen(text: string): Reading<Regimen> {
  const match = shape.exec(text.trim().toLowerCase());
  if (match?.[1] === undefined) return bad('unreadable-value', `“${text}” is not a regimen. Expected ${expected}.`);
  const timesDaily = match[1] === 'once' ? 1 : match[1] === 'twice' ? 2 : Number.parseInt(match[1], 10);
  if (match[2] === undefined || match[3] === undefined) return good({ timesDaily });
  return good({ timesDaily, days: Number(match[2]) * (daysPer[match[3]] ?? 1) });
}
