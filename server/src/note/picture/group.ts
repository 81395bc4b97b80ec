import type { Path, Written } from './scene.ts';
import { element } from './svg.ts';

/** A part of a picture that was written somewhere in the note. */
export interface Mark {
  /** The id of its element in the drawing. */
  readonly id: string;
  readonly words: string;
  readonly from: Written;
  readonly emphasised: boolean;
}

/**
 * What belongs together and was written in one place: reached by Tab and clicked as one, and named as one. Of what is
 * drawn, all but the words themselves has to be hidden from a screen reader.
 */
export class Groups {
  readonly marks: Mark[] = [];

  constructor(
    private readonly prefix: string,
    private readonly clickable: boolean,
    private readonly emphasis: Path | undefined,
  ) {}

  draw(words: string, from: Written | undefined, content: string): string {
    if (from === undefined) return element('g', { class: 'sp-part', role: 'img', 'aria-label': words }, content);
    const emphasised = this.emphasis !== undefined && related(from.path, this.emphasis);
    const id = `${this.prefix}part-${this.marks.length + 1}`;
    this.marks.push({ id, words, from, emphasised });
    return element(
      'g',
      {
        id,
        class: emphasised ? 'sp-part sp-emphasis' : 'sp-part',
        role: this.clickable ? 'button' : 'img',
        tabindex: this.clickable ? 0 : undefined,
        // A button takes its name from the words within it, an image does not.
        'aria-label': this.clickable ? undefined : words,
        'data-path': JSON.stringify(from.path),
        'data-start': from.span?.start,
        'data-end': from.span?.end,
      },
      content,
    );
  }
}

/** A part is meant when the cursor stands in it, or in a section that holds it. */
export function related(part: Path, cursor: Path): boolean {
  const shared = Math.min(part.length, cursor.length);
  return shared > 0 && part.slice(0, shared).every((step, index) => step === cursor[index]);
}
