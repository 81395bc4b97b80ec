import type { Source } from '../outcome.ts';
import { CITATIONS } from '../sources.ts';

export const CATEGORIES = ['CF', 'HM', 'PL', 'NPL'] as const;
/** Counting fingers, hand movements, perception of light, no perception of light. */
export type AcuityCategory = (typeof CATEGORIES)[number];

export const SCHEMES = ['schulze-bonsel-2006', 'lange-2009', 'holladay-1997', 'extrapolated'] as const;
/** Whose logMAR values stand for the categories. */
export type AcuityScheme = (typeof SCHEMES)[number];

export interface Scheme {
  readonly logmar: Partial<Readonly<Record<AcuityCategory, number>>>;
  readonly source: Source;
  readonly caution: string;
}

export const SCHEME: Readonly<Record<AcuityScheme, Scheme>> = {
  'schulze-bonsel-2006': {
    logmar: { CF: 1.85, HM: 2.3 },
    source: { citation: CITATIONS.schulzeBonsel2006, status: 'seen' },
    caution: 'Measured in few eyes (counting fingers at 30 cm: 6; hand movements: 12).',
  },
  'lange-2009': {
    logmar: { CF: 1.98, HM: 2.28 },
    source: { citation: CITATIONS.lange2009, status: 'seen' },
    caution: 'Standard deviation 0.24 for counting fingers, 0.15 for hand movements.',
  },
  'holladay-1997': {
    logmar: { CF: 2, HM: 3 },
    source: { citation: CITATIONS.holladay1997, status: 'from memory' },
    caution: 'For counting fingers and hand movements at 2 feet.',
  },
  extrapolated: {
    logmar: { CF: 1.85, HM: 2.3, PL: 2.7, NPL: 3 },
    source: {
      citation: `${CITATIONS.schulzeBonsel2006}; light perception extrapolated by later authors`,
      status: 'from memory',
    },
    caution:
      'Perception of light cannot be measured as an acuity; 2.7 and 3.0 are extrapolations. Keep the category and never average it silently.',
  },
};
