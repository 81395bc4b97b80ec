import { operationCheck, type About } from '../check.ts';
import { rcs } from '../support/completeness.ts';
import { headOf } from '../support/place.ts';
import { listed } from '../support/words.ts';
import { isWritten } from '../support/written.ts';

const wanted = [
  ['kind', 'the kind'],
  ['size', 'the size'],
  ['reason', 'the reason'],
  ['inserted', 'when it was inserted'],
  ['placed', 'where it lies'],
  ['serial', 'the serial or lot number'],
] as const;

export const ringIncomplete = operationCheck({
  id: 'ring-incomplete',
  group: 'completeness',
  summary: 'A tension ring was used, but its kind, size, reason or time of insertion is missing.',
  severity: 'unfinished',
  allowable: true,
  run: ({ ring }, say, context) => {
    if (ring?.used?.value !== true || context.status === 'planned') return;
    const missing = wanted.filter(
      ([key]) =>
        ring[key] === undefined && ring.$.said[key] === undefined && !isWritten(context.reading, ['ring', key]),
    );
    if (missing.length === 0) return;
    say({
      at: headOf(ring.$, context),
      message: `Tension ring: it was used, but ${listed(missing.map(([, name]) => name))} ${missing.length === 1 ? 'is' : 'are'} missing. Asked for by ${rcs}.`,
    });
  },
});

export const aboutRingIncomplete: About = () => ({
  why: 'A ring is an implant and an extra procedure: the record must identify it and say why it was needed.',
  whatToDo: 'Fill in the fields of the ring from its packet and from memory while it is fresh.',
  source: `${rcs} (extra procedure and the reason; prosthesis with serial number)`,
  since: '1.0',
  faulty: {
    note: 'ring:\n  used: yes\n  size: 13/11 mm\n  inserted: after cortex removal\n  placed: capsular bag\n  serial: R-50311',
  },
  sound: {
    note: 'capsule-state:\n  zonule: weak\nring:\n  used: yes\n  kind: tension ring\n  size: 13/11 mm\n  reason: [weak zonule]\n  inserted: after cortex removal\n  placed: capsular bag\n  serial: R-50311',
  },
});
