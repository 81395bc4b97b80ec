import type { Operation } from '@sideport/schemas';
import { and } from './english.ts';
import type { Tidy } from './passage.ts';

type Preop = NonNullable<Operation['preop']>;

/** Of which glasses distance the refraction is, where that is written. */
export function refractionWords(
  refraction: Preop['refraction'],
  vertex: Preop['vertex-distance'],
  tidy: Tidy,
): string | undefined {
  const distance = vertex && ` (vertex distance ${tidy(vertex)})`;
  return refraction && `The refraction was ${tidy(refraction)}${distance ?? ''}`;
}

type Biometry = NonNullable<Preop['biometry']>;
type Keratometry = { readonly [K in 'k1' | 'k2' | 'index' | 'keratometry-method']?: Biometry[K] | undefined };

/** `automated keratometry of 43.25 D @ 5 and 44.50 D @ 95 (index 1.3375)`. */
export function keratometryWords(measured: Keratometry, verb: 'of' | 'was', tidy: Tidy): string | undefined {
  const values = and([tidy(measured.k1), tidy(measured.k2)]);
  if (values === '') return undefined;
  const how = measured['keratometry-method']?.value;
  const method =
    how === undefined ? 'keratometry' : how === 'tomography' ? 'keratometry by tomography' : `${how} keratometry`;
  return `${method} ${verb} ${values}${measured.index ? ` (index ${tidy(measured.index)})` : ''}`;
}
