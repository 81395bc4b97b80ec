// oxlint-disable-next-line no-control-regex -- these are the characters that are looked for
const FORBIDDEN = /[\u0000-\u0008\u000B\u000C\u000E-\u001F]/gu;

/**
 * The same data with a picture in the place of each control character but tab and line ends, which a FHIR string may not
 * hold (R4, 2.24.0.1): U+0001 is ␁, the separator of a barcode is ␝.
 */
export function printable<T>(data: T): T {
  // Every member keeps its place and its type.
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion
  return cleaned(data) as T;
}

function cleaned(value: unknown): unknown {
  if (typeof value === 'string')
    return value.replace(FORBIDDEN, (character) => String.fromCodePoint(0x2400 + character.charCodeAt(0)));
  if (Array.isArray(value)) return value.map((item) => cleaned(item));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, member]) => [key, cleaned(member)]));
}
