import { describe, expect, it } from 'vitest';
import { cover } from '../../server/src/note/picture/cover.ts';
import { drawEye } from '../../server/src/note/picture/eye-picture.ts';
import { attributes, corners, groupAt, limbus, number } from './reading.ts';
import { fullScene } from './scenes.ts';

const { svg } = drawEye(fullScene('right', 180));
const perMillimetre = limbus(svg).radius / (11.8 / 2);

function circleOf(group: string, line: string) {
  const circle = attributes(group, 'circle').find((each) => each.get('class')?.includes(line));
  return { x: number(circle, 'cx'), y: number(circle, 'cy'), radius: number(circle, 'r') };
}

describe('the scale', () => {
  it('is the same for the limbus, the capsulotomy, the optic and the bar', () => {
    expect(circleOf(groupAt(svg, 'capsulotomy'), 'capsule').radius / perMillimetre).toBeCloseTo(2.75, 2);
    expect(circleOf(groupAt(svg, 'lens'), 'lens').radius / perMillimetre).toBeCloseTo(3, 2);
    expect(svg).toContain(` h ${perMillimetre} m 0 -6`);
  });

  it('draws the width of an incision as the chord at the limbus', () => {
    const [outerStart, outerEnd, innerEnd, innerStart] = corners(groupAt(svg, 'incisions', 0));
    // The recorded width is the chord on the limbus itself, between the inner and the outer edge of the mark.
    const chord = (a: typeof outerStart, b: typeof outerStart) =>
      Math.hypot((a?.x ?? 0) - (b?.x ?? 0), (a?.y ?? 0) - (b?.y ?? 0));
    const outer = chord(outerStart, outerEnd) / perMillimetre;
    const inner = chord(innerEnd, innerStart) / perMillimetre;
    expect(inner).toBeLessThan(2.2);
    expect(outer).toBeGreaterThan(2.2);
    // Similar triangles: 0.2 mm outward, 0.45 mm inward of a radius of 5.9 mm.
    expect((outer * 5.9) / 6.1).toBeCloseTo(2.2, 2);
    expect((inner * 5.9) / 5.45).toBeCloseTo(2.2, 2);
  });

  it('moves the capsulotomy off centre by the recorded distance, toward the recorded place', () => {
    const centre = limbus(svg);
    const capsulotomy = circleOf(groupAt(svg, 'capsulotomy'), 'capsule');
    // Toward 0 of the dial is toward the nose of a right eye: the top of the view from its temple.
    expect((centre.y - capsulotomy.y) / perMillimetre).toBeCloseTo(0.4, 2);
    expect(capsulotomy.x).toBeCloseTo(centre.x, 2);
  });
});

const how = (capsulotomy: number, distance: number, optic = 6) =>
  cover(
    { path: [], diameter: capsulotomy, offset: { distance, toward: 30 } },
    { path: [], diameter: optic, offset: undefined },
  );

describe('how the capsulotomy covers the optic', () => {
  it('agrees with plane geometry worked by hand', () => {
    expect(how(5, 0)).toEqual({ kind: 'all round', least: 0.5, greatest: 0.5 });
    // 3.0 - 2.625 -+ 0.3
    expect(how(5.25, 0.3)).toMatchObject({ kind: 'all round' });
    const part = how(5.5, 0.4);
    // acos((9 - 0.16 - 7.5625) / (2 x 0.4 x 2.75)) / pi = 0.302786 of the edge lies off the optic
    expect(part).toMatchObject({
      kind: 'part',
      offShare: expect.closeTo(1 - 0.697214, 5),
      toward: expect.closeTo(30, 9),
    });
    expect(how(6.5, 0)).toEqual({ kind: 'none' });
  });

  it('agrees with counting points along the edge', () => {
    for (const [diameter, distance] of [
      [5.5, 0.4],
      [5.2, 0.9],
      [6.2, 0.3],
      [4, 1.5],
    ] as const) {
      const points = 20_000;
      let off = 0;
      for (let index = 0; index < points; index++) {
        const angle = (2 * Math.PI * (index + 0.5)) / points;
        off += Math.hypot(distance + (diameter / 2) * Math.cos(angle), (diameter / 2) * Math.sin(angle)) > 3 ? 1 : 0;
      }
      const found = how(diameter, distance);
      expect(found?.kind === 'part' ? found.offShare : 0).toBeCloseTo(off / points, 3);
    }
  });

  it('does not change when the optic itself lies off the pupil: the capsulotomy is measured from the optic', () => {
    const capsulotomy = { path: ['c'], diameter: 5, offset: { distance: 0.2, toward: 90 } };
    const optic = { path: ['o'], diameter: 6, offset: { distance: 0.5, toward: 0 } };
    expect(cover(capsulotomy, optic)).toEqual(cover(capsulotomy, { path: ['o'], diameter: 6 }));
    const drawn = drawEye({ capsulotomy, optic }).svg;
    const apart = circleOf(groupAt(drawn, 'c'), 'capsule');
    const from = circleOf(groupAt(drawn, 'o'), 'lens');
    expect((from.y - apart.y) / 40).toBeCloseTo(0.2, 2);
    expect((from.x - limbus(drawn).x) / 40).toBeCloseTo(0.5, 2);
  });

  it('is not known without both diameters and the offset', () => {
    expect(cover({ path: [], diameter: 5 }, { path: [], diameter: 6 })).toBeUndefined();
    expect(
      cover({ path: [], diameter: 5, offset: { distance: null, toward: 0 } }, { path: [], diameter: 6 }),
    ).toBeUndefined();
    expect(cover({ path: [], offset: { distance: 0, toward: 0 } }, { path: [], diameter: 6 })).toBeUndefined();
    expect(cover(undefined, { path: [], diameter: 6 })).toBeUndefined();
  });
});
