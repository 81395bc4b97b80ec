const ENTITY: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** Text for an XML 1.0 element; characters that XML cannot hold become the replacement character. */
export function escapeXml(text: string): string {
  return text
    .replaceAll(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, '\uFFFD')
    .replaceAll(/[&<>"]/g, (character) => ENTITY[character] ?? character)
    .replaceAll('\r', '&#13;');
}

/** ` name="value"` for every attribute, in the order given; a plain line break would be read back as a blank. */
export function attributes(values: Readonly<Record<string, string | number>>): string {
  return Object.entries(values)
    .map(([name, value]) => ` ${name}="${escapeXml(String(value)).replaceAll('\n', '&#10;').replaceAll('\t', '&#9;')}"`)
    .join('');
}
