import type { AstigmatismVectors, Scene, Side } from '../../server/src/note/picture/scene.ts';

/** A note with everything in it: invented numbers, an incision on the temporal side. */
export function fullScene(side: Side, seat: number): Scene {
  return {
    eye: { path: ['eye'], span: { start: 10, end: 15 }, side },
    seat: { path: ['seat'], position: seat },
    limbus: { path: ['preop', 'biometry', 'white-to-white'], diameter: 11.8 },
    incisions: [
      { path: ['incisions', 0], kind: 'main', position: side === 'right' ? 180 : 0, width: 2.2 },
      { path: ['incisions', 1], kind: 'side-port', position: 90, width: 1.1 },
    ],
    steepMeridian: { path: ['preop', 'biometry', 'k2'], meridian: 95 },
    capsulotomy: { path: ['capsulotomy'], diameter: 5.5, offset: { distance: 0.4, toward: 0 } },
    optic: { path: ['lens'], diameter: 6 },
    ring: { path: ['ring'], used: true, diameter: 11 },
    zonule: { path: ['capsule-state', 'zonule'], state: 'intact' },
    aimedAxis: { path: ['plan', 'axis'], axis: 95 },
    foundAxis: { path: ['lens', 'axis'], axis: 100 },
  };
}

export const vectors: AstigmatismVectors = {
  before: { path: ['preop', 'biometry'], magnitude: 1.25, meridian: 95 },
  expected: { path: ['incisions', 0], magnitude: 0.86, meridian: 96 },
  achieved: { path: ['refraction'], magnitude: 0.5, meridian: 170 },
};
