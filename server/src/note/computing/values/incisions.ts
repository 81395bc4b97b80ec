import { incisionMeridian } from '../../calculations/position/incision.ts';
import { siteOfPosition } from '../../calculations/position/site.ts';
import type { Definition } from '../definition.ts';
import { HEAD, type OperationFacts } from '../operation-facts.ts';
import { positionOfPlace } from '../positions.ts';
import { result, spotOf, type Result } from '../result.ts';

/** Position, meridian and word of every incision, the planned one included. */
export const incisionPlaces: Definition<OperationFacts> = {
  names: ['incision-position', 'incision-meridian', 'incision-site'],
  beside: ['incisions', 'plan'],
  compute: ({ note, eye, seat: seatTaken, plannedSeat }) => {
    const planned = note.plan?.incision?.at;
    const places = [planned, ...(note.incisions?.items ?? []).map((incision) => incision.at)];
    return places.flatMap((field): readonly Result[] => {
      if (field === undefined) return [];
      const { value, text } = field;
      const seat = field === planned ? plannedSeat : seatTaken;
      const at = spotOf(field);
      const position = positionOfPlace(value, eye, seat);
      const seenBySurgeon = value.kind === 'clock' && value.view === 'surgeon';
      const inputs = { site: { ok: true, value: text, unit: '' } as const, eye, ...(seenBySurgeon ? { seat } : {}) };
      return [
        { name: 'incision-position', at, inputs, outcome: position, inline: value.kind !== 'degrees' },
        result('incision-meridian', at, { position }, incisionMeridian),
        result('incision-site', at, { position, eye }, siteOfPosition, { inline: value.kind === 'degrees' }),
      ];
    });
  },
};

/** What the main incision is expected to do, from the surgeon's own centroid. */
export const incisionEffect: Definition<OperationFacts> = {
  names: ['expected-induced-astigmatism', 'expected-corneal-astigmatism'],
  beside: ['incisions', 'plan', ...HEAD],
  compute: ({ note, mainIncision, expectedInduced, expectedCornea, cornea, spot }) => {
    const at = mainIncision?.at ?? spot(note.incisions?.$, note.plan?.incision?.$, note.plan?.$);
    const inputs = {
      'corneal-astigmatism': cornea.astigmatism,
      'expected-induced-astigmatism': expectedInduced.outcome,
    };
    return [
      { name: 'expected-induced-astigmatism', at, inputs: expectedInduced.inputs, outcome: expectedInduced.outcome },
      { name: 'expected-corneal-astigmatism', at, inputs, outcome: expectedCornea },
    ];
  },
};
