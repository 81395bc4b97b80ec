/** Attribute values; undefined leaves the attribute out. */
export type Attributes = Readonly<Record<string, string | number | undefined>>;

/** One SVG element as text. Children are SVG text already; use {@link plain} for words. */
export function element(name: string, attributes: Attributes, ...children: string[]): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${typeof value === 'number' ? short(value) : plain(String(value))}"`)
    .join('');
  return children.length === 0 ? `<${name}${written}/>` : `<${name}${written}>${children.join('')}</${name}>`;
}

/** Words made safe to stand in SVG, as content or within an attribute. */
export function plain(words: string): string {
  return words.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
}

/** Two decimals are a fortieth of the thinnest line; more would only make the picture longer. */
export function short(value: number): string {
  return String(Math.round(value * 100) / 100 + 0);
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** The point at a counter-clockwise angle; SVG's y grows downward. */
export function pointAt(centre: Point, radius: number, degrees: number): Point {
  const angle = (degrees * Math.PI) / 180;
  return { x: centre.x + radius * Math.cos(angle), y: centre.y - radius * Math.sin(angle) };
}

export function lineBetween(from: Point, to: Point, attributes: Attributes): string {
  return element('line', { x1: from.x, y1: from.y, x2: to.x, y2: to.y, ...attributes });
}

/** Path data of an arc about a centre, counter-clockwise from one angle to the other unless `clockwise`. */
export function arc(centre: Point, radius: number, from: number, to: number, clockwise = false): string {
  const end = pointAt(centre, radius, to);
  const span = (((clockwise ? from - to : to - from) % 360) + 360) % 360;
  return `A ${short(radius)} ${short(radius)} 0 ${span > 180 ? 1 : 0} ${clockwise ? 1 : 0} ${short(end.x)} ${short(end.y)}`;
}

export function moveTo(point: Point): string {
  return `M ${short(point.x)} ${short(point.y)}`;
}

export function lineTo(point: Point): string {
  return `L ${short(point.x)} ${short(point.y)}`;
}
