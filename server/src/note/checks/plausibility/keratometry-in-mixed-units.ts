import { operationCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';

export const keratometryInMixedUnits = operationCheck({
  id: 'keratometry-in-mixed-units',
  group: 'plausibility',
  summary: 'One meridian is written in dioptres and the other in millimetres.',
  severity: 'warning',
  allowable: true,
  run: ({ preop }, say) => {
    const { k1, k2 } = preop?.biometry ?? {};
    if (k1 === undefined || k2 === undefined || k1.value.unit === k2.value.unit) return;
    say({
      at: k2,
      message: `Keratometry: K1 is ${k1.text} and K2 is ${k2.text}, in two units. Are both from the same line of the print-out?`,
      related: [related(`K1: ${k1.text}`, k1)],
    });
  },
});

export const aboutKeratometryInMixedUnits: About = () => ({
  why: 'Both are understood, but a print-out gives both in the same unit: one of them was read from another line.',
  whatToDo: 'Write both in the unit of the print-out.',
  source: 'ISO 10343 (radius or power; from memory)',
  since: '1.0',
  faulty: { note: 'preop:\n  biometry:\n    k2: 7.71 mm @ 88' },
  sound: { note: 'preop:\n  biometry:\n    k1: 7.85 mm @ 178\n    k2: 7.71 mm @ 88' },
});
