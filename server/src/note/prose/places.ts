import type { Field } from '@sideport/schemas';
import { term } from './as-typed.ts';

/** Where a lens lies, as a phrase behind “implanted” or “to be placed”. */
const PLACES: Readonly<Record<string, string>> = {
  'capsular bag': 'in the capsular bag',
  sulcus: 'in the sulcus',
  'sulcus with optic capture': 'in the sulcus with the optic captured',
  'anterior chamber': 'in the anterior chamber',
  'iris, in front': 'on the front of the iris',
  'iris, behind': 'behind the iris',
  'scleral fixation': 'with fixation to the sclera',
};

/** The phrase of a place; undefined where no lens lies anywhere. */
export function placePhrase(placed: Field<string> | undefined): string | undefined {
  if (placed === undefined || placed.value === 'none') return undefined;
  const written = term(placed);
  return PLACES[written] ?? written;
}
