/** What a notation says when a text is not one of its values. The words are read by a surgeon. */
export interface Fault {
  /** Which of the reader's remarks this is. */
  readonly check: 'unreadable-value' | 'wrong-unit' | 'unknown-word' | 'decimal-comma';
  /** A sentence naming what was written and what was expected. */
  readonly message: string;
  /** A replacement for the whole text, when there is one obvious candidate. */
  readonly suggestion?: string;
}

export type Reading<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly fault: Fault };

/**
 * One way of writing a value. `read` never throws. `write` gives the tidy form of a text that `read` accepted:
 * decimals stay as typed, the unit is written out.
 */
export interface Notation<T> {
  readonly name: string;
  /** What is expected, as the end of the sentence "Expected …". */
  readonly expected: string;
  /** The unit that a bare number takes, where the notation is a quantity. */
  readonly unit?: string;
  /** ECMAScript pattern for the published JSON Schema; undefined means any text. */
  readonly pattern?: string;
  /** Whether a YAML number is one of its values (a bare number takes the field's own unit). */
  readonly bareNumber: boolean;
  /** The words of a vocabulary, where the notation is one. */
  readonly words?: readonly Word[];
  readonly examples: readonly string[];
  read(text: string): Reading<T>;
  write?(text: string): string;
}

/** One term of a vocabulary. */
export interface Word {
  readonly word: string;
  readonly synonyms: readonly string[];
  readonly meaning?: string;
}

export function good<T>(value: T): Reading<T> {
  return { ok: true, value };
}

export function bad<T>(check: Fault['check'], message: string, suggestion?: string): Reading<T> {
  return { ok: false, fault: suggestion === undefined ? { check, message } : { check, message, suggestion } };
}
