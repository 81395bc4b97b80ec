import type { SpokenField, SpokenValue } from '@sideport/schemas/spoken/phrase.ts';
import type { NoteReading } from '../reading/note-reading.ts';
import { identityOf } from './entries.ts';
import { NoteView } from './note-view.ts';
import type { NotePath } from './paths.ts';
import { firstWords } from './say-pattern.ts';
import { sayValue } from './say-value.ts';
import { table } from './table.ts';
import { tokensOf } from './tokens.ts';

/** A value of a note as it is said. */
export interface SpokenAloud {
  readonly path: NotePath;
  /** As the note has it. */
  readonly value: string;
  readonly words: string;
  /** What must be named before it, unless it was named by the words before. */
  readonly subject: string;
}

/** A note read aloud: what is said, and the values that are in it. */
export interface Aloud {
  readonly text: string;
  readonly spoken: readonly SpokenAloud[];
}

/**
 * Reads an operation aloud in the words of the phrase table, in the order of an operation, so that dictating the words
 * gives the note again. Values that nothing can dictate are left out.
 */
export function speak(reading: NoteReading): Aloud {
  const view = new NoteView(reading);
  const eye = view.text(['eye']);
  const side: readonly SpokenAloud[] =
    eye === 'right' || eye === 'left' ? [{ path: ['eye'], value: eye, words: `${eye} eye`, subject: '' }] : [];
  const all = [...side, ...table().sections.flatMap(({ fields }) => fields.flatMap((field) => sayField(field, view)))];
  const spoken = all.filter((one, at) => all.findIndex(({ path }) => path.join('.') === one.path.join('.')) === at);
  return { text: sentences(spoken), spoken };
}

/** One sentence for each subject that is named, and one for each value that needs none. */
function sentences(spoken: readonly SpokenAloud[]): string {
  const out: string[] = [];
  let subject = '';
  for (const one of spoken) {
    const goesOn = one.subject !== '' && one.subject === subject;
    if (goesOn) out.push(`${out.pop() ?? ''}, ${one.words}`);
    else out.push(`${one.subject} ${one.words}`.trim());
    subject = one.subject;
  }
  return out.map((words) => `${words.slice(0, 1).toUpperCase()}${words.slice(1)}.`).join(' ');
}

function sayField(field: SpokenField, view: NoteView): readonly SpokenAloud[] {
  const own = placesOf(field, view).flatMap(({ path, value }): readonly SpokenAloud[] => {
    const said = sayValue(field, value);
    if (said === undefined) return [];
    return [{ path, value, words: said.words, subject: said.needsSubject ? subjectOf(field) : '' }];
  });
  return [...own, ...(field.values ?? []).flatMap((value) => sayElsewhere(field, value, view))];
}

/** The name of what a field is about; none where it was named by the sentence before, or where its own name is enough. */
function subjectOf(field: SpokenField): string {
  const own = firstWords(field.called?.[0]);
  if (own !== '' && !isShared(own)) return '';
  const subject = firstWords(table().subjects.get(field.about[0] ?? '')?.named?.[0]);
  return own.startsWith(subject) ? '' : subject;
}

/** Whether a name is the name of several fields. */
function isShared(name: string): boolean {
  const tokens = tokensOf(name);
  const whole = table()
    .phrases.at(tokens, 0, () => [])
    .find(({ to }) => to === tokens.length);
  return (whole?.meanings.filter(({ kind }) => kind === 'called').length ?? 0) > 1;
}

interface Found {
  readonly path: NotePath;
  readonly value: string;
}

/** Where a field of the table stands in a note, with what the note says there. */
function placesOf(field: SpokenField, view: NoteView): readonly Found[] {
  const match = /^(.*)\[([^\]]*)\]\.(.*)$/u.exec(field.path);
  if (match === null) {
    const path = field.path.split('.');
    if (field.several !== true) return found(path, view);
    return view.entries(path).flatMap((_, at) => found([...path, at], view));
  }
  const [, list = '', entry = '', key = ''] = match;
  const path = list.split('.');
  const identity = list === 'nucleus.steps' && entry === 'settings' ? undefined : identityOf(list, entry);
  if (identity === undefined) return view.entries(path).length === 1 ? found([...path, 0, key], view) : [];
  const positions = view.entries(path).flatMap((_, at) => (view.entryLike(path, identity, at) === at ? [at] : []));
  return positions
    .flatMap((at) => found([...path, at, key], view))
    .map((one) => ({
      ...one,
      value:
        one.value.toLowerCase().startsWith(`${entryWord(entry)} `) && key === 'drug' ? entryWord(entry) : one.value,
    }));
}

/** The drug in the name of an entry. */
function entryWord(entry: string): string {
  return entry.split(' ').at(-1) ?? entry;
}

function found(path: NotePath, view: NoteView): readonly Found[] {
  const value = view.text(path);
  return value === undefined ? [] : [{ path, value }];
}

/** Values that are written in another place than their field's own, and denials that are listed. */
function sayElsewhere(field: SpokenField, value: SpokenValue, view: NoteView): readonly SpokenAloud[] {
  if (value.implied === true) return [];
  const words = firstWords(value.said[0]);
  const out: SpokenAloud[] = [];
  if (value.as !== undefined) out.push(...said(value.as, words, view));
  if (value.deniedAs !== undefined) out.push(...said(value.deniedAs, `no ${words}`, view));
  if (field.deniedIn !== undefined && value.denied !== undefined && value.bound !== true) {
    const path = field.deniedIn.split('.');
    const at = view.entries(path).findIndex((node) => node?.kind === 'scalar' && node.text === value.denied);
    if (at >= 0) out.push({ path: [...path, at], value: value.denied, words: `no ${words}`, subject: '' });
  }
  return out;
}

function said([path, value]: readonly [string, string], words: string, view: NoteView): readonly SpokenAloud[] {
  const steps = path.split('.');
  return view.text(steps) === value ? [{ path: steps, value, words, subject: '' }] : [];
}
