import type { Plan } from '@sideport/schemas';
import type { AmendedNote } from '../check.ts';
import { nearestField, planOfField } from './field-path.ts';

/** A field that an amendment names; where the amended note is not at hand, it may be of either kind. */
export function planOfAmended(path: string, amended: AmendedNote | null): Plan | undefined {
  if (amended !== null) return planOfField(path, amended.kind);
  return planOfField(path) ?? planOfField(path, 'follow-up');
}

export function nearestAmended(path: string, amended: AmendedNote | null): string | undefined {
  return nearestField(path, amended?.kind);
}

/** What kind of note is amended, as sentences name it. */
export const nameOf = (amended: AmendedNote | null): string => (amended?.kind === 'follow-up' ? 'visit' : 'operation');
