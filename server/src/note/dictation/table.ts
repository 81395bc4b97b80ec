import { anaesthesiaSpoken } from '@sideport/schemas/spoken/anaesthesia.ts';
import { capsulotomySpoken } from '@sideport/schemas/spoken/capsulotomy.ts';
import { chamberSpoken } from '@sideport/schemas/spoken/chamber.ts';
import { closureSpoken } from '@sideport/schemas/spoken/closure.ts';
import { complicationsSpoken } from '@sideport/schemas/spoken/complications.ts';
import {
  cues,
  denialsAfter,
  denialsBefore,
  doubtsAfter,
  doubtsBefore,
  type Cue,
} from '@sideport/schemas/spoken/cues.ts';
import { diagnosisSpoken } from '@sideport/schemas/spoken/diagnosis.ts';
import { drugsSpoken } from '@sideport/schemas/spoken/drugs.ts';
import { elsewhere, type Elsewhere } from '@sideport/schemas/spoken/elsewhere.ts';
import { head } from '@sideport/schemas/spoken/head.ts';
import { incisionsSpoken } from '@sideport/schemas/spoken/incisions.ts';
import { lensSpoken } from '@sideport/schemas/spoken/lens.ts';
import { lensPlaceSpoken } from '@sideport/schemas/spoken/lens-place.ts';
import { pupilSpoken } from '@sideport/schemas/spoken/pupil.ts';
import { machineSpoken } from '@sideport/schemas/spoken/machine.ts';
import { nucleusSpoken } from '@sideport/schemas/spoken/nucleus.ts';
import type {
  SpokenAmount,
  SpokenField,
  SpokenForm,
  SpokenSection,
  SpokenSubject,
  SpokenValue,
} from '@sideport/schemas/spoken/phrase.ts';
import { opaquePhrases, plainPhrases } from '@sideport/schemas/spoken/plain-words.ts';
import { preopSpoken } from '@sideport/schemas/spoken/preop.ts';
import { ringSpoken } from '@sideport/schemas/spoken/ring.ts';
import { sideHeard, sidePhrases, sideTraps } from '@sideport/schemas/spoken/sides.ts';
import { spokenUnits } from '@sideport/schemas/spoken/units.ts';
import { Phrases } from './phrases.ts';

/** What a phrase means. */
export type Meaning =
  | { readonly kind: 'subject'; readonly subject: SpokenSubject; readonly heard: boolean }
  | { readonly kind: 'called'; readonly field: SpokenField; readonly heard: boolean; readonly onlyAbout: boolean }
  | { readonly kind: 'value'; readonly field: SpokenField; readonly value: SpokenValue; readonly heard: boolean }
  | { readonly kind: 'form'; readonly field: SpokenField; readonly form: SpokenForm; readonly heard: boolean }
  | {
      readonly kind: 'side';
      readonly side: 'right' | 'left' | undefined;
      readonly role: 'asserted' | 'trap' | 'heard' | 'bare';
    }
  | { readonly kind: 'cue'; readonly cue: Cue }
  | { readonly kind: 'denial'; readonly stands: 'before' | 'after' }
  | { readonly kind: 'doubt'; readonly stands: 'before' | 'after' }
  | { readonly kind: 'elsewhere'; readonly elsewhere: Elsewhere }
  | { readonly kind: 'plain' }
  | { readonly kind: 'opaque' };

/** The name of a field. */
export type Called = Extract<Meaning, { kind: 'called' }>;

export interface UnitMeaning {
  readonly unit: string;
  /** The singular before the thing that it measures. */
  readonly adjective: boolean;
  readonly heard: boolean;
}

/** A field that takes a number, with how it takes it. */
export interface AmountOf {
  readonly field: SpokenField;
  readonly amount: SpokenAmount;
}

/** The phrase table, compiled. */
export interface Table {
  readonly sections: readonly SpokenSection[];
  readonly phrases: Phrases<Meaning>;
  readonly units: Phrases<UnitMeaning>;
  readonly amounts: readonly AmountOf[];
  /** The fields that could take a number in a unit; under '' those that could take a bare one. */
  readonly amountsIn: ReadonlyMap<string, readonly AmountOf[]>;
  readonly subjects: ReadonlyMap<string, SpokenSubject>;
  readonly fields: ReadonlyMap<string, SpokenField>;
  readonly entries: Readonly<Record<string, Readonly<Record<string, string>>>>;
}

