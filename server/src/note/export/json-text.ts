/** A decimal that keeps its digits: written as the bare number 21.50 where JSON is made with {@link jsonText}. */
export interface Decimal {
  readonly decimal: string;
}

export type Json =
  string | number | boolean | null | Decimal | readonly Json[] | { readonly [key: string]: Json | undefined };

/** JSON on one line, with decimals as written. Source: FHIR R4, 2.24.0.1: the precision of a decimal is kept. */
export function jsonText(value: unknown): string {
  return isDecimal(value) ? value.decimal : written(value, jsonText, Object.keys);
}

/**
 * One line of JSON in the canonical form of RFC 8785, so that equal records are equal bytes: keys in the order of their
 * UTF-16 units, numbers and strings as ECMAScript writes them. Throws for what JSON cannot hold.
 */
export function canonicalJson(value: unknown): string {
  // Without a comparison of its own, sorting goes by UTF-16 units, which is the order the standard asks for.
  return written(value, canonicalJson, (object) => Object.keys(object).toSorted());
}

/** Pieces are joined as they come: the records of a large set pass through here, and this is the fastest way. */
function written(
  value: unknown,
  inner: (value: unknown) => string,
  keysOf: (object: object) => readonly string[],
): string {
  if (typeof value === 'string') return quoted(value);
  if (Array.isArray(value)) {
    let text = '[';
    for (const item of value) text += text === '[' ? inner(item) : `,${inner(item)}`;
    return `${text}]`;
  }
  if (isRecord(value)) {
    let text = '{';
    for (const key of keysOf(value)) {
      const member = value[key];
      if (member !== undefined) text += `${text === '{' ? '' : ','}${quoted(key)}:${inner(member)}`;
    }
    return `${text}}`;
  }
  if (typeof value === 'boolean' || value === null || Number.isFinite(value)) return String(value);
  throw new TypeError('JSON holds no such value');
}

/** Nearly every text in a record has nothing to escape; finding that out is faster than the general way. */
const PLAIN = /^[ !#-[\]-~]*$/u;

function quoted(text: string): string {
  return PLAIN.test(text) ? `"${text}"` : JSON.stringify(text);
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

function isDecimal(value: unknown): value is Decimal {
  return (
    typeof value === 'object' &&
    value !== null &&
    'decimal' in value &&
    typeof value.decimal === 'string' &&
    Object.keys(value).length === 1
  );
}
