import { daysAfterOperation } from '../../calculations/time/reviews.ts';
import type { Definition } from '../definition.ts';
import type { FollowUpFacts } from '../follow-up-facts.ts';
import { result } from '../result.ts';

/** How long after the operation the visit was. */
export const dayOfVisit: Definition<FollowUpFacts> = {
  names: ['days-after-operation'],
  compute: ({ note, date, operation, noOperation, spot }) => {
    const inputs = { 'operation-date': operation?.date ?? noOperation, visit: date };
    return [
      result('days-after-operation', spot(note.date), inputs, (given) =>
        daysAfterOperation({ operationDate: given['operation-date'], visit: given.visit }),
      ),
    ];
  },
};