/** Every section of the table, in the order of an operation. Made when it is first asked for. */
const sections: readonly (() => SpokenSection)[] = [
  head,
  diagnosisSpoken,
  preopSpoken,
  anaesthesiaSpoken,
  incisionsSpoken,
  chamberSpoken,
  pupilSpoken,
  capsulotomySpoken,
  nucleusSpoken,
  machineSpoken,
  complicationsSpoken,
  ringSpoken,
  lensSpoken,
  lensPlaceSpoken,
  drugsSpoken,
  closureSpoken,
];

let compiled: Table | undefined;

/** The table, compiled on first use. */
export function table(): Table {
  compiled ??= compile();
  return compiled;
}

function compile(): Table {
  const phrases = new Phrases<Meaning>();
  const add = (patterns: readonly string[] | undefined, meaning: Meaning): void => {
    for (const pattern of patterns ?? []) phrases.add(pattern, meaning);
  };
  const spokenSections = sections.map((section) => section());
  for (const { subjects, fields } of spokenSections) {
    for (const subject of subjects) {
      add(subject.named, { kind: 'subject', subject, heard: false });
      add(subject.heard, { kind: 'subject', subject, heard: true });
    }
    for (const field of fields) addField(add, field);
  }
  addCommon(add);
  const subjects = new Map(
    spokenSections.flatMap((section) => section.subjects.map((subject) => [subject.id, subject] as const)),
  );
  const fields = spokenSections.flatMap((section) => section.fields);
  const amounts = fields.flatMap((field) => (field.amounts ?? []).map((amount) => ({ field, amount })));
  return {
    sections: spokenSections,
    phrases,
    units: compileUnits(),
    amounts,
    amountsIn: byUnit(amounts),
    subjects,
    fields: new Map(fields.map((field) => [field.path, field])),
    entries: Object.assign({}, ...spokenSections.map((section) => section.entries ?? {})) as Table['entries'],
  };
}

function byUnit(amounts: readonly AmountOf[]): ReadonlyMap<string, readonly AmountOf[]> {
  const out = new Map<string, AmountOf[]>();
  for (const of of amounts) {
    const { unit, also, bare, byDefault } = of.amount;
    const units = new Set([
      unit,
      ...Object.keys(also ?? {}),
      ...(bare !== 'never' || byDefault !== undefined ? [''] : []),
    ]);
    for (const each of units) out.set(each, [...(out.get(each) ?? []), of]);
  }
  return out;
}

type Add = (patterns: readonly string[] | undefined, meaning: Meaning) => void;

function addField(add: Add, field: SpokenField): void {
  const onlyAbout = field.onlyAbout === true;
  add(field.called, { kind: 'called', field, heard: false, onlyAbout });
  add(field.calledHeard, { kind: 'called', field, heard: true, onlyAbout });
  add(field.calledThen, { kind: 'called', field, heard: false, onlyAbout: true });
  for (const value of field.values ?? []) {
    add(value.said, { kind: 'value', field, value, heard: false });
    add(value.heard, { kind: 'value', field, value, heard: true });
  }
  for (const form of field.forms ?? []) {
    add(form.said, { kind: 'form', field, form, heard: false });
    add(form.heard, { kind: 'form', field, form, heard: true });
  }
}

function addCommon(add: Add): void {
  for (const side of ['right', 'left'] as const) {
    add(sidePhrases[side], { kind: 'side', side, role: 'asserted' });
    add([side], { kind: 'side', side, role: 'bare' });
  }
  add(sideTraps, { kind: 'side', side: undefined, role: 'trap' });
  add(sideHeard, { kind: 'side', side: undefined, role: 'heard' });
  for (const cue of cues) add(cue.said, { kind: 'cue', cue });
  add(denialsBefore, { kind: 'denial', stands: 'before' });
  add(denialsAfter, { kind: 'denial', stands: 'after' });
  add(doubtsBefore, { kind: 'doubt', stands: 'before' });
  add(doubtsAfter, { kind: 'doubt', stands: 'after' });
  for (const one of elsewhere) add(one.said, { kind: 'elsewhere', elsewhere: one });
  add(plainPhrases, { kind: 'plain' });
  add(opaquePhrases, { kind: 'opaque' });
}

function compileUnits(): Phrases<UnitMeaning> {
  const units = new Phrases<UnitMeaning>();
  for (const { unit, said, adjective, heard } of spokenUnits) {
    for (const pattern of said) units.add(pattern, { unit, adjective: false, heard: false });
    for (const pattern of adjective ?? []) units.add(pattern, { unit, adjective: true, heard: false });
    for (const pattern of heard ?? []) units.add(pattern, { unit, adjective: false, heard: true });
  }
  return units;
}
