/** The texts of a set, for telling which notes may hold some words without reading them as notes. */
export class SetTexts {
  readonly #texts: readonly { readonly path: string; readonly text: string }[];
  readonly #plain = new Map<string, string>();

  constructor(paths: readonly string[], read: (path: string) => string | undefined) {
    this.#texts = paths.flatMap((path) => {
      const text = read(path);
      return text === undefined ? [] : [{ path, text }];
    });
  }

  /**
   * The notes in which all these words may be written. A note may write them otherwise than letter for letter: broken
   * into lines, in quotes, or with codes behind a backslash; it is then counted rather than missed.
   */
  holding(words: readonly string[]): readonly string[] {
    return this.#texts.flatMap(({ path, text }) =>
      text.includes('\\') || words.every((word) => this.#holds(path, text, word)) ? [path] : [],
    );
  }

  #holds(path: string, text: string, word: string): boolean {
    if (/^[\w/.-]+$/u.test(word)) return text.includes(word);
    let plain = this.#plain.get(path);
    if (plain === undefined) {
      plain = lettersOf(text);
      this.#plain.set(path, plain);
    }
    return plain.includes(lettersOf(word));
  }
}

/** Letters and digits alone, with a blank for whatever stands between them. */
function lettersOf(text: string): string {
  return text.replace(/[^\p{L}\p{N}]+/gu, ' ').trim();
}
