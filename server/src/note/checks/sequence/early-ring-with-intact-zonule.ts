import { operationCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';

const lines = (inserted: string): string =>
  `comorbidity: [pseudoexfoliation]\nring:\n  used: yes\n  kind: tension ring\n  size: 13/11 mm\n  reason: [pseudoexfoliation]\n  inserted: ${inserted}\n  placed: capsular bag\n  serial: R-50311`;

export const earlyRingWithIntactZonule = operationCheck({
  id: 'early-ring-with-intact-zonule',
  group: 'sequence and consequence',
  summary: 'The ring went in before the cortex was out, although the zonule is recorded as intact.',
  severity: 'info',
  allowable: true,
  run: ({ ring, 'capsule-state': state }, say) => {
    const inserted = ring?.inserted;
    const zonule = state?.zonule;
    if (ring?.used?.value !== true || inserted === undefined || zonule?.value !== 'intact') return;
    if (inserted.value !== 'before cortex removal' && inserted.value !== 'before nucleus removal') return;
    say({
      at: inserted,
      message: `Tension ring: it went in ${inserted.value} although the zonule is recorded as intact. Was it needed so early?`,
      related: [related('the zonule: intact', zonule)],
    });
  },
});

export const aboutEarlyRingWithIntactZonule: About = () => ({
  why: 'An early ring traps the cortex and makes its removal hard; it is worth that only when the zonule gives way.',
  whatToDo: 'Correct time or zonule; if the ring went in early on purpose, allow the remark with the reason.',
  source: 'common practice, no source (“as late as you can, as early as you must”)',
  since: '1.0',
  faulty: { note: lines('before cortex removal') },
  sound: { note: lines('after cortex removal') },
});
