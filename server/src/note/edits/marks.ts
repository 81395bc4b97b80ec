/** How a comment begins that marks values which a dictation proposed. Behind it stand the words of each, in quotes. */
export const PROPOSED = 'proposed from the dictation';

/** How a comment begins that marks values which were read from the label of a lens. */
export const FROM_LABEL = 'proposed from the label';

/** Between the mark of a proposal and what the comment of its line said before. */
export const BETWEEN = '; ';

const PROPOSALS = /^(?:proposed from the (?:label|dictation: “[^”]*”(?:, “[^”]*”)*)(?:; |$))+/u;

/** The marks of proposals that the words of a comment begin with, with what parts them from the rest; mostly nothing. */
export function proposalsIn(words: string): string {
  return PROPOSALS.exec(words)?.[0] ?? '';
}

/** Whether a comment says something about the field beside or below it, and so belongs to it. */
export function bindsField(words: string): boolean {
  return /^(?:allow|confirm|proposed)\b/u.test(words);
}
