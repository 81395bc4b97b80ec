import { computeNote } from '../note/computing/compute-note.ts';
import { complete } from '../note/editing/complete.ts';
import { explainAt } from '../note/editing/explain.ts';
import { pathAt } from '../note/editing/spots.ts';
import { readNote } from '../note/reading/read-note.ts';
import { contextOf, remarksOf } from '../note/review.ts';
import type { OpenNote } from './note-book.ts';

/** From here on more of it makes nothing faster. */
export const ROUNDS_OF_PRACTICE = 100;

/**
 * Goes through the first note again and again while nobody asks for anything. An engine compiles what it has run often:
 * without this the surgeon's first hundred keystrokes would be that practice, each of them half as fast. Nothing comes
 * of it but that. It is done once for a server, whichever notes it sees, and only while there is nothing else to do.
 */
export class Practice {
  readonly #rounds: number;
  #done = 0;

  constructor(rounds: number) {
    this.#rounds = rounds;
  }

  /** The rounds that are left, in steps that are short enough to come between two messages. */
  *on({ reading: { text, kind }, around: { surroundings } }: OpenNote): Generator<void, void> {
    while (this.#done < this.#rounds) {
      yield;
      this.#done += 1;
      const reading = readNote(text, kind === 'department' ? kind : undefined);
      yield;
      remarksOf(reading, surroundings);
      yield;
      const context = contextOf(reading, surroundings);
      computeNote(context);
      yield;
      // At another place each time.
      const offset = Math.floor((text.length * this.#done) / this.#rounds);
      explainAt(reading, computeNote(context, pathAt(reading.tree, reading.kind, offset)), offset);
      complete({ reading, surroundings }, offset);
    }
  }
}
