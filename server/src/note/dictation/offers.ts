import { recordPlan, type Path, type Span } from '@sideport/schemas';
import { pathInWords } from '../checks/support/path-in-words.ts';
import { lineAt } from '../edits/lines.ts';
import { spotAt, spotOf } from '../editing/spots.ts';
import type { NoteReading } from '../reading/note-reading.ts';
import type { Edit } from '../remark.ts';
import { orderOf } from '../edits/additions.ts';
import { dictate } from './dictate.ts';
import { NoteView } from './note-view.ts';
import { isPlaceable, placeValues } from './placing.ts';
import type { DictatedValue, DictationResult } from './result.ts';

/** Something that can be written from a dictation, at the surgeon's choice. */
export interface DictationOffer {
  readonly title: string;
  /** By section, each to be taken or left; one after the other they make one change. */
  readonly parts: readonly { readonly label: string; readonly edits: readonly Edit[] }[];
  /** Each part is to be looked at before it is written. */
  readonly preview: boolean;
}

/** What can be written from the dictation at the cursor, from its selected words, or from selected words elsewhere. */
export function dictationOffers(
  reading: NoteReading,
  kept: { readonly spanOf: (stretch: Span) => Span; readonly values: readonly DictatedValue[] } | undefined,
  range: Span,
): readonly DictationOffer[] {
  if (reading.kind !== 'operation') return [];
  const spot = spotAt(reading.tree, reading.kind, range.start)?.spot;
  if (spot === undefined) return [];
  const selected = range.end > range.start;
  if (kept !== undefined && spot.path[0] === 'dictation') {
    const all = offers(reading, kept.values, 'what was dictated');
    const here = kept.values.filter((value) => touches(kept.spanOf(value), range));
    if (selected) return offers(reading, here, 'the selected words');
    return [
      ...all,
      ...here.flatMap((value) => offers(reading, [value], `${pathInWords(value.path)}: ${value.value}`).slice(0, 1)),
    ];
  }
  const prose = spot.node?.kind === 'scalar' && spot.plan?.guide.prose === true && range.end <= spot.node.span.end;
  if (!selected || !prose) return [];
  return offers(reading, dictate(reading.text.slice(range.start, range.end), reading).values, 'the selected words');
}

function touches(a: Span, b: Span): boolean {
  return a.start <= b.end && b.start <= a.end;
}

function offers(reading: NoteReading, values: readonly DictatedValue[], what: string): readonly DictationOffer[] {
  const view = new NoteView(reading);
  const placeable = values.filter((value) => isPlaceable(value, view));
  if (placeable.length === 0) return [];
  const parts = bySection(placeable).map(([section, own]) => ({
    label: `${pathInWords([section])}: ${own.map(({ value }) => value).join(', ')}`,
    edits: placeValues(reading, own),
  }));
  const proposed = placeable.filter(({ state }) => state === 'proposed').length;
  const count = `${placeable.length} ${placeable.length === 1 ? 'value' : 'values'}`;
  const asks = proposed === 0 ? '' : `, ${proposed} to confirm`;
  const whole: DictationOffer = { title: `Write ${what} into the fields (${count}${asks})`, parts, preview: false };
  return [whole, { title: `Look at ${what} first, section by section`, parts, preview: true }];
}

/** In the order of an operation: sections that are new at one place are written one behind the other. */
function bySection(values: readonly DictatedValue[]): readonly (readonly [string, readonly DictatedValue[]])[] {
  const sections = new Map<string, DictatedValue[]>();
  for (const value of values) {
    const section = String(value.path[0]);
    sections.set(section, [...(sections.get(section) ?? []), value]);
  }
  const plan = recordPlan('operation');
  return [...sections].toSorted(([a], [b]) => orderOf(plan, a) - orderOf(plan, b));
}

/** The words that a field was dictated in, for its explanation; undefined where it was not dictated. */
export function wordsFor(values: readonly DictatedValue[], path: Path): string | undefined {
  const own = values.filter(
    (value) => value.path.length === path.length && value.path.every((step, at) => step === path[at]),
  );
  if (own.length === 0) return undefined;
  return own
    .map(({ text, start, end }) => `“${text.replace(/\s+/gu, ' ')}” (characters ${start + 1} to ${end})`)
    .join(', ');
}

/** How much of a dictation is in the note, for the end of the line with its name. */
export function progressOf(
  reading: NoteReading,
  { values, unmatched, conflicts }: DictationResult,
): { readonly at: number; readonly text: string } | undefined {
  const { key } = spotOf(reading.tree, reading.kind, ['dictation']);
  if (key === null) return undefined;
  const view = new NoteView(reading);
  const open = values.filter((value) => isPlaceable(value, view)).length;
  const parts = [
    open === 0 ? 'nothing to write' : `${open} ${open === 1 ? 'value' : 'values'} to write`,
    ...(conflicts.length === 0 ? [] : [`${conflicts.length} to decide`]),
    ...(unmatched.length === 0
      ? []
      : [`${unmatched.length} ${unmatched.length === 1 ? 'place' : 'places'} in no field`]),
  ];
  const line = lineAt(reading.text, key.start);
  return { at: line.start + reading.text.slice(line.start, line.end).trimEnd().length, text: parts.join(' · ') };
}
