import type { Path, Span } from '@sideport/schemas';
import type { ComputedNote } from '../computing/computed.ts';
import type { NoteReading } from '../reading/note-reading.ts';
import { lineAt } from '../edits/lines.ts';
import { explainComputed, type ComputedExplanation } from './explain.ts';
import { spotOf } from './spots.ts';

/** Computed values shown at the end of the line they belong to. */
export interface Beside {
  /** The end of what is written on the line, before its comment. */
  readonly at: number;
  readonly text: string;
  readonly explanations: readonly ComputedExplanation[];
}

/** One entry for each line that computed values belong to. */
export function valuesBeside(reading: NoteReading, computed: ComputedNote): readonly Beside[] {
  const lines = new Map<number, Beside>();
  for (const value of computed.values) {
    if (!value.inline) continue;
    const at = endOfLine(reading, value.span);
    const before = lines.get(at);
    const text = `${value.label} ${value.display}`.trim();
    lines.set(at, {
      at,
      text: before === undefined ? text : `${before.text} · ${text}`,
      explanations: [...(before?.explanations ?? []), explainComputed(value)],
    });
  }
  return [...lines.values()].toSorted((a, b) => a.at - b.at);
}

/** The end of the first line of a place: where its own text ends. */
function endOfLine({ text, tree }: NoteReading, span: Span): number {
  const line = lineAt(text, span.start);
  const comment = tree.comments.find((each) => each.span.start >= line.start && each.span.end <= line.end);
  const end = comment?.span.start ?? line.end;
  return line.start + text.slice(line.start, end).trimEnd().length;
}

/** What was computed from a section of the note, for a line above it. */
export interface Above {
  readonly span: Span;
  readonly computed: number;
  readonly notComputed: number;
}

/** The sections from whose fields something was or should be computed. */
export function countsAbove(reading: NoteReading, computed: ComputedNote): readonly Above[] {
  const counts = new Map<string, { computed: number; notComputed: number }>();
  const count = (path: Path, what: 'computed' | 'notComputed') => {
    const section = String(path[0] ?? '');
    const known = counts.get(section) ?? { computed: 0, notComputed: 0 };
    known[what] += 1;
    counts.set(section, known);
  };
  for (const { path } of computed.values) count(path, 'computed');
  for (const { path } of computed.notComputed) count(path, 'notComputed');
  return [...counts].flatMap(([section, both]) => {
    const { key } = spotOf(reading.tree, reading.kind, [section]);
    return key === null ? [] : [{ span: key, ...both }];
  });
}
