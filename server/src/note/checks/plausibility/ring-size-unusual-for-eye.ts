import { ringSizeAdvice } from '../../calculations/eye/ring-size.ts';
import { operationCheck, type About } from '../check.ts';
import { composeNote } from '../examples/compose.ts';
import { longEye } from '../examples/scenarios.ts';
import { lengthOf } from '../support/measurements.ts';
import { related } from '../support/place.ts';

const APART = 1.6;
const lines = (size: string): string =>
  composeNote(
    longEye,
    `ring:\n  used: yes\n  kind: tension ring\n  size: ${size}\n  reason: [long eye]\n  inserted: after cortex removal\n  placed: capsular bag\n  serial: R-50311`,
  );

export const ringSizeUnusualForEye = operationCheck({
  id: 'ring-size-unusual-for-eye',
  group: 'plausibility',
  summary: 'The ring is much smaller or larger than usual for an eye of this length.',
  severity: 'warning',
  allowable: true,
  run: (note, say) => {
    const size = note.ring?.size;
    const length = lengthOf(note);
    if (size === undefined || length === undefined || note.ring?.kind?.value === 'tension segment') return;
    const usual = ringSizeAdvice({ axialLengthMm: length.value.amount });
    if (!usual.ok || Math.abs(usual.value.free - size.value.free) < APART) return;
    say({
      at: size,
      message: `Tension ring: ${size.text} is unusual in an eye of ${length.text}; usual is ${usual.value.free}/${usual.value.compressed} mm. Is it right?`,
      related: [related(`axial length: ${length.text}`, length)],
    });
  },
});

export const aboutRingSizeUnusualForEye: About = () => ({
  why: 'The ends of a ring have to overlap: one too small does not span a large bag.',
  whatToDo: 'Compare with the packet. The size of the bag counts, not the length alone.',
  source:
    'rule of thumb by axial length, common practice, no source; a randomised trial in 120 eyes of 30 mm and more favoured 13/11 over 12/10 mm (seen as an abstract)',
  since: '1.0',
  faulty: { note: lines('12/10 mm') },
  sound: { note: lines('13/11 mm') },
});
