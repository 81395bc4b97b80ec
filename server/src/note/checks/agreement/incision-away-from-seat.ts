import type { Operation } from '@sideport/schemas';
import { operationCheck, type About } from '../check.ts';
import { comparedSite } from '../support/incision-site.ts';
import { apart, positionOn } from '../support/measurements.ts';
import { related } from '../support/place.ts';
import { certainEye } from '../support/sides.ts';

const AWAY = 60;

export const incisionAwayFromSeat = operationCheck({
  id: 'incision-away-from-seat',
  group: 'agreement',
  summary: 'The main incision lies far from where the surgeon sat.',
  severity: 'warning',
  allowable: true,
  run: (note, say) => {
    const [bySeat, byPlan] = [comparedSite(note, 'seat'), comparedSite(note, 'plan')];
    if (bySeat === undefined || bySeat.apart <= AWAY) return;
    if (anotherBeforeSurgeon(note, bySeat.expectedAt)) return;
    // Where the site differs from the plan, that was said; what is wrong then is the site.
    if (bySeat.mirrored || (byPlan !== undefined && byPlan.apart > AWAY / 2)) return;
    say({
      at: bySeat.expected,
      message: `Seat: the surgeon sat ${bySeat.expected.text}, but the main incision is ${bySeat.made.text}. Is one of them a slip?`,
      related: [related(`the main incision: ${bySeat.made.text}`, bySeat.made)],
    });
  },
});

/** Whether another incision, of a second procedure, lies where the surgeon sat. */
function anotherBeforeSurgeon(note: Operation, seatAt: number): boolean {
  const eye = certainEye(note);
  return (note.incisions?.items ?? []).some(({ kind, at }) => {
    const position =
      kind?.value === 'other' && at !== undefined && eye !== undefined
        ? positionOn(at.value, eye, note.seat)
        : undefined;
    return position !== undefined && apart(position, seatAt) <= AWAY;
  });
}

export const aboutIncisionAwayFromSeat: About = () => ({
  why: 'The main incision faces the surgeon; if it does not, the seat or the site is a slip, and a clock hour seen by the surgeon would be read wrongly.',
  whatToDo: 'Correct the seat or the site.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: { note: 'seat: superior' },
  sound: { note: 'seat: temporal' },
});
