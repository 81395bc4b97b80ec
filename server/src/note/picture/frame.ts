import type { Mark } from './group.ts';
import { pictureStyle } from './style.ts';
import { element, plain } from './svg.ts';

/** How every picture may be asked for. */
export interface PictureOptions {
  /** The part being written: the path at the cursor. */
  readonly emphasis?: readonly (string | number)[] | undefined;
  /** Parts can be reached by Tab and announce themselves as buttons. Default false: a still picture. */
  readonly clickable?: boolean | undefined;
  /** Default true; false where the page brings `pictureStyle` itself. */
  readonly ownStyle?: boolean | undefined;
  /** Begins every id, so that several pictures can stand on one page. */
  readonly idPrefix?: string | undefined;
}

export interface Picture {
  readonly svg: string;
  readonly title: string;
  /** The whole picture in words. */
  readonly description: string;
  /** What the note does not say and the picture therefore does not show. */
  readonly missing: readonly string[];
  /** The parts that can be traced to the note, in the order of Tab. */
  readonly marks: readonly Mark[];
}

export const WIDTH = 860;
const LINE_HEIGHT = 28;

export interface Frame extends Omit<Picture, 'svg' | 'missing' | 'marks'> {
  readonly prefix: string;
  readonly height: number;
  readonly options: PictureOptions;
}

/** The outer element: its size, its text equivalent, its style and patterns, and a ground of its own. */
export function frame({ prefix, title, description, height, options }: Frame, content: string): string {
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${WIDTH} ${Math.ceil(height)}`,
      // Parts within an image are hidden from a screen reader; those of a group are not.
      role: options.clickable === true ? 'group' : 'img',
      'aria-labelledby': `${prefix}title`,
      'aria-describedby': `${prefix}words`,
      class: 'sp-picture',
    },
    element('title', { id: `${prefix}title` }, plain(title)),
    element('desc', { id: `${prefix}words` }, plain(description)),
    options.ownStyle === false ? '' : element('style', {}, pictureStyle),
    element('defs', {}, patterns(prefix)),
    element('rect', { width: WIDTH, height: Math.ceil(height), class: 'sp-paper' }),
    content,
  );
}

/** Fillings that differ in pattern, so that none depends on its colour. */
function patterns(prefix: string): string {
  const tile = (id: string, size: number, path: string, line: string) =>
    element(
      'pattern',
      { id: prefix + id, width: size, height: size, patternUnits: 'userSpaceOnUse' },
      element('path', { d: path, class: `sp-line ${line}`, style: 'stroke-width:2' }),
    );
  return [
    tile('stripes', 6, 'M 0 3 H 6', 'sp-incision-line'),
    tile('grid', 8, 'M 0 4 H 8 M 4 0 V 8', 'sp-incision-line'),
    tile('uncovered', 8, 'M 0 8 L 8 0 M -2 2 L 2 -2 M 6 10 L 10 6', 'sp-missing-line'),
  ].join('');
}

export function headline(words: string): string {
  return element(
    'text',
    { x: WIDTH / 2, y: 34, class: 'sp-words', 'font-size': 25, 'font-weight': 600, 'text-anchor': 'middle' },
    plain(words),
  );
}

/** Words under the picture: what is missing, then what to keep in mind. */
export function footNotes(missing: string, cautions: readonly string[], top: number) {
  const lines = [...(missing === '' ? [] : wrap(missing, 68)), ...cautions.flatMap((caution) => wrap(caution, 68))];
  const svg = lines.map((line, index) =>
    element('text', { x: 24, y: top + LINE_HEIGHT * (index + 0.8), class: 'sp-words', 'font-size': 20 }, plain(line)),
  );
  return { svg: svg.join(''), bottom: top + LINE_HEIGHT * lines.length + 12 };
}

/** Lines of words of at most `holds` letters, none cut within a word. */
export function wrap(words: string, holds: number): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of words.split(' ')) {
    if (line !== '' && line.length + 1 + word.length > holds) {
      lines.push(line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  return [...lines, line];
}
