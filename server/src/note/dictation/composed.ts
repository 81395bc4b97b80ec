import type { Settled } from './settle.ts';
import type { ValuePart } from './result.ts';

/** A value that is put together from parts said in different places: a dose, a regimen, a site. */
interface Composition {
  readonly path: RegExp;
  /** Parts in the order in which they are written. */
  readonly parts: readonly string[];
  /** What stands between the parts; “first” and “last”: only that part is written. */
  readonly join: string;
}

const compositions: readonly Composition[] = [
  { path: /\.at$/u, parts: ['°', "o'clock", 'sector'], join: 'first' },
  { path: /\.k[12]$/u, parts: ['D', '°'], join: ' @ ' },
  { path: /\.dose$/u, parts: ['mg', 'mL'], join: ' in ' },
  { path: /\.regimen$/u, parts: ['frequency', 'duration'], join: ' ' },
  { path: /^lens\.placed$/u, parts: ['place', 'capture'], join: 'last' },
];

/** Whether a claim is a part of a value that is put together. */
export function isPart(one: Settled): boolean {
  const { claim, state } = one;
  return (
    claim.field.several !== true && state !== 'unresolved' && compositions.some(({ path }) => path.test(claim.path))
  );
}

export interface Composed {
  readonly value: string;
  readonly parts: readonly ValuePart[];
  /** The part that asks most for a look. */
  readonly weakest: Settled;
}

/** The value that the parts of one path make. */
export function composed(path: string, group: readonly Settled[]): Composed {
  const composition = compositions.find((one) => one.path.test(path))!;
  const order = group.toSorted(
    (a, b) => composition.parts.indexOf(a.claim.part) - composition.parts.indexOf(b.claim.part),
  );
  const texts = order.map(({ claim }) => claim.value);
  return {
    value: joined(texts, composition.join),
    parts: order.map(({ claim }) => ({ value: claim.value, start: claim.start, end: claim.end })),
    weakest: order.find(({ state }) => state === 'proposed') ?? order[0]!,
  };
}

function joined(texts: readonly string[], join: string): string {
  if (join === 'first') return texts[0]!;
  return join === 'last' ? texts.at(-1)! : texts.join(join);
}
