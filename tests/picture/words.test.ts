import { describe, expect, it } from 'vitest';
import { drawAstigmatism } from '../../server/src/note/picture/double-angle.ts';
import { drawEye } from '../../server/src/note/picture/eye-picture.ts';
import { pictureColours } from '../../server/src/note/picture/style.ts';
import { groupAt } from './reading.ts';
import { fullScene, vectors } from './scenes.ts';

const emphasised = (emphasis: readonly (string | number)[] | undefined) =>
  drawEye(fullScene('right', 90), { emphasis })
    .marks.filter((mark) => mark.emphasised)
    .map((mark) => mark.from.path.join('.'));

describe('the picture in words', () => {
  it('says everything it shows', () => {
    expect(drawEye(fullScene('left', 0)).description).toBe(
      'Left eye, as the surgeon sees it. ' +
        '1. Steep corneal meridian: 95°. ' +
        "2. Main incision: 2.2 mm wide, at 0° (3 o'clock, temporal). " +
        "3. Side-port incision: 1.1 mm wide, at 90° (12 o'clock, superior). " +
        "4. Capsulotomy: 5.5 mm, 0.4 mm off centre toward 0° (3 o'clock, temporal); " +
        'from 305° counter-clockwise to 55° (30 % of it) it lies off the optic: hatched. ' +
        '5. Capsular tension ring: 11.0 mm compressed. ' +
        '6. Lens optic: 6.0 mm, centration not recorded. ' +
        '7. Toric axis aimed: 95°. ' +
        '8. Toric axis found: 100°, 5° counter-clockwise of the aim.',
    );
  });

  it('keeps what is not recorded apart from nothing and from zero', () => {
    const empty = drawEye({});
    expect(empty.missing).toEqual([
      'which eye: nasal and temporal are not written',
      "the surgeon's seat: drawn as a person facing the eye sees it",
      'white-to-white: the limbus is drawn at 12.0 mm',
      'incisions',
      'steep corneal meridian',
      'capsulotomy',
      'state of the zonule',
      'lens optic',
      'whether a capsular tension ring was used',
    ]);
    expect(empty.svg).not.toMatch(/>(nasal|temporal)</);
    expect(empty.description).toContain('Not recorded: ');
    expect(drawEye({ incisions: [], ring: { path: ['ring'], used: false } }).missing).not.toContain('incisions');
  });

  it('shows half-recorded parts with a question mark and lets none of them vanish', () => {
    const { svg, description, missing } = drawEye({
      eye: { path: ['eye'], side: 'right' },
      incisions: [
        { path: ['incisions', 0], kind: 'main', position: 180 },
        { path: ['incisions', 1], kind: 'side-port', width: 1 },
      ],
      capsulotomy: { path: ['capsulotomy'], diameter: 5 },
      optic: { path: ['lens'] },
      ring: { path: ['ring'], used: true },
    });
    for (const path of [['incisions', 0], ['incisions', 1], ['capsulotomy'], ['lens'], ['ring']]) {
      expect(groupAt(svg, ...path)).toContain('?</text>');
    }
    expect(description).toContain("Main incision: width not recorded, at 180° (9 o'clock, temporal)");
    expect(description).toContain('Side-port incision: 1.0 mm wide, place not recorded');
    expect(description).toContain('Capsulotomy: 5.0 mm, centration not recorded');
    expect(missing).toEqual(
      expect.arrayContaining([
        'width of the main incision',
        'place of the side-port incision',
        'diameter of the optic',
      ]),
    );
  });

  it('emphasises the part at the cursor, a whole section, or nothing', () => {
    expect(emphasised(['incisions', 1, 'width'])).toEqual(['incisions.1']);
    expect(emphasised(['incisions'])).toEqual(['incisions.0', 'incisions.1']);
    expect(emphasised(['codes', 0])).toEqual([]);
    expect(emphasised(undefined)).toEqual([]);
  });

  it('leads each part back to its place in the note', () => {
    const { svg, marks } = drawEye(fullScene('right', 90), { clickable: true });
    expect(marks[0]).toMatchObject({ from: { path: ['eye'], span: { start: 10, end: 15 } } });
    expect(groupAt(svg, 'eye')).toContain('data-start="10" data-end="15"');
    for (const mark of marks) {
      expect(groupAt(svg, ...mark.from.path)).toMatch(
        /^<g id="[^"]+" class="sp-part" role="button" tabindex="0" data-path="./,
      );
      expect(svg).toContain(` id="${mark.id}"`);
    }
    expect(drawEye(fullScene('right', 90)).svg).not.toContain('tabindex');
  });

  it('lets no word of a note become markup', () => {
    const { svg } = drawEye({ eye: { path: ['<script>', '"&'], side: 'right' } });
    expect(svg).not.toContain('<script');
    expect(svg).toContain('&lt;script&gt;');
  });
});

describe('the double-angle plot', () => {
  it('says its vectors and what is missing', () => {
    expect(drawAstigmatism(vectors).description).toBe(
      'Corneal astigmatism, double-angle plot. 1. Before operation: 1.25 D @ 95°. ' +
        '2. Expected after operation: 0.86 D @ 96°. 3. Achieved: 0.50 D @ 170°.',
    );
    expect(drawAstigmatism({ before: { path: [], magnitude: 0, meridian: null } }).description).toBe(
      'Corneal astigmatism, double-angle plot. 1. Before operation: 0.00 D, no meridian. ' +
        'Not known: expected astigmatism; achieved astigmatism.',
    );
  });
});

/** Relative luminance and contrast ratio as defined in WCAG 2.2, success criterion 1.4.6 (7:1). */
const luminance = (hex: string) => {
  const [r = 0, g = 0, b = 0] = [1, 3, 5]
    .map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255)
    .map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};

describe('the colours', () => {
  it.each(['light', 'dark'] as const)('stand out from the %s paper', (theme) => {
    const { paper, ...others } = pictureColours[theme];
    const weak = Object.entries(others).filter(([, colour]) => {
      const [low = 0, high = 0] = [luminance(paper), luminance(colour)].toSorted((a, b) => a - b);
      return (high + 0.05) / (low + 0.05) < 7;
    });
    expect(weak).toEqual([]);
  });
});
