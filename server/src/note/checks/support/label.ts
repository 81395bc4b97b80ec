import { Lately } from '../../lately.ts';
import type { Operation } from '@sideport/schemas';
import { readLabel } from '../../label/label.ts';
import { labelValue, type LabelReading } from '../../label/reading.ts';
import { lastDayOf } from './dates.ts';

type Lens = NonNullable<Operation['lens']>;

const readings = new Lately<Lens, LabelReading>();
const USUAL_YEAR = 2030;

/** The labels read last: while a note is edited its label stays the same. */
const lately = new Map<string, LabelReading>();
const KEPT = 16;

function read(udi: string, year: number): LabelReading {
  const key = `${year} ${udi}`;
  let reading = lately.get(key);
  if (reading === undefined) {
    reading = readLabel(udi, year);
    if (lately.size >= KEPT) lately.clear();
    lately.set(key, reading);
  }
  return reading;
}

/** The label of the box as scanned or typed, read once. */
export function labelOf(lens: Lens, date: string | undefined): LabelReading | undefined {
  if (lens.udi === undefined) return undefined;
  const known = readings.get(lens);
  if (known !== undefined) return known;
  const reading = read(lens.udi.value, Number(date?.slice(0, 4) ?? USUAL_YEAR));
  readings.set(lens, reading);
  return reading;
}

export function labelIsSound(label: LabelReading): boolean {
  return label.faults.every(({ severity }) => severity !== 'error');
}

/** The fields whose values disagree with the label of the box, with what the label says. */
export function labelDisagreements(lens: Lens, date: string | undefined) {
  const label = labelOf(lens, date);
  if (label === undefined || !labelIsSound(label)) return [];
  const kinds = [
    ['serial', 'serial', 'serial number'],
    ['lot', 'lot', 'lot'],
    ['expiry', 'expiry', 'expiry'],
  ] as const;
  return kinds.flatMap(([key, kind, name]) => {
    const field = lens[key];
    const onLabel = labelValue(label, kind);
    if (field === undefined || onLabel === undefined) return [];
    const same = key === 'expiry' ? sameExpiry(field.value, onLabel) : field.value.trim() === onLabel;
    return same ? [] : [{ field, name, onLabel }];
  });
}

/** A month and a day of that month agree: boxes print one, codes the other. */
function sameExpiry(a: string, b: string): boolean {
  if (a.length === 7 || b.length === 7) return a.slice(0, 7) === b.slice(0, 7);
  return lastDayOf(a) === lastDayOf(b);
}
