import { describe, expect, it } from 'vitest';
import { drawEye } from '../../server/src/note/picture/eye-picture.ts';
import type { Side } from '../../server/src/note/picture/scene.ts';
import { angleFrom, corners, groupAt, limbus, middle, wordsAt } from './reading.ts';
import { fullScene } from './scenes.ts';

const direction = (degrees: number) => ({
  x: Math.cos((degrees * Math.PI) / 180),
  y: Math.sin((degrees * Math.PI) / 180),
});

/**
 * Sources. ISO 8429:1986, graduated dial scale: the same dial for both eyes, seen by a person facing the eye, 0 at that
 * person's right, growing counter-clockwise. Which side is nasal follows from anatomy. The view is derived here a second
 * way, in space: the patient's left is x, the top of the head is y, out of the face is z; the surgeon looks along -z with
 * "up" away from the seat, and "right" is the cross product of the two.
 */
function inTheView(position: number, seat: number): number {
  const point = direction(position);
  const towardSurgeon = direction(seat);
  const up = { x: -towardSurgeon.x, y: -towardSurgeon.y };
  // (0, 0, -1) x (up.x, up.y, 0)
  const right = { x: up.y, y: -up.x };
  return (Math.atan2(point.x * up.x + point.y * up.y, point.x * right.x + point.y * right.y) * 180) / Math.PI;
}

const away = (a: number, b: number) => Math.abs(((((a - b) % 360) + 540) % 360) - 180);

/** Nasal is toward the nose: the patient's left for a right eye (x, position 0), the patient's right for a left eye. */
const NASAL: Readonly<Record<Side, number>> = { right: 0, left: 180 };

const seats = [
  { side: 'right', name: 'superior', seat: 90 },
  { side: 'right', name: 'temporal', seat: 180 },
  { side: 'right', name: 'superotemporal', seat: 135 },
  { side: 'left', name: 'superior', seat: 90 },
  { side: 'left', name: 'temporal', seat: 0 },
  { side: 'left', name: 'superotemporal', seat: 45 },
] as const;

describe.each(seats)('the $side eye seen from the $name seat', ({ side, name, seat }) => {
  const { svg } = drawEye(fullScene(side, seat));
  const centre = limbus(svg);

  it('has every incision where the dial puts it', () => {
    const temporal = side === 'right' ? 180 : 0;
    const main = angleFrom(centre, middle(corners(groupAt(svg, 'incisions', 0))));
    const sidePort = angleFrom(centre, middle(corners(groupAt(svg, 'incisions', 1))));
    expect(away(main, inTheView(temporal, seat))).toBeLessThan(0.1);
    expect(away(sidePort, inTheView(90, seat))).toBeLessThan(0.1);
  });

  it('writes nasal toward the nose and temporal away from it', () => {
    expect(away(angleFrom(centre, wordsAt(svg, 'nasal')), inTheView(NASAL[side], seat))).toBeLessThan(0.1);
    expect(away(angleFrom(centre, wordsAt(svg, 'temporal')), inTheView(NASAL[side] + 180, seat))).toBeLessThan(0.1);
  });

  it('writes each degree and each clock hour at its place', () => {
    for (let position = 0; position < 360; position += 30) {
      const expected = inTheView(position, seat);
      // A label hangs on its base line, a little under its place.
      expect(away(angleFrom(centre, wordsAt(svg, `${position}°`)), expected)).toBeLessThan(1.5);
      const hour = (15 - position / 30) % 12 || 12;
      expect(away(angleFrom(centre, wordsAt(svg, `${hour} h`)), expected)).toBeLessThan(1.5);
    }
  });

  it('has the seat at the bottom and names it', () => {
    expect(inTheView(seat, seat)).toBeCloseTo(-90, 9);
    const words = wordsAt(svg, `The surgeon sits here: ${name}, ${seat}°`);
    expect(words.y).toBeGreaterThan(centre.y + centre.radius);
    expect(words.x).toBe(centre.x);
  });
});

const directions = (side: Side, seat: number) => {
  const { svg } = drawEye(fullScene(side, seat));
  const centre = limbus(svg);
  const to = (words: string) => {
    const at = wordsAt(svg, words);
    if (Math.abs(at.x - centre.x) > Math.abs(at.y - centre.y)) return at.x > centre.x ? 'right' : 'left';
    return at.y > centre.y ? 'bottom' : 'top';
  };
  return { nasal: to('nasal'), temporal: to('temporal'), superior: to('superior') };
};

describe('what a surgeon knows from sitting there', () => {
  it("from the head of the table the patient's right eye has its temple on the surgeon's right", () => {
    expect(directions('right', 90)).toEqual({ nasal: 'left', temporal: 'right', superior: 'bottom' });
    expect(directions('left', 90)).toEqual({ nasal: 'right', temporal: 'left', superior: 'bottom' });
  });

  it('from the temple the nose is far, and superior is on the left of a right eye and on the right of a left eye', () => {
    expect(directions('right', 180)).toEqual({ nasal: 'top', temporal: 'bottom', superior: 'left' });
    expect(directions('left', 0)).toEqual({ nasal: 'top', temporal: 'bottom', superior: 'right' });
  });
});
