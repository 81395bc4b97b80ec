import type { Path } from '@sideport/schemas';
import { readSite } from '@sideport/schemas/notation/site.ts';
import { meaning, sameMeaning, type NoteView } from './note-view.ts';
import type { Conflict, DictatedValue, DictationResult } from './result.ts';

/** Other places of a note that say the same thing as a field: a second source for it. */
const secondSources: Readonly<Record<string, readonly (readonly string[])[]>> = {
  eye: [
    ['plan', 'eye'],
    ['safety', 'consent', 'eye'],
    ['safety', 'site-marked'],
  ],
  'lens.power': [
    ['plan', 'lens', 'power'],
    ['safety', 'lens-verified', 'power'],
  ],
  'lens.axis': [['plan', 'lens', 'axis']],
  'lens.cylinder': [['plan', 'lens', 'cylinder']],
};

/** Holds a dictation against the note: what agrees is filled, what differs is left to the surgeon. */
export function withNote(result: DictationResult, view: NoteView): DictationResult {
  const judged = result.conflicts.map((conflict) => decided(conflict, result.values, view));
  const open = judged.flatMap((one) => ('conflict' in one ? [one.conflict] : []));
  const values = result.values.map((value) => {
    const at = result.conflicts.findIndex(({ path }) => samePath(path, value.path));
    if (value.value !== null || at < 0) return judge(value, view);
    const inNote = view.text(value.path) ?? null;
    const one = judged[at]!;
    if ('conflict' in one) return { value };
    // The words that the note agrees with are those the value was read from.
    const { text, start, end } = one.said;
    return {
      value: { ...value, value: inNote, text, start, end, state: 'filled' as const, because: 'the note decides' },
    };
  });
  const differing = values.flatMap(({ value, inNote }): readonly Conflict[] => {
    if (inNote === undefined) return [];
    const { path, because, text, start, end } = value;
    return [{ path, because, inNote, candidates: [{ value: value.value ?? '', text, start, end }] }];
  });
  return { ...result, values: values.map(({ value }) => value), conflicts: [...open, ...differing] };
}

type Decided = { readonly conflict: Conflict } | { readonly said: Conflict['candidates'][number] };

/** A contradiction within the dictation is settled where the note gives one of its values; one about the side never is. */
function decided(conflict: Conflict, values: readonly DictatedValue[], view: NoteView): Decided {
  const inNote = view.text(conflict.path);
  if (inNote === undefined || conflict.candidates.length < 2) return { conflict };
  if (conflict.path[0] === 'eye') return { conflict: { ...conflict, inNote } };
  // Of a value in parts, such as a regimen, the note may have the part that nothing contradicts.
  const rest = values.find(({ path, value }) => value !== null && samePath(path, conflict.path));
  if (rest !== undefined && agrees(conflict.path, inNote, rest)) return { conflict };
  const said = conflict.candidates.find(({ value }) => sameMeaning(conflict.path, inNote, value));
  return said === undefined ? { conflict: { ...conflict, inNote } } : { said };
}

function samePath(a: Path, b: Path): boolean {
  return a.length === b.length && a.every((step, at) => step === b[at]);
}

interface Judged {
  readonly value: DictatedValue;
  /** What the note says where it differs. */
  readonly inNote?: string;
}

function judge(value: DictatedValue, view: NoteView): Judged {
  if (value.value === null || value.state === 'unresolved') return { value };
  const written = view.text(value.path);
  if (written !== undefined) {
    if (value.path[0] === 'free-text')
      return { value: { ...value, state: 'proposed', because: 'the note has a free text already' } };
    if (agrees(value.path, written, value)) return { value: agreed(value, 'the note says the same') };
    return { value: { ...value, state: 'unresolved', because: `the note says ${written}` }, inNote: written };
  }
  const blocking = view.blocking(value.path);
  if (blocking !== undefined)
    return { value: { ...value, state: 'unresolved', because: `the note says ${blocking}` }, inNote: blocking };
  if (value.state === 'filled') return { value };
  return { value: seconded(value, view) };
}

/** A value that asks for a second source may have one elsewhere in the note; a contradicting one is said. */
function seconded(value: DictatedValue, view: NoteView): DictatedValue {
  const sources = (secondSources[value.path.join('.')] ?? []).flatMap((path) => {
    const text = view.text(path);
    return text === undefined ? [] : [{ path, text }];
  });
  const against = sources.find(({ text }) => !agrees(value.path, text, value));
  if (against !== undefined) return { ...value, because: `${against.path.join(' ')} says ${against.text}` };
  const [second] = sources;
  return second === undefined ? value : agreed(value, `${second.path.join(' ')} says the same`);
}

/** A second source fills a value; what was not clearly heard, or is spoken against, is proposed all the same. */
function agreed(value: DictatedValue, because: string): DictatedValue {
  return value.doubted === true
    ? { ...value, because: `${because}, but ${value.because}` }
    : { ...value, state: 'filled', because };
}

/** Whether a text of the note means what was dictated. */
function agrees(path: Path, written: string, value: DictatedValue): boolean {
  const said = value.parts?.map((part) => part.value) ?? [];
  if (path.at(-1) === 'at') return [...said, value.value ?? ''].some((part) => part !== '' && samePlace(written, part));
  return sameMeaning(path, written, value.value ?? '') || isDrugWithStrength(path, written, value.value ?? '');
}

function isDrugWithStrength(path: Path, written: string, said: string): boolean {
  return path.at(-1) === 'drug' && written.toLowerCase().startsWith(`${said.toLowerCase()} `);
}

function samePlace(a: string, b: string): boolean {
  const [first, second] = [readSite(a), readSite(b)];
  return first.ok && second.ok && meaning(first.value) === meaning(second.value);
}
