import { validateXML } from 'xmllint-wasm';
import { expect, it } from 'vitest';
import { drawAstigmatism } from '../../server/src/note/picture/double-angle.ts';
import { drawEye } from '../../server/src/note/picture/eye-picture.ts';
import { fullScene, vectors } from './scenes.ts';

const drawings = [
  drawEye(fullScene('right', 90), { clickable: true, emphasis: ['incisions'] }).svg,
  drawEye({}).svg,
  drawEye({
    capsulotomy: { path: ['a&<"'], diameter: 8, offset: { distance: 0.1, toward: 10 } },
    optic: { path: [], diameter: 6 },
  }).svg,
  drawEye({
    ...fullScene('left', 0),
    zonule: { path: ['z'], state: 'ruptured', hours: 12 },
    incisions: [{ path: ['i'], kind: 'other', hook: true, position: 45 }],
    pupilAids: [{ path: ['p'], kind: 'iris hooks' }],
    absent: [{ path: ['a'], part: 'optic' }],
  }).svg,
  drawAstigmatism(vectors).svg,
];

it('is well-formed XML', async () => {
  const { valid, errors } = await validateXML({
    xml: drawings.map((contents, index) => ({ fileName: `${index}.svg`, contents })),
    normalization: 'format',
  });
  expect(errors).toEqual([]);
  expect(valid).toBe(true);
});

it('holds no number that is none, and no text of a value that is missing', () => {
  for (const drawing of drawings) expect(drawing).not.toMatch(/NaN|Infinity|undefined|null(?! )/);
});

it('gives every id once, also when two drawings share a page', () => {
  const page = drawEye(fullScene('left', 0)).svg + drawAstigmatism(vectors).svg;
  const ids = [...page.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id);
  expect(new Set(ids).size).toBe(ids.length);
});

it('draws the same picture twice', () => {
  expect(drawEye(fullScene('left', 45))).toEqual(drawEye(fullScene('left', 45)));
});
