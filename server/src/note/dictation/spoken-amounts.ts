import { numbersAt, type NumberReading } from './numbers.ts';
import type { Item } from './scan.ts';
import type { Table, UnitMeaning } from './table.ts';
import type { Token } from './tokens.ts';

/** A spoken number with the unit that follows it. */
export interface Amount {
  readonly value: number;
  readonly written: string;
  readonly signed: boolean;
  readonly unit: string | undefined;
  /** The singular before the thing that it measures: "a five millimetre capsulorhexis". */
  readonly adjective: boolean;
}

type AmountItem = Item & { readonly amount: Amount };

/** Every number that begins at a token, without and with its unit. */
export function amountsAt(tokens: readonly Token[], from: number, table: Table): readonly Item[] {
  if (tokens[from]?.named === true) return [];
  const simple = simpleAmountsAt(tokens, from, table);
  return [...simple, ...simple.flatMap((item) => timesOfTwoUnits(item, tokens, table))];
}

function simpleAmountsAt(tokens: readonly Token[], from: number, table: Table): readonly AmountItem[] {
  return numbersAt(tokens, from).flatMap((number) => {
    const after = tokens[number.end]?.word === '-' ? number.end + 1 : number.end;
    const ofOne = afterFraction(tokens, number);
    const units = table.units.at(tokens, ofOne ?? after, noSlots).map(({ to, meanings }) => {
      const unit = meanings.find(({ heard }) => !heard) ?? meanings[0]!;
      return amountItem(tokens, from, to, number, ofOne === undefined ? unit : { ...unit, adjective: false });
    });
    return [amountItem(tokens, from, number.end, number, undefined), ...units];
  });
}

/** "Half a milligram", "point one of a mil": the position of the unit. */
function afterFraction(tokens: readonly Token[], { value, end }: NumberReading): number | undefined {
  if (Math.abs(value) >= 1 || value === 0) return undefined;
  const at = tokens[end]?.word === 'of' ? end + 1 : end;
  return ['a', 'an'].includes(tokens[at]?.word ?? '') ? at + 1 : undefined;
}

function noSlots(): readonly [] {
  return [];
}

function amountItem(
  tokens: readonly Token[],
  from: number,
  to: number,
  { value, written, signed, heard }: NumberReading,
  unit: UnitMeaning | undefined,
): AmountItem {
  return {
    from,
    to,
    start: tokens[from]!.start,
    end: tokens[to - 1]!.end,
    meanings: [],
    slots: [],
    amount: { value, written, signed, unit: unit?.unit, adjective: unit?.adjective ?? false },
    heard: heard || unit?.heard === true,
  };
}

/** Units of time, each with the next smaller one. */
const smaller: Readonly<Record<string, string>> = { h: 'min', min: 's' };

/** "One minute and twelve seconds" is one length of time; "one minute fifteen" most likely is. */
function timesOfTwoUnits(item: AmountItem, tokens: readonly Token[], table: Table): readonly Item[] {
  const { value: large } = item.amount;
  const unit = smaller[item.amount.unit ?? ''];
  if (unit === undefined || !Number.isInteger(large)) return [];
  const rest = tokens[item.to]?.word === 'and' ? item.to + 1 : item.to;
  return simpleAmountsAt(tokens, rest, table).flatMap(({ amount, to, end, heard }) => {
    const bare = amount.unit === undefined;
    if (amount.signed || amount.value >= 60 || !(bare || amount.unit === unit)) return [];
    const value = large * 60 + amount.value;
    const whole: Amount = { ...item.amount, value, written: String(value), unit };
    return [{ ...item, to, end, amount: whole, heard: item.heard || heard || bare }];
  });
}
