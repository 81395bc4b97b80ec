import type { Operation } from '@sideport/schemas';
import { withoutNaturalLens } from '../../computing/natural-lens.ts';
import { operationCheck, type About } from '../check.ts';
import { complicationOf, has } from '../support/course.ts';
import { related } from '../support/place.ts';
import { tornFacts, type TornFact } from '../support/torn.ts';

/** Operations on an eye that was operated before: the capsule may have been found as it is. */
const LATER = new Set<string | undefined>(['lens exchange', 'secondary lens', 'lens repositioning']);

export const tornButNoComplication = operationCheck({
  id: 'torn-but-no-complication',
  group: 'agreement',
  summary: 'The state of the capsule tells of a complication that the complications do not list.',
  severity: 'error',
  allowable: true,
  run: (note, say) => {
    const list = note.complications?.$ ?? note.$.said['complications'];
    if (list === undefined || note.$.said['complications']?.word === 'not recorded') return;
    if (LATER.has(note.procedure?.value) && note['capsule-state']?.text !== undefined) return;
    const facts = tornFacts(note).filter((fact) => !isKnownBefore(note, fact));
    const unlisted = facts.filter(({ kinds }) => complicationOf(note, ...kinds) === undefined);
    const first = unlisted[0];
    if (first === undefined) return;
    say({
      at: first.field,
      message: `Complications: ${unlisted.map(({ fact }) => fact).join(', and ')}, but ${note.complications === undefined ? 'the complications say “none”' : `“${first.kinds[0]}” is not listed`}. If it was so before the operation, write “before: [${unlisted.map(({ part }) => part).join(', ')}]” in the state of the capsule.`,
      related: [related('the complications', list)],
    });
  },
});

/** Whether the note says elsewhere why the eye came like this: without its own lens, with a loose one, or injured. */
function isKnownBefore(note: Operation, { part }: TornFact): boolean {
  if (withoutNaturalLens(note) !== undefined) return true;
  return (
    (part === 'zonule' || part === 'vitreous') &&
    (has(note.comorbidity, 'lens subluxation', 'previous trauma') !== undefined ||
      has(note.diagnosis?.cataract, 'traumatic') !== undefined)
  );
}

export const aboutTornButNoComplication: About = () => ({
  why: 'The audit counts from the facts, the patient and the letter from the list: both must tell the same.',
  whatToDo:
    'List the complication with when, what was done, and whether the patient was told; or correct the state of the capsule. What was so when the operation began stands in “before” of the state of the capsule.',
  source: 'UK national cataract audit (definition of posterior capsule rupture)',
  since: '1.0',
  faulty: { note: 'capsule-state:\n  anterior: torn, contained' },
  sound: {
    note: 'capsule-state:\n  anterior: torn, contained\ncomplications:\n  - what: anterior capsule tear\n    when: capsulotomy\n    account: the edge ran out and was brought back\n    action: torn round the other way\n    told: yes',
  },
});
