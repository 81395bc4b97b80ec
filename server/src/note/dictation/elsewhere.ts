import type { Elsewhere } from '@sideport/schemas/spoken/elsewhere.ts';
import type { SpokenField } from '@sideport/schemas/spoken/phrase.ts';
import type { Item } from './scan.ts';
import type { Token } from './tokens.ts';

/** Words for which a dictation without punctuation is taken to stay elsewhere. */
const LONGEST = 16;

/** Stretches of a dictation that tell of something else than this operation. */
export class ElsewhereTold {
  readonly #stretches: readonly { readonly from: number; readonly to: number; readonly of: Elsewhere }[];

  constructor(items: readonly Item[], tokens: readonly Token[]) {
    this.#stretches = items.flatMap((item) =>
      item.meanings.flatMap((meaning) =>
        meaning.kind === 'elsewhere'
          ? [{ from: item.to, to: endOf(tokens, item.to, meaning.elsewhere), of: meaning.elsewhere }]
          : [],
      ),
    );
  }

  /** Whether what is said of a field at a token belongs elsewhere. */
  covers(token: number, { about }: SpokenField): boolean {
    return this.#stretches.some(
      ({ from, to, of }) =>
        from <= token && token < to && (of.about === undefined || of.about.some((subject) => about.includes(subject))),
    );
  }
}

function endOf(tokens: readonly Token[], from: number, { until }: Elsewhere): number {
  const most = Math.min(tokens.length, from + LONGEST);
  for (let at = from; at < most; at += 1) {
    const { strength, word } = tokens[at]!;
    if (strength === 'sentence' || until?.includes(word) === true) return at;
  }
  return most;
}
