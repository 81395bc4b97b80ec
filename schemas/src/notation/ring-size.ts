import { UNSIGNED } from './decimal.ts';
import { bad, good, type Notation, type Reading } from './notation.ts';

/** A capsular tension ring's two diameters in mm; compressed is undefined when one number was written. */
export interface RingSize {
  readonly free: number;
  readonly compressed?: number;
}

const shape = new RegExp(String.raw`^(${UNSIGNED})(?:\s*mm)?(?:\s*(?:/|x|×)\s*(${UNSIGNED}))?\s*(?:mm)?$`, 'iu');
const expected = 'the free and the compressed diameter, such as 13/11 mm';

/** Either order is understood (13/11 or 11/13): the larger of the two is the free diameter. */
export const ringSize: Notation<RingSize> = {
  name: 'ring size',
  expected,
  bareNumber: true,
  examples: ['13/11 mm'],
  read: readRingSize,
  write: (text) => {
    const match = shape.exec(text.trim());
    return match?.[1] === undefined ? text : `${match[1]}${match[2] === undefined ? '' : `/${match[2]}`} mm`;
  },
};

function readRingSize(text: string): Reading<RingSize> {
  const match = shape.exec(text.trim());
  if (match?.[1] === undefined) return bad('unreadable-value', `“${text}” is not a ring size. Expected ${expected}.`);
  const first = Number(match[1]);
  if (match[2] === undefined) return good({ free: first });
  const second = Number(match[2]);
  return good({ free: Math.max(first, second), compressed: Math.min(first, second) });
}
