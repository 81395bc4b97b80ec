/**
 * How the fields of a note are spoken. Patterns are words as folded by the tokeniser (lower case, British
 * spelling, no apostrophes), with
 *   [the]          may be missing
 *   (left|right)   one of
 *   hydro+dissection   one word or two
 *   {number}       something read by a grammar of its own, see SlotName
 *   $was           a group of words from groups.ts
 */
export type Pattern = string;

export type SlotName =
  'number' | 'count' | 'pair' | 'gauge' | 'date' | 'serial' | 'duration' | 'frequency' | 'clock' | 'place' | 'time';

/** Something that is spoken about; what follows, or stands before its name, belongs to it. */
export interface SpokenSubject {
  readonly id: string;
  readonly named: readonly Pattern[];
  /** What a recogniser makes of the name: understood, but never more than a proposal. */
  readonly heard?: readonly Pattern[];
}

/** A number that the field takes when its subject is being spoken about. */
export interface SpokenAmount {
  /** As the note writes it; '' for a number of things. */
  readonly unit: string;
  /** Units it may also be spoken in, with the factor to `unit`. */
  readonly also?: Readonly<Record<string, number>>;
  /** When a number without a unit may be meant: once the field's own name was said, whenever its subject is spoken about, after "at", or never. */
  readonly bare: 'named' | 'subject' | 'after at' | 'never';
  /** A number with the unit is taken only when the field's own name was said. */
  readonly namedOnly?: boolean;
  /** Numbers outside are not meant. */
  readonly possible: readonly [number, number];
  /** Numbers inside are more likely meant than others. */
  readonly usual?: readonly [number, number];
  readonly whole?: boolean;
  /** How the number is written in the note; default: the number, a blank, the unit. */
  readonly write?: 'clock' | 'signed' | 'plain';
}

/** A value and how it is said. */
export interface SpokenValue {
  readonly value: string;
  readonly said: readonly Pattern[];
  readonly heard?: readonly Pattern[];
  /** Meant only while a subject of the field is spoken about ("temporal", "in the bag"). */
  readonly bound?: boolean;
  /** The field's value when the phrase is denied ("no iris hooks"); undefined: a denial says nothing that can be noted. */
  readonly denied?: string;
  /** Follows from the words without being said: never more than a proposal. */
  readonly implied?: boolean;
}

/** Phrases whose slot is the value. */
export interface SpokenForm {
  readonly said: readonly Pattern[];
  readonly heard?: readonly Pattern[];
  /** Meant only while a subject of the field is spoken about. */
  readonly bound?: boolean;
  /** The text of the value, with `{}` for what the slot holds; default `{}`. */
  readonly write?: string;
}

/** One field of the note as it is spoken. */
export interface SpokenField {
  /** Where it stands in a note: keys joined by dots; `incisions[main]` selects an entry of a list, `[]` adds one. */
  readonly path: string;
  /** The subjects it is an attribute of; the first is opened by a value that stands on its own. */
  readonly about: readonly string[];
  /** Its own names; what follows is its value. */
  readonly called?: readonly Pattern[];
  readonly calledHeard?: readonly Pattern[];
  readonly amount?: SpokenAmount;
  readonly values?: readonly SpokenValue[];
  readonly forms?: readonly SpokenForm[];
  /** Never taken as it stands: asks for the surgeon's confirmation or a second source. */
  readonly critical?: boolean;
  /** Takes several values. */
  readonly several?: boolean;
  /** A fact that is denied as one of a list ("no tear, loss or prolapse"). */
  readonly listDenied?: boolean;
  /** Another field that is so when this one has a value: path and value. */
  readonly implies?: readonly (readonly [path: string, value: string])[];
}

/** Everything spoken of one section of the note. */
export interface SpokenSection {
  readonly subjects: readonly SpokenSubject[];
  readonly fields: readonly SpokenField[];
}
