import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readNote } from '../../server/src/note/reading/read-note.ts';
import { reviewNote } from '../../server/src/note/review.ts';
import { astigmatismOf, sceneOf } from '../../server/src/note/picture/scene-of-note.ts';
import type { Scene } from '../../server/src/note/picture/scene.ts';

function sceneIn(text: string): Scene {
  const reading = readNote(text);
  if (reading.kind !== 'operation') throw new Error('Not an operation');
  return sceneOf(reading.note);
}

const head = 'opnote: 1\nrecord: operation\n';

const k = (k1: string, k2: string) =>
  sceneIn(`${head}preop:\n  biometry:\n    k1: ${k1}\n    k2: ${k2}\n`).steepMeridian;

describe('what a note gives to draw', () => {
  // ISO 8429: temporal is 180 in a right eye and 0 in a left eye; superior is 90 in both.
  it.each([
    ['right', 'temporal', 180],
    ['left', 'temporal', 0],
    ['right', 'superotemporal', 135],
    ['left', 'superotemporal', 45],
    ['right', "3 o'clock", 0],
    ['left', "3 o'clock", 0],
    ['right', '100°', 100],
  ])('puts an incision of the %s eye at %s at %i°', (eye, at, position) => {
    const scene = sceneIn(`${head}eye: ${eye}\nincisions:\n  - kind: main\n    at: ${at}\n    width: 2.2 mm\n`);
    expect(scene.incisions?.[0]).toMatchObject({ kind: 'main', position, width: 2.2, path: ['incisions', 0] });
  });

  it("turns an hour of the surgeon's own view by the seat, and does not guess without it", () => {
    const incision = "incisions:\n  - kind: main\n    at: 6 o'clock, surgeon's view\n";
    expect(sceneIn(`${head}eye: right\nseat: superior\n${incision}`).incisions?.[0]?.position).toBe(90);
    expect(sceneIn(`${head}eye: right\n${incision}`).incisions?.[0]?.position).toBeUndefined();
    expect(sceneIn(`${head}incisions:\n  - at: temporal\n`).incisions?.[0]?.position).toBeUndefined();
  });

  it('leaves out what is not recorded', () => {
    const scene = sceneIn(`${head}eye: left\ncapsulotomy:\n  diameter: 5.0 mm\n`);
    expect(scene.incisions).toBeUndefined();
    expect(scene.ring).toBeUndefined();
    expect(scene.seat).toBeUndefined();
    expect(scene.capsulotomy).toMatchObject({ diameter: 5, offset: undefined });
    expect(sceneIn(`${head}capsulotomy:\n  off-centre: centred\n`).capsulotomy?.offset).toEqual({
      distance: 0,
      toward: 0,
    });
    expect(sceneIn(`${head}eye: left\ncapsulotomy:\n  off-centre: toward nasal\n`).capsulotomy?.offset).toEqual({
      distance: null,
      toward: 180,
    });
  });

  it('takes the meridian of the stronger reading as the steep one, whatever it is written in', () => {
    expect(k('43.25 D @ 5', '44.50 D @ 95')?.meridian).toBe(95);
    expect(k('44.50 D @ 95', '43.25 D @ 5')?.meridian).toBe(95);
    expect(k('7.60 mm @ 10', '7.80 mm @ 100')?.meridian).toBe(10);
    expect(k('43.00 D @ 5', '43.00 D @ 95')).toBeUndefined();
    expect(k('43.25 D @ 5', '44.50 D')).toBeUndefined();
  });

  it('draws an enlarged incision as it was at the end', () => {
    const scene = sceneIn(`${head}incisions:\n  - width: 2.2 mm\n    enlarged-to: 2.8 mm\n`);
    expect(scene.incisions?.[0]?.width).toBe(2.8);
  });
});

describe('the astigmatism of a note', () => {
  it('is taken from what was computed, with the place it was computed from', () => {
    const text = readFileSync(new URL('../../samples/sound/toric-right.opnote.yaml', import.meta.url), 'utf8');
    const { computed } = reviewNote(text);
    const { before } = astigmatismOf(computed, undefined);
    // 44.75 D @ 98 less 42.25 D @ 8
    expect(before).toMatchObject({ magnitude: 2.5, meridian: 98 });
    expect(text.slice(before?.span?.start, before?.span?.end)).toContain('98');
  });
});
