import { replaceValue } from '../../edits/replace-value.ts';
import { planOfValue } from '../../reading/note-reading.ts';
import type { ActionSource } from './action.ts';
import { valueAt } from './value-at.ts';

/** The unit that a bare number counts in, written out. */
export const writeUnit: ActionSource = ({ reading }, offset) => {
  const value = valueAt(reading, offset);
  const notation = value === undefined ? undefined : planOfValue(reading, value)?.notation;
  if (value === undefined || notation?.unit === undefined || notation.unit === '' || value.style !== 'plain') return [];
  const { text, span } = value.field;
  const written = notation.write?.(text) ?? text;
  if (!/^[+-]?[\d.]+$/u.test(text.trim()) || written === text) return [];
  return [{ title: `Write the unit: ${written}`, safety: 'safe', edits: replaceValue(reading, span, written) }];
};
