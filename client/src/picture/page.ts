import type { Drawing, PictureMark, PictureStyles } from '@sideport/server/language-server/own-requests.ts';
import type { FromPage, ToPage } from './messages.ts';

declare function acquireVsCodeApi(): { postMessage(message: FromPage): void };

const NOTHING = 'No eye to draw: the note in view is not the note of an operation, or nothing is checking it.';
const COLOURS = ['ink', 'faint', 'incision', 'meridian', 'capsule', 'lens', 'ring', 'missing'];

const editor = acquireVsCodeApi();
const main = document.querySelector('main') ?? document.body;
const style = document.createElement('style');
document.head.append(style);

window.addEventListener('message', ({ data }: MessageEvent<ToPage>) => {
  const focused = document.activeElement?.id;
  if (data.picture === null) {
    const words = document.createElement('p');
    words.textContent = NOTHING;
    main.replaceChildren(words);
    return;
  }
  style.textContent = styleSheet(data.picture.styles);
  main.replaceChildren(...data.picture.drawings.map(section));
  // The drawing was replaced under the reader's keyboard focus.
  if (focused !== undefined && focused !== '') document.getElementById(focused)?.focus({ preventScroll: true });
});

function section(drawing: Drawing): HTMLElement {
  const figure = document.createElement('section');
  figure.setAttribute('aria-label', drawing.title);
  figure.dataset['kind'] = drawing.kind;
  figure.innerHTML = drawing.svg;
  for (const mark of drawing.marks) makeChoosable(figure, mark);
  return figure;
}

function makeChoosable(figure: HTMLElement, { id, at }: PictureMark): void {
  const element = figure.querySelector<SVGElement>(`#${CSS.escape(id)}`);
  if (element === null || at === null) return;
  const go = (): void => editor.postMessage({ kind: 'go', ...at });
  element.addEventListener('click', go);
  element.addEventListener('keydown', (event) => {
    if (event.key !== 'Enter' && event.key !== ' ') return;
    event.preventDefault();
    go();
  });
}

/** In high contrast every line takes the theme's own two colours: the parts differ by shape, dash and number as well. */
function styleSheet({ all, light, dark }: PictureStyles): string {
  const contrast = COLOURS.map((name) => `--sideport-${name}:var(--vscode-editor-foreground);`).join('');
  const paper = '--sideport-paper:var(--vscode-editor-background);';
  return [
    all,
    `body.vscode-light{${light}}`,
    `body.vscode-dark{${dark}}`,
    `body.vscode-high-contrast,body.vscode-high-contrast-light{${contrast}${paper}}`,
  ].join('');
}

editor.postMessage({ kind: 'ready' });
