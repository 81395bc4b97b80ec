import type { Field, Site } from '@sideport/schemas';
import { refused, type Outcome } from '../calculations/outcome.ts';
import { positionOfClockHour } from '../calculations/position/clock-hour.ts';
import { incisionPosition } from '../calculations/position/incision.ts';
import { positionOf, positionOfSite, type Site as SiteWord } from '../calculations/position/site.ts';
import { positionFromSurgeonsView } from '../calculations/position/surgeons-view.ts';
import type { Eye } from '../calculations/quantities.ts';
import type { Known } from './known.ts';

/** Dial position of a place as written; words need the eye, a clock as the surgeon saw it the eye and the seat. */
export function positionOfPlace(site: Site, eye: Known<Eye>, seat: Known<SiteWord>): Outcome<number> {
  if (site.kind === 'degrees') return incisionPosition({ position: site.degrees });
  if (site.kind === 'clock' && site.view === 'anatomical') return positionOfClockHour({ hour: site.hour });
  if (!eye.ok) return eye;
  if (site.kind === 'word') return positionOfSite({ site: site.word, eye: eye.value });
  if (!seat.ok) return refused(`${seat.because}, and the clock is the surgeon's own view`);
  return positionFromSurgeonsView({ hour: site.hour, seat: positionOf(seat.value, eye.value) });
}

/** The same for a field that may be missing. */
export function positionOfField(
  field: Field<Site> | undefined,
  name: string,
  eye: Known<Eye>,
  seat: Known<SiteWord>,
): Outcome<number> {
  return field === undefined ? refused(`${name} is missing`) : positionOfPlace(field.value, eye, seat);
}
