import type { Acuity, Field, GroupPlace, Quantity, ReadList, Site } from '@sideport/schemas';
import type { AcuityScheme } from '../calculations/acuity/schemes.ts';
import { asPosition } from '../calculations/angles.ts';
import { positionOfHour } from '../calculations/position/clock-hour.ts';
import { positionOf } from '../calculations/position/site.ts';
import { logmarOf, schemeOf } from '../computing/acuities.ts';
import type { Cell } from './table.ts';
import { amountOf, computedDecimal } from './written-value.ts';

export const amount = (field: Field<Quantity> | undefined): Cell => field && amountOf(field.value);
export const word = (field: Field<string> | undefined): Cell => field?.value;
export const yesNo = (field: Field<boolean> | undefined): Cell => field?.value;
export const whole = (field: Field<number> | undefined): Cell => field && String(field.value);

/** The word with which a field says why it has no value, so that “none” and not recorded stay apart. */
export function saidOf(place: GroupPlace | undefined, key: string): Cell {
  const word = place?.said[key]?.word;
  return word === 'not recorded' ? undefined : word;
}

/** Several words in one cell; without any, what the field says instead. */
export function words(list: ReadList<Field<string>> | undefined, said?: Cell): Cell {
  return listed(list?.items, said);
}

/** The words of a list of parts, of which one may lack its own. */
export function listed(fields: readonly (Field<string> | undefined)[] | undefined, said?: Cell): Cell {
  if (fields === undefined || fields.length === 0) return said;
  return fields.map((field) => field?.value ?? 'not recorded').join('; ');
}

/** The computed value of that name: letters count, and counting fingers and less have the number of a scheme. */
export function logmar(field: Field<Acuity> | undefined): string | undefined {
  const outcome = logmarOf(field, 'the acuity');
  return outcome.ok ? computedDecimal(outcome.value) : undefined;
}

/** Whose number stands for counting fingers and less; nothing for an acuity that was measured. */
export function logmarScheme(field: Field<Acuity> | undefined): AcuityScheme | undefined {
  return field?.value.kind === 'category' ? schemeOf(field.value.category) : undefined;
}

/** Position on the dial in degrees, 0 to 360 counter-clockwise. A clock as the surgeon saw it needs the seat: none here. */
export function position(field: Field<Site> | undefined, eye: 'right' | 'left' | undefined): Cell {
  const site = field?.value;
  if (!site) return undefined;
  if (site.kind === 'degrees') return String(asPosition(site.degrees));
  if (site.kind === 'word') return eye && String(positionOf(site.word, eye));
  return site.view === 'surgeon' ? undefined : String(positionOfHour(site.hour));
}
