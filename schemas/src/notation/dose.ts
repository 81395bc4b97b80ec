import { UNSIGNED, decimalComma, hasDecimalComma } from './decimal.ts';
import { bad, good, type Notation, type Reading } from './notation.ts';
import { conversion, unitOf } from './units.ts';

/** A dose: a mass, a volume, a number of drops or of units, and a strength, in any combination. */
export interface Dose {
  /** mg */
  readonly mass?: number;
  /** mL */
  readonly volume?: number;
  /** per cent, weight by volume */
  readonly strength?: number;
  readonly drops?: number;
  /** international units */
  readonly units?: number;
}

const part = new RegExp(String.raw`^(${UNSIGNED})\s*(%|[a-zµμ]+)$`, 'iu');
const drops = new RegExp(String.raw`^(one|${UNSIGNED})\s*drops?$`, 'iu');
const units = new RegExp(String.raw`^(${UNSIGNED})\s*(?:iu|(?:international )?units?)$`, 'iu');
/** 40 mg/mL is a strength; 1 mg/0.1 mL is a mass in a volume. */
const perMillilitre = new RegExp(String.raw`^(${UNSIGNED})\s*([a-zµμ]+)\s*(?:\/|per)\s*ml$`, 'iu');
/** 1 % is 1 g in 100 mL. */
const MG_PER_ML_OF_ONE_PERCENT = 10;
const expected = 'a dose such as 1 mg in 0.1 mL, 0.5 mg, 0.1 mL, 5 % or 1 drop';

export const dose: Notation<Dose> = {
  name: 'dose',
  expected,
  bareNumber: false,
  examples: ['1 mg in 0.1 mL', '5 %'],
  read: readDose,
};

function readDose(text: string): Reading<Dose> {
  if (hasDecimalComma(text)) return decimalComma(text);
  const found: { -readonly [K in keyof Dose]: Dose[K] } = {};
  for (const piece of text.trim().split(/\s*(?:\bof\b|,)\s*/iu)) {
    const wrong = readPiece(piece, found);
    if (wrong === undefined) continue;
    return wrong === ''
      ? bad('unreadable-value', `“${text}” is not a dose. Expected ${expected}.`)
      : bad('wrong-unit', `“${wrong}” is not a unit of a dose. Expected ${expected}.`);
  }
  return good(found);
}

/** Puts what a piece says into a dose. Answers the unit that is none of a dose, or an empty text for no piece of a dose. */
function readPiece(text: string, found: { -readonly [K in keyof Dose]: Dose[K] }): string | undefined {
  const counted = drops.exec(text)?.[1];
  const international = units.exec(text)?.[1];
  const strength = perMillilitre.exec(text);
  const mgPerMl = conversion(unitOf(strength?.[2] ?? '') ?? '', 'mg');
  if (counted !== undefined) found.drops = counted.toLowerCase() === 'one' ? 1 : Number(counted);
  else if (international !== undefined) found.units = Number(international);
  else if (strength !== null && mgPerMl !== undefined)
    found.strength = round((Number(strength[1]) * mgPerMl) / MG_PER_ML_OF_ONE_PERCENT);
  else return readAmounts(text, found);
  return undefined;
}

function readAmounts(text: string, found: { -readonly [K in keyof Dose]: Dose[K] }): string | undefined {
  for (const piece of text.split(/\s*(?:\bin\b|\/)\s*/iu)) {
    const match = part.exec(piece);
    if (match?.[1] === undefined) return '';
    const amount = Number(match[1]);
    const unit = unitOf(match[2] ?? '') ?? '';
    const mg = conversion(unit, 'mg');
    const mL = conversion(unit, 'mL');
    if (unit === '%') found.strength = amount;
    else if (mg !== undefined) found.mass = round(amount * mg);
    else if (mL !== undefined) found.volume = round(amount * mL);
    else return match[2];
  }
  return undefined;
}

function round(value: number): number {
  return Number(value.toPrecision(12));
}
