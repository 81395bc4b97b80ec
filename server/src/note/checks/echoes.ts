import type { Span } from '@sideport/schemas';
import type { Remark } from '../remark.ts';

const IMPOSSIBLE = 'impossible-value';
const UNUSUAL = 'unusual-value';
const NO_KIND = 'record-kind-missing';

/**
 * One slip, one remark. A value that the reader called impossible makes comparisons with it worthless, and a number
 * that a more telling check already asks about needs no second question for being unusual. A head whose line “record”
 * cannot be read is not missing it as well.
 */
export function withoutEchoes(remarks: readonly Remark[]): Remark[] {
  const impossible = remarks.filter(({ check }) => check === IMPOSSIBLE);
  const unusual = remarks.filter(({ check }) => check === UNUSUAL);
  const withoutKind = remarks.find(({ check }) => check === NO_KIND);
  if (impossible.length === 0 && unusual.length === 0 && withoutKind === undefined) return [...remarks];
  const isToldAlready = remarks.some(({ check, message }) => check !== NO_KIND && message.includes('“record'));
  const kept = remarks.filter(
    (remark) =>
      !(remark === withoutKind && isToldAlready) &&
      (remark.check === IMPOSSIBLE || !impossible.some(({ span }) => touches(remark, span))),
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
