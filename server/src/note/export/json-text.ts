import canonicalize from 'canonicalize';

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

/** One line of JSON in the canonical form of RFC 8785, so that equal records are equal bytes. */
export function canonicalJson(value: unknown): string {
  const text = canonicalize(value);
  if (text === undefined) throw new TypeError('Only a value that JSON can hold has a canonical form');
  return text;
}
