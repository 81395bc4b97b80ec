import type { Field } from '@sideport/schemas';
import type { NoteReading } from '../../reading/note-reading.ts';
import { walk, type PlannedValue } from './values.ts';

/** A place in free words: the field it stands in, and where in the text of the note. */
export interface Mention {
  readonly field: Field<unknown>;
  readonly text: string;
  readonly span: { readonly start: number; readonly end: number };
  readonly match: RegExpExecArray;
}

/** Words within one clause before a mention that turn it round, make it a condition, or put it elsewhere. */
const TURNED =
  /(?:\b(?:no|not|without|never|nil|none|denies|free of|free from|absence|absent|negative|avoid\w*|prevent\w*|risk|risks|danger|warned|watch|if|should|case of|against|exclude\w*|rule[ds]? out|rather than|instead of|previous\w*|earlier|history|past|former\w*|fellow|other|second|planned|ready|unless)\b|n't\b)[^.;:\n]{0,60}$/iu;

/**
 * The first place in free words where a pattern stands and is meant: not negated, not a condition, not something of
 * the past or of the other eye. The pattern must have the flag “g”.
 */
export function mention(values: readonly PlannedValue[], note: string, pattern: RegExp): Mention | undefined {
  for (const { field } of values) {
    const raw = note.slice(field.span.start, field.span.end);
    for (const match of raw.matchAll(pattern)) {
      if (TURNED.test(raw.slice(Math.max(0, match.index - 80), match.index))) continue;
      const start = field.span.start + match.index;
      return { field, text: match[0], span: { start, end: start + match[0].length }, match };
    }
  }
  return undefined;
}

/** Free words that tell what happened in this operation; plans, counselling and instructions tell of what may happen. */
export function narrative(reading: NoteReading): PlannedValue[] {
  return walk(reading).prose.filter(({ field }) => {
    const [top, second] = field.path;
    if (top === 'findings' || top === 'free-text' || top === 'dictation' || top === 'condition-at-end') return true;
    if (top === 'complications' || top === 'preop' || top === 'plan' || top === 'diagnosis' || top === 'after-care')
      return false;
    return field.path.at(-1) === 'text' || second === 'text';
  });
}
