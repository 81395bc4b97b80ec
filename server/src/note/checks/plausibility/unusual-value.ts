import type { Place } from '@sideport/schemas';
import { textCheck, type About } from '../check.ts';
import { amountOf } from '../../reading/value-remarks.ts';
import { isExplained } from '../support/explained-values.ts';
import { related } from '../support/place.ts';
import { walk } from '../support/values.ts';

export const unusualValue = textCheck({
  id: 'unusual-value',
  group: 'plausibility',
  summary: 'A number is possible but unusual.',
  severity: 'warning',
  allowable: true,
  run: (reading, say) => {
    const told = new Map<string, Place[]>();
    for (const { field, plan } of walk(reading).limited) {
      const { usual, possible, label } = plan.guide;
      if (usual === undefined) continue;
      const amount = amountOf(field.value);
      if (amount === undefined || (amount >= usual[0] && amount <= usual[1])) continue;
      if (possible !== undefined && (amount < possible[0] || amount > possible[1])) continue;
      if (isExplained(reading, field.path)) continue;
      const unit = plan.notation.unit ?? '';
      const message = `${label}: ${field.text} is unusual (usually ${usual[0]} to ${usual[1]}${unit === '' ? '' : ` ${unit}`}). Is it right?`;
      told.set(message, [...(told.get(message) ?? []), field]);
    }
    // The same number in plan, verification and implant is asked about once.
    for (const [message, [at, ...others]] of told) {
      if (at !== undefined) say({ at, message, related: others.map((place) => related('here too', place)) });
    }
  },
});

export const aboutUnusualValue: About = () => ({
  why: 'Unusual eyes are real, and slips of a digit look just like them: it is worth a second look.',
  whatToDo:
    'Compare with the print-out or the machine. If the number is right, allow the remark; it never stops anything.',
  source: 'the usual limits of each field, with their source, stand in the description of the format',
  since: '1.0',
  faulty: { note: 'preop:\n  pressure: 61 mmHg' },
  sound: { note: 'preop:\n  pressure: 16 mmHg' },
});
