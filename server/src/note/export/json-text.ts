/** A decimal that keeps its digits: written as the bare number 21.50 where JSON is made with {@link jsonText}. */
export interface Decimal {
  readonly decimal: string;
}

export type Json =
  string | number | boolean | null | Decimal | readonly Json[] | { readonly [key: string]: Json | undefined };

/** JSON on one line, with decimals as written. Source: FHIR R4, 2.24.0.1: the precision of a decimal is kept. */
export function jsonText(value: unknown): string {
  if (typeof value === 'string') return quoted(value);
  if (Array.isArray(value)) return listOf(value, jsonText);
  if (!isObject(value)) return plain(value);
  if (isDecimal(value)) return value.decimal;
  let text = '{';
  for (const key in value) {
    const member = value[key];
    if (member !== undefined) text += beginning(text, key) + jsonText(member);
  }
  return `${text}}`;
}

/**
 * One line of JSON in the canonical form of RFC 8785, so that equal records are equal bytes: keys in the order of their
 * UTF-16 units, numbers and strings as ECMAScript writes them. Throws for what JSON cannot hold.
 */
export function canonicalJson(value: unknown): string {
  // What is in that order already, the engine itself writes in that form.
  return isInOrder(value) ? JSON.stringify(value) : inOrder(value);
}

function inOrder(value: unknown): string {
  if (typeof value === 'string') return quoted(value);
  if (Array.isArray(value)) return listOf(value, inOrder);
  if (!isObject(value)) return plain(value);
  let text = '{';
  // Without a comparison of its own, sorting goes by UTF-16 units, which is the order the standard asks for.
  for (const key of Object.keys(value).toSorted()) {
    const member = value[key];
    if (member !== undefined) text += beginning(text, key) + inOrder(member);
  }
  return `${text}}`;
}

/** Whether all keys stand in the order of their UTF-16 units, and nothing is there that JSON cannot hold. */
function isInOrder(value: unknown): boolean {
  if (typeof value === 'string' || typeof value === 'boolean' || value === null) return true;
  if (Array.isArray(value)) return value.every((item) => item !== undefined && isInOrder(item));
  if (!isObject(value)) return Number.isFinite(value);
  let before = '';
  for (const key in value) {
    const member = value[key];
    if (key < before || (member !== undefined && !isInOrder(member))) return false;
    before = key;
  }
  return true;
}

function listOf(items: readonly unknown[], inner: (item: unknown) => string): string {
  let text = '[';
  for (const item of items) text += text === '[' ? inner(item) : `,${inner(item)}`;
  return `${text}]`;
}

function plain(value: unknown): string {
  if (typeof value === 'boolean' || value === null || Number.isFinite(value)) return String(value);
  throw new TypeError('JSON holds no such value');
}

const beginnings = new Map<string, string>();

/** What stands before a member. There are few keys, and they come up in every record. */
function beginning(text: string, key: string): string {
  let quotedKey = beginnings.get(key);
  if (quotedKey === undefined) {
    quotedKey = `${quoted(key)}:`;
    beginnings.set(key, quotedKey);
  }
  return text === '{' ? quotedKey : `,${quotedKey}`;
}

/** Nearly every text in a record has nothing to escape; finding that out is faster than the general way. */
const PLAIN = /^[ !#-[\]-~]*$/u;

function quoted(text: string): string {
  return PLAIN.test(text) ? `"${text}"` : JSON.stringify(text);
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

function isDecimal(value: Readonly<Record<string, unknown>>): value is { decimal: string } {
  return typeof value['decimal'] === 'string' && Object.keys(value).length === 1;
}
