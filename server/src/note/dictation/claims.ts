import type { SpokenAmount, SpokenField } from '@sideport/schemas/spoken/phrase.ts';

/** A value that the dictation gives to a field. */
export interface Claim {
  readonly field: SpokenField;
  /** Path template of the table. */
  readonly path: string;
  /** In the note's notation. */
  readonly value: string;
  /** Which part of a composed value; values of different parts do not contradict each other. */
  readonly part: string;
  readonly denied: boolean;
  readonly start: number;
  readonly end: number;
  /** Token positions. */
  readonly from: number;
  readonly to: number;
  /** Only sounds like it. */
  readonly heard: boolean;
  /** Guessed from the sound of words that are declared nowhere: gives way to anything that was said. */
  readonly guessed: boolean;
  /** Follows from the words without being said. */
  readonly implied: boolean;
  /** Could belong to another field as well. */
  readonly unsure: boolean;
  /** Left open by the words around it ("risk of …"): never a value. */
  open: boolean;
  /** Given by the same words as another claim, which is the one to look at. */
  readonly besides: boolean;
  /** Gives way to any other value of the field, and is then kept as these words in the free text. */
  readonly orElse?: string;
  /** Withdrawn by a word of correction. */
  superseded: boolean;
}

/** The text of a number in the notation of its field. */
export function writeAmount(
  amount: SpokenAmount,
  spoken: { readonly value: number; readonly written: string; readonly unit: string | undefined },
): string {
  const factor = spoken.unit === undefined || spoken.unit === amount.unit ? 1 : (amount.also?.[spoken.unit] ?? 1);
  const plain = factor === 1 ? spoken.written : String(Number((spoken.value * factor).toPrecision(12)));
  const unsigned = plain.replace(/^[+-]/u, '');
  const minus = spoken.value < 0 || plain.startsWith('-') ? '-' : '';
  const sign = amount.signed === true ? (Number(unsigned) === 0 ? '' : minus === '' ? '+' : '-') : minus;
  const number = `${sign}${unsigned}`;
  if (amount.unit === '') return number;
  if (amount.unit === '°') return `${number}°`;
  return `${number} ${unitWord(amount.unit, Number(number))}`;
}

function unitWord(unit: string, value: number): string {
  return unit === 'clock hours' && Math.abs(value) === 1 ? 'clock hour' : unit;
}

/** Whether a field takes a spoken number, by unit and size; `named` once the field's own name was said. */
export function accepts(
  amount: SpokenAmount,
  spoken: { readonly value: number; readonly unit: string | undefined },
  how: { readonly named: boolean; readonly afterAt: boolean },
): boolean {
  const { value, unit } = spoken;
  const factor = unit === undefined || unit === amount.unit ? 1 : amount.also?.[unit];
  if (factor === undefined) return false;
  if (unit === undefined && amount.unit !== '' && !how.named) {
    if (amount.bare === 'never' || amount.bare === 'named') return false;
    if (amount.bare === 'after at' && !how.afterAt) return false;
  }
  if (unit === undefined && amount.bare === 'never') return false;
  if (unit === undefined && amount.unit === '' && amount.bare === 'named' && !how.named) return false;
  if (amount.namedOnly === true && !how.named) return false;
  const scaled = value * factor;
  const [low, high] = unit === undefined ? (amount.bareWithin ?? amount.possible) : amount.possible;
  if (scaled < low || scaled > high) return false;
  return amount.whole !== true || Number.isInteger(scaled);
}
