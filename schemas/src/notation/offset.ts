import { UNSIGNED } from './decimal.ts';
import { bad, good, type Notation, type Reading } from './notation.ts';
import { readSite, writeSite, type Site } from './site.ts';
import { conversion, unitOf } from './units.ts';

/** How far something lies off the centre, and toward which place. A null distance was not measured. */
export interface Offset {
  /** mm; 0 when centred. */
  readonly distance: number | null;
  /** undefined when centred. */
  readonly toward?: Site;
}

const shape = new RegExp(String.raw`^(?:(${UNSIGNED})\s*([a-zµμ]+)?\s+)?(towards?\s+)?(.+)$`, 'iu');
const expected = "“centred”, or a distance and a direction such as 0.3 mm toward 3 o'clock";

export const offset: Notation<Offset> = {
  name: 'offset',
  expected,
  bareNumber: false,
  examples: ['centred', "0.3 mm toward 3 o'clock", 'toward nasal'],
  read: readOffset,
  write: writeOffset,
};

function readOffset(text: string): Reading<Offset> {
  if (/^(?:well )?cent(?:red|ered|ral)$/iu.test(text.trim())) return good({ distance: 0 });
  const match = shape.exec(text.trim());
  const place = readSite(match?.[4] ?? '');
  // A sector is a direction without further words: 0.3 mm nasally.
  const isDirection = match?.[3] !== undefined || (place.ok && place.value.kind === 'word');
  if (match === null || !isDirection)
    return bad('unreadable-value', `“${text}” is not an offset. Expected ${expected}.`);
  if (!place.ok) return place;
  if (match[1] === undefined) return good({ distance: null, toward: place.value });
  const factor = match[2] === undefined ? 1 : conversion(unitOf(match[2]) ?? '', 'mm');
  if (factor === undefined) return bad('wrong-unit', `“${match[2]}” is not a length. Expected ${expected}.`);
  return good({ distance: Number(match[1]) * factor, toward: place.value });
}

function writeOffset(text: string): string {
  const reading = readOffset(text);
  if (!reading.ok) return text;
  const { distance, toward } = reading.value;
  if (toward === undefined) return 'centred';
  const match = shape.exec(text.trim());
  const direction = `toward ${writeSite(toward, match?.[4])}`;
  if (distance === null) return direction;
  return `${match?.[1] ?? distance} ${unitOf(match?.[2] ?? 'mm') ?? 'mm'} ${direction}`;
}
