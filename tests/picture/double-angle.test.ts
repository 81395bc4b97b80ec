import { describe, expect, it } from 'vitest';
import { drawAstigmatism } from '../../server/src/note/picture/double-angle.ts';
import { angleFrom, attributes, groupAt, number, wordsAt } from './reading.ts';
import { vectors } from './scenes.ts';

/**
 * Double-angle representation as restated in Invest Ophthalmol Vis Sci (article 2654574), citing Holladay and others:
 * x = M cos 2a, y = M sin 2a.
 */
describe('the double-angle plot', () => {
  const { svg } = drawAstigmatism(vectors);
  const lineOf = (...path: (string | number)[]) => attributes(groupAt(svg, ...path), 'line')[0];
  const centre = { x: number(lineOf('refraction'), 'x1'), y: number(lineOf('refraction'), 'y1') };

  it.each([
    [['preop', 'biometry'], 1.25, 95],
    [['incisions', 0], 0.86, 96],
    [['refraction'], 0.5, 170],
  ])('puts %j at twice its meridian', (path, magnitude, meridian) => {
    const line = lineOf(...path);
    const full = Math.abs(wordsAt(svg, '180°').x - 30 - centre.x);
    const x = (number(line, 'x2') - centre.x) / full;
    const y = (centre.y - number(line, 'y2')) / full;
    // The outermost ring is the smallest usual size that holds 1.25 D.
    expect(x * 1.5).toBeCloseTo(magnitude * Math.cos((2 * meridian * Math.PI) / 180), 2);
    expect(y * 1.5).toBeCloseTo(magnitude * Math.sin((2 * meridian * Math.PI) / 180), 2);
  });

  it('writes meridians, at twice their angle', () => {
    for (const meridian of [15, 45, 90, 135, 165]) {
      const written = angleFrom(centre, { ...wordsAt(svg, `${meridian}°`), y: wordsAt(svg, `${meridian}°`).y - 7 });
      expect(Math.cos(((written - 2 * meridian) * Math.PI) / 180)).toBeCloseTo(1, 4);
    }
    expect(svg).not.toContain('>0°<');
  });

  it('stays inside its outermost ring for any magnitude', () => {
    for (const magnitude of [0.1, 1, 2.4, 7, 19, 33.3]) {
      const drawn = drawAstigmatism({ before: { path: ['k'], magnitude, meridian: 45 } }).svg;
      const line = attributes(groupAt(drawn, 'k'), 'line')[0];
      expect(Math.abs(number(line, 'y2') - number(line, 'y1'))).toBeLessThanOrEqual(300);
    }
  });
});
