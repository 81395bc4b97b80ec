import type { Field, GroupPlan, Plan, Quantity, ValuePlan } from '@sideport/schemas';
import { compareText } from '../reports/report-input.ts';
import type { Json } from './json-text.ts';
import { isField, isGroup, isList, type Group } from './members.ts';
import { amountOf, decimalsOf, tidyText } from './written-value.ts';

export type PlainNote = Readonly<Record<string, Json>>;

/**
 * A record of a note as plain data under the note's own field names. Numbers are text, as written; a field that
 * says why it has no value is `{"said": "none"}`; a field that is not there is left out. All keys stand in the order
 * of their UTF-16 units, as the canonical form of JSON has them.
 */
export function plainNote(note: Group, plan: GroupPlan): PlainNote {
  const result: Record<string, Json> = {};
  for (const [key, field] of fieldsInOrder(plan)) {
    const member = note[key];
    const word = note.$.said[key]?.word;
    const plain = member === undefined ? undefined : plainMember(member, field);
    if (plain !== undefined) result[key] = plain;
    else if (word !== undefined) result[key] = { said: word };
  }
  return result;
}

const inOrder = new WeakMap<GroupPlan, readonly (readonly [string, Plan])[]>();

function fieldsInOrder(plan: GroupPlan): readonly (readonly [string, Plan])[] {
  let fields = inOrder.get(plan);
  if (fields === undefined) {
    fields = [...plan.fields].toSorted(([a], [b]) => compareText(a, b));
    inOrder.set(plan, fields);
  }
  return fields;
}

function plainMember(member: unknown, plan: Plan): Json | undefined {
  if (plan.kind === 'group') return isGroup(member) ? plainNote(member, plan) : undefined;
  if (plan.kind === 'value') return isField(member) ? plainValue(member, plan) : undefined;
  if (!isList(member)) return undefined;
  return member.items.map((item) => plainMember(item, plan.item)).filter((item) => item !== undefined);
}

/** A word, text or date as text, yes or no as a boolean, a quantity with its unit, anything composed as written. */
function plainValue(field: Field<unknown>, { notation }: ValuePlan): Json {
  const { value } = field;
  if (typeof value === 'boolean' || typeof value === 'string') return value;
  if (typeof value === 'number') return String(value);
  if (isQuantity(value)) {
    return value.unit === '' ? { value: amountOf(value) } : { unit: value.unit, value: amountOf(value) };
  }
  return parts({ ...(value as object), written: tidyText(field, notation) }, [...decimalsOf(field.text)]);
}

function isQuantity(value: unknown): value is Quantity {
  return typeof value === 'object' && value !== null && 'amount' in value && !('meridian' in value);
}

/**
 * The parts of a composed value; a number that was typed keeps its digits, one that was worked out has its own.
 * @param typed the numbers of the text that no part has taken yet
 */
function parts(value: object, typed: string[]): Record<string, Json> {
  const found: [string, Json][] = [];
  // A notation gives its parts in the order of the text, so that of two equal numbers (+0.00, x 0) each takes its own.
  for (const [name, member] of Object.entries(value)) {
    const plain = part(member, typed);
    if (plain !== undefined) found.push([keyOf(name), plain]);
  }
  return Object.fromEntries(found.toSorted(([a], [b]) => compareText(a, b)));
}

function part(member: unknown, typed: string[]): Json | undefined {
  if (typeof member === 'object' && member !== null) return parts(member, typed);
  if (typeof member === 'string' || typeof member === 'boolean' || member === null) return member;
  if (typeof member !== 'number') return undefined;
  const at = typed.findIndex((text) => Number(text) === member);
  return at < 0 ? String(member) : typed.splice(at, 1)[0];
}

const keys = new Map<string, string>();

/** The name of a part with hyphens, as in notes. There are few of them, and they come up for every value. */
function keyOf(name: string): string {
  let key = keys.get(name);
  if (key === undefined) {
    key = name.replaceAll(/[A-Z]/gu, (letter) => `-${letter.toLowerCase()}`);
    keys.set(name, key);
  }
  return key;
}
