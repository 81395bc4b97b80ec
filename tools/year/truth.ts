/** What is true of the invented department and is to be found again by the audit. Nobody and nothing here is real. */

export interface Surgeon {
  readonly ref: string;
  readonly grade: 'consultant' | 'fellow';
  readonly site: 'temporal' | 'superior';
  readonly widthMm: number;
  /** True mean flattening along the incision, D. */
  readonly flatteningD: number;
  readonly torqueD: number;
  /** Odds of a rupture against the risk model of 2009. */
  readonly ruptureOdds: number;
}

export const SURGEONS: readonly [Surgeon, ...Surgeon[]] = [
  {
    ref: 'S-01',
    grade: 'consultant',
    site: 'temporal',
    widthMm: 2.2,
    flatteningD: 0.15,
    torqueD: 0.02,
    ruptureOdds: 0.5,
  },
  {
    ref: 'S-02',
    grade: 'consultant',
    site: 'temporal',
    widthMm: 2.4,
    flatteningD: 0.25,
    torqueD: -0.03,
    ruptureOdds: 0.5,
  },
  // Seeded: ruptures several times as often as the others, and a wide superior incision with a strong effect.
  { ref: 'S-03', grade: 'fellow', site: 'superior', widthMm: 2.8, flatteningD: 0.65, torqueD: 0.05, ruptureOdds: 2.5 },
];

/** The constant in the department's lens list, and the one that the invented eyes really follow. */
export const LIST_A = 118.4;
export const TRUE_A = 118.55;

/** Seeded: from July to September surgeon S-02 used lenses whose constant was typed wrongly into the biometer. */
export const SHIFT = { surgeon: 'S-02', from: '07', to: '09', byD: 0.45 } as const;
/** Seeded: in the last quarter few of S-01's patients were seen again. */
export const LOST = { surgeon: 'S-01', from: '10', to: '12', followed: 0.45 } as const;

export const FOLLOWED = 0.85;
/** Share of notes in which a field was forgotten. */
export const FORGOTTEN = 0.02;
/** Eyes (in a thousand) that end far from their prediction. */
export const SURPRISES = 0.002;
export const SURPRISE_D = 2.75;
export const ERROR_SD_D = 0.38;
export const YEAR = 2024;
