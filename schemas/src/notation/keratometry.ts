import { DEGREE, UNSIGNED, decimalComma, hasDecimalComma } from './decimal.ts';
import { bad, good, type Notation, type Reading } from './notation.ts';

/** One principal meridian of the cornea, as typed: a power in dioptres or a radius in mm. */
export interface Keratometry {
  readonly amount: number;
  readonly unit: 'D' | 'mm';
  readonly typed: string;
  /** Meridian in degrees, 0 to 180; null when not written. */
  readonly meridian: number | null;
}

const shape = new RegExp(
  String.raw`^(${UNSIGNED})\s*(D|dioptres?|diopters?|mm)?(?:\s*(?:@|at|x|×)\s*(\d{1,3}(?:\.\d+)?)\s*${DEGREE}?)?$`,
  'iu',
);
const expected = 'a corneal power or radius with its meridian, such as 43.25 D @ 5 or 7.80 mm @ 5';
/** A bare number below this can only be a radius, above it only a power: no cornea has 20 mm or 20 D. */
const RADIUS_BELOW = 20;

export const keratometry: Notation<Keratometry> = {
  name: 'keratometry',
  expected,
  bareNumber: true,
  examples: ['43.25 D @ 5', '7.80 mm @ 95'],
  read: readKeratometry,
  write: (text) => {
    const match = shape.exec(text.trim());
    const reading = readKeratometry(text);
    if (match?.[1] === undefined || !reading.ok) return text;
    return `${match[1]} ${reading.value.unit}${match[3] === undefined ? '' : ` @ ${match[3]}`}`;
  },
};

function readKeratometry(text: string): Reading<Keratometry> {
  const match = shape.exec(text.trim());
  if (match?.[1] === undefined) {
    if (hasDecimalComma(text)) return decimalComma(text);
    return bad('unreadable-value', `“${text}” is not a keratometry. Expected ${expected}.`);
  }
  const amount = Number(match[1]);
  const meridian = match[3] === undefined ? null : Number(match[3]);
  if (meridian !== null && meridian > 180) {
    return bad('unreadable-value', `A meridian runs from 0 to 180 degrees; “${text}” has ${match[3]}.`);
  }
  const typedUnit = match[2] === undefined ? undefined : match[2].toLowerCase() === 'mm' ? 'mm' : 'D';
  const unit = typedUnit ?? (amount < RADIUS_BELOW ? 'mm' : 'D');
  return good({ amount, unit, typed: match[1], meridian });
}
