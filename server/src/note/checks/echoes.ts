import type { Span } from '@sideport/schemas';
import type { Remark } from '../remark.ts';

const IMPOSSIBLE = 'impossible-value';
const UNUSUAL = 'unusual-value';

/**
 * One slip, one remark. A value that the reader called impossible makes comparisons with it worthless, and a number
 * that a more telling check already asks about needs no second question for being unusual.
 */
export function withoutEchoes(remarks: readonly Remark[]): Remark[] {
  const impossible = remarks.filter(({ check }) => check === IMPOSSIBLE);
  const unusual = remarks.filter(({ check }) => check === UNUSUAL);
  if (impossible.length === 0 && unusual.length === 0) return [...remarks];
  const kept = remarks.filter(
    (remark) => remark.check === IMPOSSIBLE || !impossible.some(({ span }) => touches(remark, span)),
  );
  return kept.filter(
    (remark) =>
      remark.check !== UNUSUAL || !kept.some((other) => other.check !== UNUSUAL && touches(other, remark.span)),
  );
}

function touches(remark: Remark, span: Span): boolean {
  return same(remark.span, span) || remark.related.some((place) => place.file === undefined && same(place.span, span));
}

function same(a: Span, b: Span): boolean {
  return a.start === b.start && a.end === b.end;
}
