/**
 * The colours of the pictures. Each can be set from outside as a CSS variable `--sideport-<name>`; left alone, a picture
 * follows the reader's own light, dark or high-contrast setting. Every colour stands at 7:1 or better on its paper.
 */
export const pictureColours = {
  light: {
    paper: '#ffffff',
    ink: '#1b1f24',
    faint: '#4b535d',
    incision: '#962424',
    meridian: '#17528f',
    capsule: '#125a35',
    lens: '#4a3a96',
    ring: '#6b4600',
    missing: '#8f144a',
  },
  dark: {
    paper: '#16191d',
    ink: '#e9ecef',
    faint: '#a3adb8',
    incision: '#ff9d92',
    meridian: '#8fc3ff',
    capsule: '#84d8a8',
    lens: '#c6baff',
    ring: '#efc264',
    missing: '#ff93bf',
  },
} as const;

export type Colour = keyof (typeof pictureColours)['light'];

/** The CSS declarations that force one of the two sets, for a page that decides the theme itself. */
export function colourDeclarations(theme: keyof typeof pictureColours): string {
  return Object.entries(pictureColours[theme])
    .map(([name, value]) => `--sideport-${name}:${value};`)
    .join('');
}

function rules(theme: keyof typeof pictureColours): string {
  const c = pictureColours[theme];
  // The plain colour comes first for renderers that know no variables.
  const set = (selector: string, property: 'fill' | 'stroke', colour: Colour) =>
    `${selector}{${property}:${c[colour]};${property}:var(--sideport-${colour},${c[colour]})}`;
  return [
    set('.sp-paper', 'fill', 'paper'),
    set('.sp-words,.sp-tag-text', 'fill', 'ink'),
    set('.sp-faint-words', 'fill', 'faint'),
    set('.sp-dial', 'stroke', 'faint'),
    set('.sp-tag', 'fill', 'paper'),
    set('.sp-tag,.sp-eye', 'stroke', 'ink'),
    ...(['ink', 'incision', 'meridian', 'capsule', 'lens', 'ring', 'missing'] as const).flatMap((colour) => [
      set(`.sp-${colour}-line`, 'stroke', colour),
      set(`.sp-${colour}-fill`, 'fill', colour),
    ]),
    set('.sp-part.sp-emphasis .sp-row', 'stroke', 'ink'),
    set('.sp-part:focus-visible .sp-row', 'stroke', 'ink'),
  ].join('');
}

const SHAPES = [
  '.sp-words,.sp-faint-words,.sp-tag-text{font-family:system-ui,sans-serif;stroke:none}',
  '.sp-dial,.sp-eye,.sp-open{fill:none}',
  '.sp-line{stroke-width:2.5}',
  '.sp-tag{stroke-width:1.5}',
  '.sp-row{fill:transparent;stroke:none;stroke-width:2}',
  '.sp-part{outline:none}',
  '.sp-part[role=button]{cursor:pointer}',
  '.sp-part.sp-emphasis .sp-line{stroke-width:6}',
  '.sp-part.sp-emphasis .sp-tag{stroke-width:4}',
  '.sp-part.sp-emphasis .sp-words{font-weight:700}',
  '.sp-part:focus-visible .sp-row{stroke-width:4}',
].join('');

const FORCED = [
  '.sp-paper,.sp-tag{fill:Canvas}',
  '.sp-words,.sp-faint-words,.sp-tag-text{fill:CanvasText}',
  '.sp-dial,.sp-eye,.sp-tag,.sp-line{stroke:CanvasText}',
  '.sp-solid{fill:CanvasText}',
  '.sp-part.sp-emphasis .sp-line,.sp-part.sp-emphasis .sp-row,.sp-part:focus-visible .sp-row{stroke:Highlight}',
].join('');

/** The whole style sheet of the pictures; put once into a page whose pictures carry none of their own. */
export const pictureStyle = [
  rules('light'),
  SHAPES,
  `@media (prefers-color-scheme:dark){${rules('dark')}}`,
  `@media (forced-colors:active){${FORCED}}`,
].join('');
