import type { Span } from '@sideport/schemas';
import type { NoteReading } from '../reading/note-reading.ts';
import { below, extent, rootSpot, type Spot } from './spots.ts';

/** What a selection at an offset grows to, step by step: the value, the field, the section, …, the whole note. */
export function selectionsAt(reading: NoteReading, offset: number): readonly Span[] {
  const spans: Span[] = [{ start: 0, end: reading.text.length }];
  let at: Spot | undefined = rootSpot(reading.tree, reading.kind);
  for (;;) {
    at = [...below(at)].find((spot) => holds(extent(spot), offset));
    if (at === undefined) break;
    spans.push(extent(at));
    if (at.key !== null && holds(at.key, offset)) {
      spans.push(at.key);
      break;
    }
    if (at.node !== null && holds(at.node.span, offset)) spans.push(at.node.span);
  }
  return spans.filter((span, index) => index === 0 || !same(span, spans[index - 1])).toReversed();
}

function holds({ start, end }: Span, offset: number): boolean {
  return start <= offset && offset <= end;
}

function same(a: Span, b: Span | undefined): boolean {
  return a.start === b?.start && a.end === b.end;
}
