import type { Outcome } from '../../calculations/outcome.ts';
import { ageAtOperation } from '../../calculations/time/age.ts';
import { operationDuration } from '../../calculations/time/duration.ts';
import type { Definition } from '../definition.ts';
import { from, known, valueOf } from '../known.ts';
import { HEAD, type OperationFacts } from '../operation-facts.ts';
import { result } from '../result.ts';

/** Age on the day of the operation, from the year of birth. */
export function ageOf({ note, date }: OperationFacts): Outcome<number> {
  return from({ born: valueOf(note.patient?.born, 'the year of birth'), date }, (given) =>
    ageAtOperation({ born: given.born, operationDate: given.date }),
  );
}

const minuteOfDay = (time: string): number => Number(time.slice(0, 2)) * 60 + Number(time.slice(3, 5));

/** Age and duration. */
export const ageAndDuration: Definition<OperationFacts> = {
  names: ['age-at-operation', 'operation-duration'],
  beside: ['patient', 'finish', 'start', 'date', ...HEAD],
  compute: (facts) => {
    const { note, date, spot } = facts;
    const born = valueOf(note.patient?.born, 'the year of birth');
    const age = {
      name: 'age-at-operation',
      at: spot(note.patient?.born, note.patient?.$),
      inputs: { born, date },
      outcome: ageOf(facts),
    } as const;
    if (note.status?.value === 'planned' && note.start === undefined && note.finish === undefined) return [age];
    const times = {
      start: known(note.start?.value, 'the start of the operation'),
      finish: known(note.finish?.value, 'the finish of the operation'),
    };
    return [
      age,
      result('operation-duration', spot(note.finish, note.start, note.date), times, (given) =>
        operationDuration({ startMinute: minuteOfDay(given.start), finishMinute: minuteOfDay(given.finish) }),
      ),
    ];
  },
};
