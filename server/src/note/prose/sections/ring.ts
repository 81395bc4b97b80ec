import type { Operation } from '@sideport/schemas';
import { term } from '../as-typed.ts';
import { and, join } from '../english.ts';
import type { Tidy } from '../passage.ts';

const RING_REASONS: Readonly<Record<string, string>> = {
  'weak zonule': 'a weak zonule',
  'ruptured zonule': 'a ruptured zonule',
  'long eye': 'a long eye',
  'toric lens stability': 'the stability of the toric lens',
  'previous vitrectomy': 'a previous vitrectomy',
  centration: 'the centration of the lens',
  other: 'a reason that is not named here',
};

const RING_RESULTS = {
  'bag round and centred': 'the bag was then round and centred',
  'bag still decentred': 'the bag was still decentred',
  'removed again': 'it was removed again',
  'ring lost': 'it was lost',
};

/** Whether a tension ring was used, which, why, and what it did. */
export function ringWords({ ring }: Operation, tidy: Tidy): string | undefined {
  if (!ring?.used) return undefined;
  if (!ring.used.value) return 'No tension ring was implanted';
  const reasons = ring.reason?.items.map(({ value }) => RING_REASONS[value] ?? value) ?? [];
  const placed = join([
    `a ${ring.kind === undefined || ring.kind.value === 'tension ring' ? 'capsular tension ring' : term(ring.kind)}`,
    ring.size && `of ${tidy(ring.size)}`,
    ring.serial && `(number ${tidy(ring.serial)})`,
    'was placed',
    ring.placed && `in the ${ring.placed.value}`,
    ring.inserted?.value,
    reasons.length > 0 && `because of ${and(reasons)}`,
  ]);
  return join([placed, ring.result && RING_RESULTS[ring.result.value]], '; ');
}
