import { recordPlan, planAt, type Field, type RecordKind } from '@sideport/schemas';
import { and, sentence } from './english.ts';

/** The tidy text of a field: its unit written out, its decimals as typed. */
export type Tidy = (field: Field<unknown> | undefined) => string | undefined;

/** Keeps a number and its unit on one line. */
const NO_BREAK = '\u00a0';
const NUMBER_AND_UNIT = /(?<=\d) (?=(?:mm|cm|µm|D|mmHg|mL|mg|µg|%|s|min|\/mm²|clock hours)(?:\W|$))/gu;

export function tidyFor(kind: RecordKind): Tidy {
  const plan = recordPlan(kind);
  return (field) => {
    if (field === undefined) return undefined;
    const found = planAt(plan, field.path);
    const value = found?.kind === 'list' ? found.item : found;
    if (value?.kind !== 'value') return field.text.trim();
    const text = value.notation.write?.(field.text) ?? field.text.trim();
    return value.guide.prose === true ? text : text.replace(NUMBER_AND_UNIT, NO_BREAK);
  };
}

/** Sentences of one section, and what that section should say and the note does not. */
export class Passage {
  readonly #sentences: string[] = [];
  readonly #missing: string[] = [];

  /** Adds a sentence; nothing when there is nothing to say. */
  say(text: string | undefined): void {
    const whole = sentence(text);
    if (whole !== undefined) this.#sentences.push(whole);
  }

  /** Remembers what is not there. A field that says “none” or “not done” counts as there. */
  need(label: string, ...present: readonly unknown[]): void {
    if (present.every((value) => value === undefined || value === 'not recorded')) this.#missing.push(label);
  }

  get paragraphs(): readonly string[] {
    const text = this.#sentences.join(' ');
    const missing = this.#missing.length === 0 ? '' : `Not recorded: ${and(this.#missing)}.`;
    return [text, missing].filter((paragraph) => paragraph !== '');
  }
}
