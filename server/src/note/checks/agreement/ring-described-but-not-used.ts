import { operationCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';
import { listed } from '../support/words.ts';

export const ringDescribedButNotUsed = operationCheck({
  id: 'ring-described-but-not-used',
  group: 'agreement',
  summary: 'The note says that no tension ring was used, and describes the ring that was.',
  severity: 'error',
  allowable: false,
  run: ({ ring }, say) => {
    if (ring?.used?.value !== false) return;
    const { size, inserted, placed, result, serial } = ring;
    const described = Object.entries({ size, inserted, placed, result, serial }).filter(
      ([, field]) => field !== undefined,
    );
    if (described.length === 0 || ring.result?.value === 'removed again' || ring.result?.value === 'ring lost') return;
    say({
      at: ring.used,
      message: `Tension ring: it says “used: ${ring.used.text}”, but ${listed(described.map(([name]) => `“${name}”`))} of a ring ${described.length > 1 ? 'are' : 'is'} recorded. One of them is wrong.`,
      related: described.map(([name, field]) => related(`${name}: ${field?.text ?? ''}`, field ?? ring.$)),
    });
  },
});

export const aboutRingDescribedButNotUsed: About = () => ({
  why: 'A ring that is in the eye and not in the record is looked for in vain at the next operation; one that is only in the record is coded and traced for nothing.',
  whatToDo: 'Write “used: yes”, or take away what was left of a ring that was not used.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: { note: 'ring:\n  used: no\n  size: 13/11 mm' },
  sound: {
    note: 'ring:\n  used: yes\n  kind: tension ring\n  size: 13/11 mm\n  reason: [weak zonule]\n  inserted: after cortex removal\n  placed: capsular bag\n  result: bag round and centred\n  serial: "R50311"\ncapsule-state:\n  zonule: weak',
  },
});
