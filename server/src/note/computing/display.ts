import {
  displayAxis,
  displayNumber,
  displayPower,
  displayShare,
  displayVector,
  fixed,
} from '../calculations/display.ts';
import type { ComputedName } from '@sideport/schemas';
import type { ComputedData } from './computed.ts';

/** Numbers that are written with their sign, as lens powers and refractions are. */
const SIGNED =
  /^(?:lens-power|predicted-refraction|spherical-equivalent|prediction-|difference-from-target|magnitude-of-error|flattening-effect|torque|change-)/u;

const part = (value: ComputedData, key: string): unknown =>
  typeof value === 'object' && value !== null ? Reflect.get(value, key) : undefined;
const numberAt = (value: ComputedData, key: string): number => {
  const found = part(value, key);
  return typeof found === 'number' ? found : NaN;
};
const axisAt = (value: ComputedData): number | null => {
  const found = part(value, 'axis');
  return typeof found === 'number' ? found : null;
};

function displayRefraction(value: ComputedData): string {
  const cylinder = numberAt(value, 'cylinder');
  const sphere = displayPower(numberAt(value, 'sphere'));
  return Number(fixed(cylinder, 2)) === 0
    ? sphere
    : `${sphere} / ${displayPower(cylinder)} x ${displayAxis(axisAt(value)).replace('°', '')}`;
}

const powerVector = (value: ComputedData): string =>
  `M ${displayPower(numberAt(value, 'm'))}, J0 ${displayPower(numberAt(value, 'j0'))}, J45 ${displayPower(numberAt(value, 'j45'))} D`;

function displayList(items: readonly ComputedData[]): string {
  if (items.length === 0) return 'none';
  return items
    .map((item) => {
      if (typeof item === 'string') return item;
      const what = part(item, 'what');
      if (typeof what === 'string') return `${what} ${String(part(item, 'due'))}`;
      return `${String(part(item, 'figure'))} [${String(part(item, 'citation'))}]`;
    })
    .join('; ');
}

const isList = (value: ComputedData): value is readonly ComputedData[] => Array.isArray(value);

function displayObject(value: ComputedData, unit: string): string {
  if (isList(value)) return displayList(value);
  if (part(value, 'magnitude') !== undefined)
    return displayVector({ magnitude: numberAt(value, 'magnitude'), axis: axisAt(value) });
  if (part(value, 'power') !== undefined)
    return `${displayNumber(numberAt(value, 'power'), 'D')} @ ${displayAxis(axisAt(value))}`;
  if (part(value, 'sphere') !== undefined) return displayRefraction(value);
  if (part(value, 'm') !== undefined) return powerVector(value);
  return `${numberAt(value, 'free')}/${numberAt(value, 'compressed')} ${unit}`;
}

/** Data of any shape as a person reads it, rounded as the trade does. */
export function displayData(value: ComputedData, unit: string): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'number') return displayNumber(value, unit);
  return typeof value === 'string' ? value : value === null ? 'none' : displayObject(value, unit);
}

const LONGEST_WHAT = 32;

const daysOf = (review: ComputedData): number => numberAt(review, 'days');

/** The review that is longest overdue, and how many more there are: short enough to stand behind a line. */
function displayOverdue(reviews: readonly ComputedData[]): string {
  const longest = reviews.toSorted((a, b) => daysOf(b) - daysOf(a))[0];
  if (longest === undefined) return 'none';
  const what = String(part(longest, 'what'));
  const short = what.length > LONGEST_WHAT ? `${what.slice(0, LONGEST_WHAT - 1).trimEnd()}…` : what;
  const more = reviews.length === 1 ? '' : ` and ${reviews.length - 1} more`;
  return `${short} by ${daysOf(longest)} days${more}`;
}

/** Words that a calculation writes with hyphens, as names; a date keeps its own. */
const spoken = (text: string): string => (/^\d{4}-/u.test(text) ? text : text.replaceAll('-', ' '));

/** A computed value as a person reads it. */
export function display(name: ComputedName, value: ComputedData, unit: string): string {
  if (typeof value === 'string') return spoken(value);
  if (name === 'overdue-reviews' && isList(value)) return displayOverdue(value);
  if (typeof value !== 'number') return displayData(value, unit);
  if (name === 'rupture-risk') return displayShare(value, 1);
  if (name === 'capsulotomy-covered-share') return displayShare(value);
  if (name === 'incision-meridian') return displayAxis(value);
  if (unit === 'D' && SIGNED.test(name)) return `${displayPower(value)} D`;
  return displayNumber(value, unit);
}
