import { UNSIGNED, decimalComma, hasDecimalComma } from './decimal.ts';
import { bad, good, type Notation, type Reading } from './notation.ts';
import { conversion, unitOf } from './units.ts';

/** A dose: a mass, a volume or a strength in per cent, in any combination. */
export interface Dose {
  /** mg */
  readonly mass?: number;
  /** mL */
  readonly volume?: number;
  /** per cent, weight by volume */
  readonly strength?: number;
}

const part = new RegExp(String.raw`^(${UNSIGNED})\s*(%|[a-zµμ]+)$`, 'iu');
const expected = 'a dose such as 1 mg in 0.1 mL, 0.5 mg, 0.1 mL or 5 %';

export const dose: Notation<Dose> = {
  name: 'dose',
  expected,
  bareNumber: false,
  examples: ['1 mg in 0.1 mL', '5 %'],
  read: readDose,
};

function readDose(text: string): Reading<Dose> {
  if (hasDecimalComma(text)) return decimalComma(text);
  const found: { mass?: number; volume?: number; strength?: number } = {};
  for (const piece of text.trim().split(/\s*(?:\bin\b|\bof\b|\/|,)\s*/iu)) {
    const match = part.exec(piece);
    const unit = match?.[2] === undefined ? undefined : unitOf(match[2]);
    if (match?.[1] === undefined) return bad('unreadable-value', `“${text}” is not a dose. Expected ${expected}.`);
    const amount = Number(match[1]);
    const mg = unit === undefined ? undefined : conversion(unit, 'mg');
    const mL = unit === undefined ? undefined : conversion(unit, 'mL');
    if (unit === '%') found.strength = amount;
    else if (mg !== undefined) found.mass = round(amount * mg);
    else if (mL !== undefined) found.volume = round(amount * mL);
    else return bad('wrong-unit', `“${match[2]}” is not a unit of a dose. Expected ${expected}.`);
  }
  return good(found);
}

function round(value: number): number {
  return Number(value.toPrecision(12));
}
