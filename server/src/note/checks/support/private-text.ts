import { Lately } from '../../lately.ts';
import { textCheck, type Check, type CheckInfo } from '../check.ts';
import type { NoteReading } from '../../reading/note-reading.ts';
import { joinTexts, matchesOf, type JoinedText, type TextToJoin, type Wording } from './joined-text.ts';
import { walk } from './values.ts';

/** Numbers of lenses are no numbers of people. */
const OF_LENSES = ['udi', 'serial', 'lot', 'device-identifier'];
export const COMMENT = 'a comment';

const texts = new Lately<NoteReading, JoinedText>();

/** Text in which people put names, numbers and placeholders: free words, references, comments. */
export function wordsOf(reading: NoteReading): JoinedText {
  const known = texts.get(reading);
  if (known !== undefined) return known;
  const joined: TextToJoin[] = [];
  for (const { field, plan } of walk(reading).values) {
    const { guide, notation } = plan;
    const isReference = notation.name === 'identifier' && !OF_LENSES.includes(String(field.path.at(-1)));
    if (guide.prose === true || isReference) joined.push({ span: field.span, path: field.path, where: guide.label });
  }
  for (const { span } of reading.tree.comments) joined.push({ span, path: [], where: COMMENT });
  const made = joinTexts(reading, joined);
  texts.set(reading, made);
  return made;
}

export const takeItOut =
  'Take it out; the local reference is enough. What was committed before stays in the history: tell whoever keeps it.';

interface PrivacyCheck extends Pick<CheckInfo, 'id' | 'summary'> {
  /** What was found, as the message says it: “a telephone number”. */
  readonly what: string;
  readonly wording: Wording;
  readonly isMeant?: (match: RegExpMatchArray) => boolean;
}

/**
 * A check for something that names a person. The message never repeats it: remarks are printed by build machines, and
 * what they print stays.
 */
export function privacyCheck({ what, wording, isMeant, ...info }: PrivacyCheck): Check {
  return textCheck({
    ...info,
    group: 'privacy',
    severity: 'error',
    allowable: true,
    run: (reading, say, { status }) => {
      const text = wordsOf(reading);
      for (const match of matchesOf(text, wording)) {
        const isReal = isMeant === undefined || isMeant(match);
        const found = isReal ? text.locate(match.index, match[0].length) : undefined;
        if (found === undefined) continue;
        say({
          at: { span: found.span, key: null, path: found.path },
          severity: status === 'final' ? 'error' : 'warning',
          message: `Privacy: ${found.where === COMMENT ? COMMENT : `“${found.where}”`} holds ${what} (${masked(match[0])}). Take it out: a note names nobody.`,
        });
      }
    },
  });
}

/** Enough to recognise one’s own slip by its place and length, and too little to learn anything. */
function masked(text: string): string {
  const first = text.slice(0, 1);
  return `${first}${text.slice(1, 12).replace(/[\p{L}\p{N}]/gu, '*')}${text.length > 12 ? '…' : ''}`;
}
