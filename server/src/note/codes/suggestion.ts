import type { CodeEntry } from '@sideport/schemas/codes/table.ts';
import type { Fact } from './facts.ts';

/** A rule of coding, with where it was read. */
export interface CodingRule {
  readonly says: string;
  readonly source: string;
  readonly status: 'seen' | 'second-hand' | 'from memory';
}

export interface CodeSuggestion {
  readonly system: string;
  readonly edition: string;
  readonly code: string;
  readonly title: string;
  /** How well the code itself is known. */
  readonly status: CodeEntry['status'];
  /** The suggested code that the user's own map made this one from. */
  readonly mappedFrom?: { readonly system: string; readonly code: string };
  readonly codeSource: string;
  readonly kind: 'diagnosis' | 'procedure';
  /** What the code stands for; the entry of the table, and of a department's own, by this key. */
  readonly key: string;
  /** Place in the sequence of its kind, from 1. */
  readonly order: number;
  /** The recorded facts that led here, as `field: value`. */
  readonly because: readonly { readonly field: string; readonly value: string }[];
  readonly rule: CodingRule;
  /** What in the note would lead to another code. */
  readonly wouldChange: string;
}

/** Something recorded for which no code is suggested, and why. */
export interface NotCoded {
  readonly what: string;
  readonly why: string;
  readonly fields: readonly string[];
}

/** What one of the coder's own codes means beside the suggestions. The coder's choice stands. */
export interface Compared {
  readonly system: string;
  readonly code: string;
  readonly verdict: 'same' | 'other side' | 'both sides' | 'not suggested' | 'left out' | 'licensed words';
  readonly message: string;
}

export interface CodeSuggestions {
  readonly suggestions: readonly CodeSuggestion[];
  readonly notCoded: readonly NotCoded[];
  readonly compared: readonly Compared[];
  /** To be shown beside every list of codes. */
  readonly caution: string;
}

/** A code by its key, before the table and the side are known. */
export interface Draft {
  readonly key: string;
  readonly facts: readonly Fact<unknown>[];
  readonly rule: CodingRule;
  readonly wouldChange: string;
}

export interface Drafts {
  readonly drafts: readonly Draft[];
  readonly notCoded: readonly NotCoded[];
}

export const notCoded = (what: string, why: string, facts: readonly Fact<unknown>[]): NotCoded => ({
  what,
  why,
  fields: [...new Set(facts.flatMap((fact) => fact.from))],
});
