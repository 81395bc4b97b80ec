import type { Acuity, Field, Quantity, ReadList, Site } from '@sideport/schemas';
import { acuityLogmar } from '../calculations/acuity/logmar.ts';
import { asPosition } from '../calculations/angles.ts';
import { fixed } from '../calculations/display.ts';
import { positionOfHour } from '../calculations/position/clock-hour.ts';
import { positionOf } from '../calculations/position/site.ts';
import type { Cell } from './table.ts';
import { amountOf } from './written-value.ts';

export const amount = (field: Field<Quantity> | undefined): Cell => field && amountOf(field.value);
export const word = (field: Field<string> | undefined): Cell => field?.value;
export const yesNo = (field: Field<boolean> | undefined): Cell => field?.value;
export const whole = (field: Field<number> | undefined): Cell => field && String(field.value);

/** Several words in one cell. A list that says “none” is that word, so that none and not recorded stay apart. */
export function words(list: ReadList<Field<string>> | undefined, said?: { readonly word: string }): Cell {
  if (!list || list.items.length === 0) return said?.word;
  return list.items.map((item) => item.value).join('; ');
}

/** Letters counted above or below a line are left out; counting fingers and less have no logMAR of their own. */
export function logmar(field: Field<Acuity> | undefined): Cell {
  const acuity = field?.value;
  if (!acuity || acuity.kind === 'category') return undefined;
  if (acuity.kind !== 'fraction') return logmarOf(acuity);
  return logmarOf({ kind: 'fraction', numerator: acuity.distance, denominator: acuity.line });
}

function logmarOf(acuity: Parameters<typeof acuityLogmar>[0]['acuity']): Cell {
  const outcome = acuityLogmar({ acuity });
  return outcome.ok ? fixed(outcome.value, 2) : undefined;
}

/** Position on the dial in degrees, 0 to 360 counter-clockwise. A clock as the surgeon saw it needs the seat: none here. */
export function position(field: Field<Site> | undefined, eye: 'right' | 'left' | undefined): Cell {
  const site = field?.value;
  if (!site) return undefined;
  if (site.kind === 'degrees') return String(asPosition(site.degrees));
  if (site.kind === 'word') return eye && String(positionOf(site.word, eye));
  return site.view === 'surgeon' ? undefined : String(positionOfHour(site.hour));
}
