import { operationCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';
import { certainEye } from '../support/sides.ts';
import { incisionOffSteep } from '../support/steep.ts';
import { rounded } from '../support/words.ts';

export const incisionNotOnSteepMeridian = operationCheck({
  id: 'incision-not-on-steep-meridian',
  group: 'agreement',
  summary: 'The incision was meant to lie on the steep corneal meridian and does not.',
  severity: 'warning',
  allowable: true,
  run: (note, say, context) => {
    const found = incisionOffSteep(note, context);
    const meant = note.plan?.incision?.['on-steep-meridian'];
    const biometry = note.preop?.biometry;
    if (found === undefined || meant === undefined || biometry?.k1 === undefined || certainEye(note) === undefined)
      return;
    const { field, meridian, steep, off } = found;
    const flat = off > 80 ? ' That is the flat meridian.' : '';
    say({
      at: field,
      message: `Incision: it was meant to lie on the steep meridian (${rounded(steep, 0)}°), but ${field.text} is the meridian ${rounded(meridian, 0)}°, ${rounded(off, 0)}° away.${flat}`,
      related: [related('the plan: on the steep meridian', meant), related('the keratometry', biometry.k1)],
    });
  },
});

export const aboutIncisionNotOnSteepMeridian: About = () => ({
  why: 'An incision flattens the meridian it lies on: off the steep one it helps little, and 90° off it makes the astigmatism worse.',
  whatToDo:
    'Compare the keratometry with the print-out and the site with what was done. If it was moved on purpose, say why.',
  source: 'double-angle vectors: flattening at the incision; tolerance of 10° common practice, no source',
  since: '1.0',
  faulty: { note: 'plan:\n  incision:\n    on-steep-meridian: yes' },
  sound: {
    note: 'preop:\n  biometry:\n    k1: 43.75 D @ 178\n    k2: 43.00 D @ 88\nplan:\n  incision:\n    on-steep-meridian: yes',
  },
});
