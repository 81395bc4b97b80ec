/** Where dictated words go. */
export interface DictationPlace {
  /** Written before, so that there is such a place; empty where there is one. */
  readonly insert: string;
  /** Where it is written, and where the words begin after that: offsets in the text before. */
  readonly at: number;
}

const FIELD = /^dictation:[ \t]*(\|[-+]?|>[-+]?)?[ \t]*(#.*)?$/m;
const NEXT_FIELD = /\n(?=\S)/;

/**
 * The end of the dictation that a note has, or a new one at its end: a block, in which any words may stand. A
 * dictation written behind its name, on one line, is left alone, and undefined is the answer.
 */
export function placeForDictation(text: string, eol: string): DictationPlace | undefined {
  const field = FIELD.exec(text);
  if (field === null) {
    if (/^dictation:/m.test(text)) return undefined;
    const written = text.trimEnd().length;
    return { insert: `${written === 0 ? '' : eol}dictation: |-${eol}  `, at: written };
  }
  const behind = field.index + field[0].length;
  const rest = text.slice(behind);
  const end = behind + rest.slice(0, NEXT_FIELD.exec(rest)?.index).trimEnd().length;
  const empty = end === behind;
  const block = field[1] === undefined && empty ? ' |-' : '';
  return { insert: empty ? `${block}${eol}  ` : ' ', at: end };
}

/** Where lines of inserted words begin that must be indented to stay in the block; offsets in the inserted text. */
export function unindentedLines(inserted: string): readonly number[] {
  return [...inserted.matchAll(/\n(?! {2})(?=[^\r\n])/g)].map(({ index }) => index + 1);
}
