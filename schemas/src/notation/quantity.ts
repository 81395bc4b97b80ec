import { MINUTES_AND_SECONDS, secondsIn } from './duration.ts';
import { DECIMAL, UNSIGNED, decimalComma, hasDecimalComma, readDecimal } from './decimal.ts';
import { bad, good, type Notation, type Reading } from './notation.ts';
import { conversion, spellingsFor, unitOf } from './units.ts';

/** A measured amount in the field's own unit, with what was typed. */
export interface Quantity {
  /** In the field's own unit. */
  readonly amount: number;
  readonly unit: string;
  /** The number as typed, before any conversion. */
  readonly typed: string;
  /** The unit as understood from the text; undefined for a bare number. */
  readonly typedUnit?: string;
}

const shape = new RegExp(`^(${DECIMAL})\\s*(.*)$`, 'u');
/** No power at all. */
const PLANO = '[Pp]lano';
const isPlano = new RegExp(`^${PLANO}$`, 'iu');

/** A quantity in `unit`. A bare number takes the unit, another unit of the same kind is converted. */
export function quantityIn(
  unit: string,
  options: { readonly signed?: boolean; readonly example: string },
): Notation<Quantity> {
  const units = spellingsFor(unit).map(escape).join('|');
  const number = options.signed === true ? DECIMAL : UNSIGNED;
  const forms = inWords(unit, options.signed === true);
  const expected =
    unit === '' ? `a number such as ${options.example}` : `a quantity in ${unit} such as ${options.example}`;
  return {
    name: unit === '' ? 'number' : `quantity in ${unit}`,
    unit,
    expected,
    bareNumber: true,
    pattern: unit === '' ? `^${number}$` : `^(?:${[`${number}\\s*(?:${units})?`, ...forms].join('|')})$`,
    examples: [options.example],
    read: (text) => readQuantity(text, unit, expected, options.signed === true),
    write: (text) => writeQuantity(text, unit),
  };
}

function readQuantity(text: string, unit: string, expected: string, signed: boolean): Reading<Quantity> {
  const special = readWords(text, unit, signed);
  if (special !== undefined) return good(special);
  const match = shape.exec(text);
  const decimal = match?.[1] === undefined ? undefined : readDecimal(match[1]);
  if (match === null || decimal === undefined || hasDecimalComma(text)) return unreadable(text, expected);
  if (decimal.amount < 0 && !signed)
    return bad('unreadable-value', `“${text}” is below zero, which cannot be. Expected ${expected}.`);
  const spelling = (match[2] ?? '').trim();
  if (spelling === '') return good({ amount: decimal.amount, unit, typed: decimal.typed });
  if (unit === '' || spelling.startsWith(':')) return unreadable(text, expected);
  const typedUnit = unitOf(spelling);
  const factor = typedUnit === undefined ? undefined : conversion(typedUnit, unit);
  if (typedUnit === undefined || factor === undefined) {
    const reason =
      typedUnit === undefined ? `“${spelling}” is not a unit known here` : `${typedUnit} measures something else`;
    return bad('wrong-unit', `“${text}” has the wrong unit: ${reason}. Expected ${expected}.`);
  }
  return good({ amount: convert(decimal.amount, factor), unit, typed: decimal.typed, typedUnit });
}

/** What a quantity may be written as besides a number: time in minutes and seconds, a power of nothing. */
function inWords(unit: string, signed: boolean): readonly string[] {
  if (unit === 's') return [MINUTES_AND_SECONDS];
  return unit === 'D' && signed ? [PLANO] : [];
}

function readWords(text: string, unit: string, signed: boolean): Quantity | undefined {
  const seconds = unit === 's' ? secondsIn(text) : undefined;
  if (seconds !== undefined) return { amount: seconds, unit, typed: String(seconds), typedUnit: unit };
  return unit === 'D' && signed && isPlano.test(text.trim())
    ? { amount: 0, unit, typed: '0', typedUnit: unit }
    : undefined;
}

/** Conversion by a power of ten must not leave 0.545 mm as 545.0000000001 µm. */
function convert(amount: number, factor: number): number {
  return factor === 1 ? amount : Number((amount * factor).toPrecision(12));
}

function unreadable(text: string, expected: string): Reading<Quantity> {
  if (hasDecimalComma(text)) return decimalComma(text);
  return bad('unreadable-value', `“${text}” is not understood. Expected ${expected}.`);
}

function writeQuantity(text: string, unit: string): string {
  if (readWords(text, unit, true) !== undefined) return text.trim();
  const match = shape.exec(text);
  if (match?.[1] === undefined || unit === '') return text;
  const spelling = (match[2] ?? '').trim();
  const written = spelling === '' ? unit : (unitOf(spelling) ?? spelling);
  return written === '°' || written === '%'
    ? `${match[1]}${written === '%' ? ' ' : ''}${written}`
    : `${match[1]} ${written}`;
}

function escape(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\/]/gu, String.raw`\$&`);
}
