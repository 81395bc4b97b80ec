/**
 * How the fields of a note are spoken. A pattern is words as the tokeniser folds them (lower case, British spelling,
 * no apostrophes), with
 *   [the]              may be missing
 *   [,]                a pause, written as a comma or colon, or none
 *   (left|right)       one of
 *   hydro+dissection   two words or one
 *   {number}           something read by a grammar of its own, see SlotName
 *   $was               a group of words from groups.ts
 */
export type Pattern = string;

export type SlotName =
  'number' | 'count' | 'pair' | 'gauge' | 'date' | 'serial' | 'duration' | 'frequency' | 'minutes' | 'clock' | 'place';

/** Something that is spoken about; what follows, or stands before its name, belongs to it. */
export interface SpokenSubject {
  readonly id: string;
  readonly named?: readonly Pattern[];
  /** What a recogniser makes of the name: understood, but never more than a proposal. */
  readonly heard?: readonly Pattern[];
  /** The subject that it is a part of. */
  readonly within?: string;
}

/** A number that the field takes when its subject is spoken about. */
export interface SpokenAmount {
  /** As the note writes it; '' for a bare number; "o'clock" for a clock hour. */
  readonly unit: string;
  /** Units it may also be spoken in, with the factor to `unit`. */
  readonly also?: Readonly<Record<string, number>>;
  /**
   * When a number without its unit is meant: once the field's own name was said, whenever its subject is spoken
   * about, only after "at", or never.
   */
  readonly bare: 'named' | 'subject' | 'after at' | 'never';
  /** Even with its unit, the number is taken only when the field's own name was said. */
  readonly namedOnly?: boolean;
  /** Numbers outside are not meant. */
  readonly possible: readonly [number, number];
  /** Numbers inside are more likely meant than others. */
  readonly usual?: readonly [number, number];
  /** Limits for a number without its unit, where they are closer. */
  readonly bareWithin?: readonly [number, number];
  readonly whole?: boolean;
  /** Written with its sign, a plus where none was spoken. */
  readonly signed?: boolean;
  /** Meant when nothing is spoken about that could take the number: with its unit or a spoken sign, or before "at … degrees". */
  readonly byDefault?: 'signed' | 'before a position';
}

/** A value and how it is said. */
export interface SpokenValue {
  readonly value: string;
  readonly said: readonly Pattern[];
  readonly heard?: readonly Pattern[];
  /** Meant only while a subject of the field is spoken about ("temporal", "in the bag"). */
  readonly bound?: boolean;
  /** What the field is when the phrase is denied ("no iris hooks"); undefined: a denial says nothing that can be noted. */
  readonly denied?: string;
  /** The phrase itself denies the value ("posterior capsule intact" denies a rupture). */
  readonly denies?: boolean;
  /** Where and how the denied value is written, when that is not the field's own path. */
  readonly deniedAs?: readonly [path: string, value: string];
  /** Where and how the value is written, when that is not the field's own path. */
  readonly as?: readonly [path: string, value: string];
  /** Follows from the words without being said: never more than a proposal. */
  readonly implied?: boolean;
  /** Gives way to any other value of the field, and is then kept as these words in the free text. */
  readonly orElse?: string;
  /** Said only when nothing in the context decides between two fields. */
  readonly byDefault?: boolean;
  /** Other fields that the same words give. */
  readonly also?: readonly (readonly [path: string, value: string])[];
  /** Which part of a composed value this is; values of different parts do not contradict each other. */
  readonly part?: string;
}

/** Phrases whose slot is the value. */
export interface SpokenForm {
  readonly said: readonly Pattern[];
  readonly heard?: readonly Pattern[];
  readonly bound?: boolean;
  /** The phrase holds a correction: its first slot is withdrawn by its last. */
  readonly corrected?: boolean;
  /** The text of the value, with `{}` for what the slot holds; default `{}`. */
  readonly write?: string;
  readonly implied?: boolean;
  readonly part?: string;
  readonly also?: readonly (readonly [path: string, value: string])[];
}

/** One field of the note as it is spoken. */
export interface SpokenField {
  /** Keys joined by dots; `incisions[main]` names an entry of a list, see SpokenSection.entries. */
  readonly path: string;
  /** The subjects it is an attribute of. */
  readonly about: readonly string[];
  /** The subject that its values open; default: the first of `about`. */
  readonly opens?: string;
  /** Its own names; what follows is its value. */
  readonly called?: readonly Pattern[];
  readonly calledHeard?: readonly Pattern[];
  /** Names that mean it only while its subject is spoken about, in the same sentence. */
  readonly calledThen?: readonly Pattern[];
  readonly amounts?: readonly SpokenAmount[];
  readonly values?: readonly SpokenValue[];
  readonly forms?: readonly SpokenForm[];
  /** Its names mean it only while its subject is spoken about, in the same sentence: another field has the same names. */
  readonly onlyAbout?: boolean;
  /** Spoken about only while the subject itself is, not a part of it. */
  readonly exactly?: boolean;
  /** Asks for the surgeon's confirmation or a second source, however clearly it was said. */
  readonly critical?: boolean;
  /** Takes several values. */
  readonly several?: boolean;
  /** The value says how many entries of the list there are. */
  readonly counts?: boolean;
  /** The list that takes the value when it is denied; several may be denied in one breath: "no tear, loss or prolapse". */
  readonly deniedIn?: string;
}

/** Everything spoken of one section of the note. */
export interface SpokenSection {
  readonly subjects: readonly SpokenSubject[];
  readonly fields: readonly SpokenField[];
  /** What the entries of lists named in paths consist of, whatever else is said of them. */
  readonly entries?: Readonly<Record<string, Readonly<Record<string, string>>>>;
}
