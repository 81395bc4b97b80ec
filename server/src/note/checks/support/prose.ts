import { Lately } from '../../lately.ts';
import type { Path, Span } from '@sideport/schemas';
import type { NoteReading } from '../../reading/note-reading.ts';
import { joinTexts, matchesOf, type JoinedText, type Wording } from './joined-text.ts';
import { walk, type PlannedValue } from './values.ts';

/** A place in free words. */
export interface Mention {
  readonly text: string;
  readonly match: RegExpMatchArray;
  readonly place: { readonly span: Span; readonly key: null; readonly path: Path };
}

/** Words within one clause before a mention that turn it round, make it a condition, or put it elsewhere. */
const TURNED =
  /(?:\b(?:no|not|without|never|nil|none|denies|free of|free from|absence|absent|negative|avoid\w*|prevent\w*|risk|risks|danger|warned|watch|if|should|case of|against|exclude\w*|rule[ds]? out|rather than|instead of|previous\w*|earlier|history|past|former\w*|fellow|other|second|planned|ready|unless)\b|n't\b)[^.;:\n]{0,60}$/iu;

/** Words behind a mention, in the same part of its clause, that turn it round: “trypan blue was opened but not used”. */
const TURNED_BEHIND =
  /^[^.,;:\n]{0,30}?(?:\b(?:was|were|is|are|did|does|do|had|has)\s+(?:\w+\s+)?(?:not|never)\b|\b(?:did|was|were)n['’]t\b|\bnot\s+(?:used|needed|required|necessary|done|seen|opened|found|given|placed|inserted|implanted|made|cut|put in|tied|left)\b|\b(?:unnecessary|absent)\b)/iu;

/**
 * The first place in free words where a wording stands and is meant: not negated, not a condition, not something of
 * the past or of the other eye.
 */
export function mention(text: JoinedText, wording: Wording): Mention | undefined {
  const { joined, locate } = text;
  for (const match of matchesOf(text, wording)) {
    if (TURNED.test(joined.slice(Math.max(0, match.index - 80), match.index))) continue;
    const behind = match.index + match[0].length;
    if (TURNED_BEHIND.test(joined.slice(behind, behind + 80))) continue;
    const found = locate(match.index, match[0].length);
    if (found !== undefined) return { text: match[0], match, place: { span: found.span, key: null, path: found.path } };
  }
  return undefined;
}

const all = new Lately<NoteReading, JoinedText>();
const told = new Lately<NoteReading, JoinedText>();

/** All free words of a note. */
export function proseOf(reading: NoteReading): JoinedText {
  return made(all, reading, () => walk(reading).prose);
}

/** Free words that tell what happened in this operation; plans, counselling and instructions tell of what may happen. */
export function narrativeOf(reading: NoteReading): JoinedText {
  return made(told, reading, () => walk(reading).prose.filter(isNarrative));
}

const TOLD = ['findings', 'free-text', 'dictation', 'condition-at-end', 'indication'];
const NOT_TOLD = ['complications', 'preop', 'plan', 'diagnosis', 'after-care'];

function isNarrative({ field: { path } }: PlannedValue): boolean {
  const top = String(path[0]);
  if (TOLD.includes(top)) return true;
  return !NOT_TOLD.includes(top) && path.at(-1) === 'text';
}

function made(
  texts: Lately<NoteReading, JoinedText>,
  reading: NoteReading,
  values: () => readonly PlannedValue[],
): JoinedText {
  const known = texts.get(reading);
  if (known !== undefined) return known;
  const text = joinTexts(
    reading,
    values().map(({ field, plan }) => ({ span: field.span, path: field.path, where: plan.guide.label })),
  );
  texts.set(reading, text);
  return text;
}
