import { operationCheck, type About } from '../check.ts';
import { composeNote } from '../examples/compose.ts';
import { longEye } from '../examples/scenarios.ts';
import { removesLens } from '../support/course.ts';
import { longLength } from '../support/measurements.ts';
import { related } from '../support/place.ts';
import { planWithout } from '../support/precaution.ts';

export const longEyeWithoutBlockPrecaution = operationCheck({
  id: 'long-eye-without-block-precaution',
  group: 'sequence and consequence',
  summary: 'In a long eye nothing is planned against reverse pupillary block, nor said to be not needed.',
  severity: 'warning',
  allowable: true,
  run: (note, say, context) => {
    const length = longLength(note, context);
    if (length === undefined || !removesLens(note)) return;
    const place = planWithout(note, 'reverse pupillary block', 'low bottle');
    if (place === undefined) return;
    say({
      at: place,
      message: `Plan: the eye is ${length.text} long, but nothing is planned against reverse pupillary block, and it is not said to be unnecessary.`,
      related: [related(`axial length: ${length.text}`, length)],
    });
  },
});

export const aboutLongEyeWithoutBlockPrecaution: About = () => ({
  why: 'When the infusion starts, the iris is pressed against the lens and the chamber falls deep: painful, and a strain on the zonule.',
  whatToDo: 'List “reverse pupillary block” or “low bottle” among the precautions, or write “none needed”.',
  source: 'lens-iris diaphragm retropulsion: literature from memory; common practice',
  since: '1.0',
  faulty: { note: composeNote(longEye, 'plan:\n  precautions: [tension ring ready]') },
  sound: { note: longEye },
});
