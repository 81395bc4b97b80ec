/** A decimal that keeps its digits: written as the bare number 21.50 where JSON is made with {@link jsonText}. */
export interface Decimal {
  readonly decimal: string;
}

export type Json =
  string | number | boolean | null | Decimal | readonly Json[] | { readonly [key: string]: Json | undefined };

/** JSON on one line, with decimals as written. Source: FHIR R4, 2.24.0.1: the precision of a decimal is kept. */
export function jsonText(value: unknown): string {
  if (value === undefined || value === null) return 'null';
  if (typeof value !== 'object') return JSON.stringify(value);
  if (Array.isArray(value)) return `[${value.map((item) => jsonText(item)).join(',')}]`;
  if (isDecimal(value)) return value.decimal;
  const members = Object.entries(value).filter(([, member]) => member !== undefined);
  return `{${members.map(([key, member]) => `${JSON.stringify(key)}:${jsonText(member)}`).join(',')}}`;
}

function isDecimal(value: object): value is Decimal {
  return 'decimal' in value && typeof value.decimal === 'string' && Object.keys(value).length === 1;
}

/**
 * One line of JSON in the canonical form of RFC 8785, so that equal records are equal bytes: keys in the order of their
 * UTF-16 units, numbers and strings as ECMAScript writes them. Throws for what JSON cannot hold.
 */
export function canonicalJson(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map((item) => canonicalJson(item)).join(',')}]`;
  if (typeof value === 'object' && value !== null) {
    const members = Object.entries(value).filter(([, member]) => member !== undefined);
    members.sort(([a], [b]) => (a < b ? -1 : 1));
    return `{${members.map(([key, member]) => `${JSON.stringify(key)}:${canonicalJson(member)}`).join(',')}}`;
  }
  if (typeof value === 'number' && !Number.isFinite(value)) throw new TypeError('JSON holds no such number');
  const text = JSON.stringify(value) as string | undefined;
  if (text === undefined) throw new TypeError('JSON holds no such value');
  return text;
}
