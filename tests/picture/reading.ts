/** Reads drawings back by their own text: what stands in a group, and where. */

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** The SVG text of the group drawn from one path of the note. */
export function groupAt(svg: string, ...path: (string | number)[]): string {
  const mark = ` data-path="${JSON.stringify(path).replaceAll('"', '&quot;')}"`;
  const start = svg.lastIndexOf('<g ', svg.indexOf(mark));
  if (start < 0 || !svg.includes(mark)) throw new Error(`No part is drawn from ${path.join('.')}`);
  let depth = 0;
  for (const tag of svg.slice(start).matchAll(/<g[ >]|<\/g>/g)) {
    depth += tag[0] === '</g>' ? -1 : 1;
    if (depth === 0) return svg.slice(start, start + tag.index);
  }
  throw new Error('The part does not end');
}

export function attributes(svg: string, element: string): readonly ReadonlyMap<string, string>[] {
  return [...svg.matchAll(new RegExp(`<${element} ([^>]*?)/?>`, 'g'))].map(
    ([, written]) =>
      new Map([...(written ?? '').matchAll(/([\w-]+)="([^"]*)"/g)].map(([, key, value]) => [key ?? '', value ?? ''])),
  );
}

export function number(of: ReadonlyMap<string, string> | undefined, name: string): number {
  const value = Number(of?.get(name));
  if (Number.isNaN(value)) throw new Error(`No number in ${name}`);
  return value;
}

/** The end points of the lines and arcs of the first path in a group. */
export function corners(group: string): readonly Point[] {
  const d = attributes(group, 'path')[0]?.get('d') ?? '';
  return [...d.matchAll(/(?:[ML]|A \S+ \S+ \S+ \S+ \S+) (\S+) (\S+)/g)].map(([, x, y]) => ({
    x: Number(x),
    y: Number(y),
  }));
}

export function middle(points: readonly Point[]): Point {
  const sum = points.reduce((a, b) => ({ x: a.x + b.x, y: a.y + b.y }), { x: 0, y: 0 });
  return { x: sum.x / points.length, y: sum.y / points.length };
}

/** Where the words stand in the drawing. */
export function wordsAt(svg: string, words: string): Point {
  const [, written] = new RegExp(`<text ([^>]*)>${words}</text>`).exec(svg) ?? [];
  const [text] = attributes(`<text ${written ?? ''}/>`, 'text');
  return { x: number(text, 'x'), y: number(text, 'y') };
}

/** The centre of the limbus, and its radius. */
export function limbus(svg: string): Point & { readonly radius: number } {
  const eye = attributes(svg, 'circle').find((circle) => circle.get('class') === 'sp-eye');
  return { x: number(eye, 'cx'), y: number(eye, 'cy'), radius: number(eye, 'r') };
}

/** Counter-clockwise from the right-hand horizontal of the drawing. */
export function angleFrom(centre: Point, point: Point): number {
  return (Math.atan2(centre.y - point.y, point.x - centre.x) * 180) / Math.PI;
}
