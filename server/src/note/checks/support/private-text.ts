import type { Path, Span } from '@sideport/schemas';
import { textCheck, type Check, type CheckInfo } from '../check.ts';
import type { NoteReading } from '../../reading/note-reading.ts';
import { walk } from './values.ts';

/** Text in which people put names and numbers by mistake: free words, references, comments. */
interface Piece {
  readonly span: Span;
  readonly path: Path;
  readonly where: string;
  /** Where it begins in the joined text. */
  readonly at: number;
}

interface PrivateText {
  readonly pieces: readonly Piece[];
  readonly joined: string;
}

const BETWEEN = '\n\u0000\n';
/** Numbers of lenses are no numbers of people. */
const OF_LENSES = ['udi', 'serial', 'lot', 'device-identifier'];

const made = new WeakMap<NoteReading, PrivateText>();

function privateText(reading: NoteReading): PrivateText {
  const known = made.get(reading);
  if (known !== undefined) return known;
  const pieces: Piece[] = [];
  const parts: string[] = [];
  let length = 0;
  const put = (span: Span, path: Path, where: string) => {
    const raw = reading.text.slice(span.start, span.end);
    pieces.push({ span, path, where, at: length });
    parts.push(raw);
    length += raw.length + BETWEEN.length;
  };
  for (const { field, plan } of walk(reading).values) {
    const isReference = plan.notation.name === 'identifier' && !OF_LENSES.includes(String(field.path.at(-1)));
    if (plan.guide.prose === true || isReference) put(field.span, field.path, plan.guide.label);
  }
  for (const { span } of reading.tree.comments) put(span, [], 'a comment');
  const text = { pieces, joined: parts.join(BETWEEN) };
  made.set(reading, text);
  return text;
}

export const takeItOut =
  'Take it out; the local reference is enough. What was committed before stays in the history: tell whoever keeps it.';

interface PrivacyCheck extends Pick<CheckInfo, 'id' | 'summary'> {
  /** What was found, as the message says it: “a telephone number”. */
  readonly what: string;
  /** With the flag “g”. */
  readonly pattern: RegExp;
  readonly isMeant?: (match: RegExpMatchArray) => boolean;
}

/**
 * A check for something that names a person. The message never repeats it: remarks are printed by build machines, and
 * what they print stays.
 */
export function privacyCheck({ what, pattern, isMeant, ...info }: PrivacyCheck): Check {
  return textCheck({
    ...info,
    group: 'privacy',
    severity: 'error',
    allowable: true,
    run: (reading, say, { status }) => {
      const { pieces, joined } = privateText(reading);
      for (const match of joined.matchAll(pattern)) {
        if (isMeant !== undefined && !isMeant(match)) continue;
        const piece = pieces.findLast(({ at }) => at <= match.index);
        if (piece === undefined) continue;
        const start = piece.span.start + (match.index - piece.at);
        say({
          at: { span: { start, end: start + match[0].length }, key: null, path: piece.path },
          severity: status === 'final' ? 'error' : 'warning',
          message: `Privacy: ${piece.where === 'a comment' ? 'a comment' : `“${piece.where}”`} holds ${what} (${masked(match[0])}). Take it out: a note names nobody.`,
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
