import type { Written } from './scene.ts';
import type { Point } from './svg.ts';

/** One thing in the picture: how it looks, what it says, and where its number may stand. */
export interface Part {
  readonly words: string;
  readonly from: Written | undefined;
  /** SVG text; empty where nothing can be drawn. */
  readonly mark: string;
  /** A short sample of the same line or filling, for the list; drawn about the given point. */
  readonly sample: (at: Point) => string;
  /** Places for the number, best first. Empty: the part has no place, and its number waits in the corner. */
  readonly spots: readonly Point[];
  /** Something of it is not recorded: its number stands in a broken ring with a question mark. */
  readonly incomplete: boolean;
}
