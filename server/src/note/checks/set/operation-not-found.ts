import { nearest } from '@sideport/schemas';
import { textCheck, type About } from '../check.ts';
import { notesWithId, type NoteFacts } from '../../set/note-set.ts';

export const operationNotFound = textCheck({
  id: 'operation-not-found',
  group: 'across notes',
  summary: 'The note that a follow-up or an amendment points to is not in the set.',
  severity: 'warning',
  allowable: true,
  run: (reading, say, { set, file }) => {
    if (reading.kind !== 'follow-up' && reading.kind !== 'amendment') return;
    const pointer = reading.kind === 'follow-up' ? reading.note.operation : reading.note.amends;
    if (pointer === undefined || set === null || file === null || notesWithId(set, pointer.value).length > 0) return;
    const near = nearest(pointer.value, operationsOf(reading.note.patient?.ref?.value, set.facts));
    say({
      at: pointer,
      message: `Note: ${pointer.text} is not in this set.${near === undefined ? '' : ` Is ${near} meant?`}`,
    });
  },
});

/** Another patient's operation is never meant; where one of the two names no patient, it may be. */
function* operationsOf(patient: string | undefined, facts: readonly NoteFacts[]): Generator<string> {
  for (const { id, record, patient: other } of facts) {
    const mayBe = patient === undefined || other === undefined || other === patient;
    if (id !== undefined && record === 'operation' && mayBe) yield id;
  }
}

export const aboutOperationNotFound: About = () => ({
  why: 'Without its operation a visit is compared with nothing and counted for nobody; the id may be mistyped.',
  whatToDo: 'Correct the id, or put the notes into one set: below the folder that holds sideport.yaml.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: { base: 'follow-up', note: 'operation: OP-2031-0120' },
  sound: { base: 'follow-up', note: 'operation: OP-2031-0102' },
});
