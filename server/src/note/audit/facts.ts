import type { Vector } from '../calculations/quantities.ts';

/**
 * What the audit keeps of one operation: short plain facts, never the note's text. null always means
 * "not recorded", which the audit counts as missing and never as "no".
 */
export interface OperationFacts {
  readonly record: 'operation';
  readonly id: string;
  readonly status: 'planned' | 'draft' | 'final' | null;
  /** ISO calendar date. */
  readonly date: string | null;
  readonly surgeon: string | null;
  readonly patient: string | null;
  readonly eye: 'right' | 'left' | null;
  readonly ageYears: number | null;
  readonly sex: string | null;
  readonly whichEye: 'first' | 'second' | null;
  readonly axialLengthMm: number | null;
  readonly chamberDepthMm: number | null;
  readonly meanKeratometryD: number | null;
  /** An empty list is an explicit "none". */
  readonly comorbidity: readonly string[] | null;
  readonly difficulty: readonly string[] | null;
  readonly complications: readonly string[] | null;
  /** Whether the natural lens was removed; a secondary lens or an exchange has no rupture to count. */
  readonly naturalLens: boolean;
  /** The audit definition, derived from capsule, zonule and vitreous. */
  readonly rupture: boolean | null;
  /** Expected chance of a rupture by the named model, 0 to 1. */
  readonly ruptureRisk: number | null;
  readonly lens: LensFacts | null;
  /** Spherical equivalent (D) that was predicted for the lens implanted. */
  readonly predictedD: number | null;
  readonly predictedBy: string | null;
  readonly incision: IncisionFacts | null;
  readonly corneaBefore: Vector | null;
  readonly acuityBefore: AcuityFacts | null;
  readonly reviews: readonly DueReview[];
  /** Ids of the elements of a complete note that this one has. */
  readonly elements: readonly string[];
}

export interface LensFacts {
  readonly model: string | null;
  readonly powerD: number | null;
  readonly placed: string | null;
}

export interface IncisionFacts {
  /** Sector word, for instance `temporal`. */
  readonly site: string;
  /** Meridian in degrees, 0 < m <= 180. */
  readonly meridian: number;
  readonly widthMm: number | null;
}

/** Acuity as logMAR; counting fingers and hand motion by a named scheme; perception of light has no number. */
export interface AcuityFacts {
  readonly logMar: number | null;
  readonly text: string;
}

export interface DueReview {
  readonly what: string;
  readonly due: string;
}

/** What the audit keeps of one later visit. */
export interface FollowUpFacts {
  readonly record: 'follow-up';
  readonly id: string;
  readonly operation: string | null;
  readonly date: string | null;
  /** Spherical equivalent (D) of the refraction found. */
  readonly refractionD: number | null;
  readonly cornea: Vector | null;
  readonly acuity: AcuityFacts | null;
  /** Complications found at this visit; an empty list is an explicit "none". */
  readonly complications: readonly string[] | null;
}

/** That a note was amended; what the amendment says stays in it. */
export interface AmendmentFacts {
  readonly record: 'amendment';
  readonly id: string;
  readonly amends: string | null;
}

export type AuditFacts = OperationFacts | FollowUpFacts | AmendmentFacts;
