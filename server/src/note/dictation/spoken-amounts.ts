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
  const simple = simpleAmountsAt(tokens, from, table);
  return [...simple, ...simple.flatMap((item) => minutesAndSeconds(item, tokens, table))];
}

function simpleAmountsAt(tokens: readonly Token[], from: number, table: Table): readonly AmountItem[] {
  return numbersAt(tokens, from).flatMap((number) => {
    const after = tokens[number.end]?.word === '-' ? number.end + 1 : number.end;
    const units = table.units.at(tokens, after, noSlots).map(({ to, meanings }) => {
      const unit = meanings.find(({ heard }) => !heard) ?? meanings[0]!;
      return amountItem(tokens, from, to, number, unit);
    });
    return [amountItem(tokens, from, number.end, number, undefined), ...units];
  });
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

/** "One minute and twelve seconds" is one length of time; "one minute fifteen" most likely is. */
function minutesAndSeconds(item: AmountItem, tokens: readonly Token[], table: Table): readonly Item[] {
  const { unit, value: minutes } = item.amount;
  if (unit !== 'min' || !Number.isInteger(minutes)) return [];
  const rest = tokens[item.to]?.word === 'and' ? item.to + 1 : item.to;
  return simpleAmountsAt(tokens, rest, table).flatMap(({ amount, to, end, heard }) => {
    const bare = amount.unit === undefined;
    if (amount.signed || amount.value >= 60 || !(bare || amount.unit === 's')) return [];
    const value = minutes * 60 + amount.value;
    const whole: Amount = { ...item.amount, value, written: String(value), unit: 's' };
    return [{ ...item, to, end, amount: whole, heard: item.heard || heard || bare }];
  });
}
