import { operationCheck, type About } from '../check.ts';
import { factsOf } from '../../set/note-set.ts';
import { isLater, othersWith, placeIn } from '../support/others.ts';

const story =
  'deep chamber after viscoelastic, capsule torn round without difficulty, four quadrants removed, cortex came away in one piece';

export const sameNarrativeAsAnother = operationCheck({
  id: 'same-narrative-as-another',
  group: 'across notes',
  summary: 'The text is word for word that of another note.',
  severity: 'warning',
  allowable: true,
  run: (note, say, context) => {
    const text = note.findings ?? note['free-text'] ?? note.dictation;
    if (text === undefined || context.file === null) return;
    const narrative = factsOf(context.reading, context.file)?.narrative;
    const words = [note.findings, note['free-text'], note.dictation].flatMap((field) => field?.value ?? []);
    const other = othersWith(context, 'narrative', narrative, words).find(
      (facts) => facts.id !== note.id?.value && isLater(note.date?.value, context, facts),
    );
    if (other === undefined) return;
    say({
      at: text,
      message: `Text: findings and free text are word for word those of ${other.file}. Were they written for this eye?`,
      related: placeIn(context, other.file, 'the same words', ({ kind, note: found }) =>
        kind === 'operation' ? (found.findings ?? found['free-text'] ?? found.dictation) : undefined,
      ),
    });
  },
});

export const aboutSameNarrativeAsAnother: About = () => ({
  why: 'Copied text tells of another eye: it has hidden complications and wrong sides often enough.',
  whatToDo: 'Write what was seen in this eye. What is always the same need not be written.',
  source: 'Joint Commission and CMS guidance on copied text, from memory; common practice',
  since: '1.0',
  faulty: {
    note: `findings: ${story}`,
    files: {
      'earlier.opnote.yaml': `id: OP-2031-0087\ndate: 2031-03-11\npatient:\n  ref: P-1050\nfindings: ${story}\nlens:\n  serial: "0040719087"\n  udi: not recorded`,
    },
  },
  sound: {
    note: `findings: ${story}; small zonular gap at 4 o'clock seen and left`,
    files: {
      'earlier.opnote.yaml': `id: OP-2031-0087\ndate: 2031-03-11\npatient:\n  ref: P-1050\nfindings: ${story}\nlens:\n  serial: "0040719087"\n  udi: not recorded`,
    },
  },
});
