import type { Offset, Site } from '@sideport/schemas';
import type { ReadValue } from '../../reading/note-reading.ts';
import { positionOf } from '../../calculations/position/site.ts';
import { replaceValue } from '../../edits/replace-value.ts';
import { positionOfPlace } from '../../picture/place.ts';
import type { Around } from '../around.ts';
import type { ActionSource } from './action.ts';
import { valueAt } from './value-at.ts';

/** A clock hour as degrees of the dial, which mean the same to everyone. */
export const clockHourToDegrees: ActionSource = (around, offset) => {
  const value = valueAt(around.reading, offset);
  const place = value === undefined ? undefined : placeIn(value);
  if (value === undefined || place?.kind !== 'clock') return [];
  const position = positionOfPlace(place, eyeOf(around), seatOf(around));
  if (position === undefined) return [];
  const { span, text } = value.field;
  const written = text.replace(/[^\s].*o['’]?\s?clock.*$/iu, (rest) => {
    const before = /^(.*?towards?\s+)/iu.exec(rest)?.[1] ?? '';
    return `${before}${position}°`;
  });
  return [
    {
      title: `Write the clock hour as ${position}°`,
      safety: 'safe',
      edits: replaceValue(around.reading, span, written),
    },
  ];
};

function placeIn({ field: { value } }: ReadValue): Site | undefined {
  if (typeof value !== 'object' || value === null) return undefined;
  if ('kind' in value) return value as Site;
  return 'distance' in value ? (value as Offset).toward : undefined;
}

function eyeOf({ reading }: Around): 'right' | 'left' | undefined {
  return reading.kind === 'operation' || reading.kind === 'follow-up' ? reading.note.eye?.value : undefined;
}

function seatOf(around: Around): number | undefined {
  const { reading } = around;
  const eye = eyeOf(around);
  const seat = reading.kind === 'operation' ? reading.note.seat?.value : undefined;
  return seat === undefined || eye === undefined ? undefined : positionOf(seat, eye);
}
