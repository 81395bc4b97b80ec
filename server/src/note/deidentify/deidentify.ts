import type { Field } from '@sideport/schemas';
import { planAt, type GroupPlan, type Plan, type ValuePlan } from '@sideport/schemas';
import { isField, isGroup, isList, type Group } from '../export/members.ts';
import { maskIdentifiers } from '../reports/mask-identifiers.ts';
import { dateLeaving, shiftFrom, type DateChoice, type DateRule } from './dates.ts';
import { isOnlyDrugs } from './drug-words.ts';
import type { RemovalCount } from './removal.ts';
import { treatmentOf, type Treatment } from './treatments.ts';

export interface Deidentification {
  readonly dates: DateChoice;
  /** Free text is withheld unless this is asked for; it may name people. */
  readonly keepText: boolean;
  /** HMAC-SHA-256 of a text under a key that is kept apart from the notes, in hexadecimal. */
  readonly keyedHash: (text: string) => string;
}

/** What the dates of a record are counted from and moved by. */
export interface Anchor {
  readonly patient: string | undefined;
  /** Date of the operation, year-month-day. */
  readonly operationDate: string | undefined;
}

/** Hexadecimal digits of a pseudonym: 80 bits. */
const PSEUDONYM_DIGITS = 20;
const PREFIX = { note: 'N-', patient: 'P-', staff: 'S-' } as const;
const ADDRESS = /https?:|www\.|\b\d{1,3}(?:\.\d{1,3}){3}\b/iu;

/** A pseudonym that only the holder of the key can make again, different for notes, patients and staff. */
export function pseudonym(kind: keyof typeof PREFIX, text: string, keyedHash: Deidentification['keyedHash']): string {
  return PREFIX[kind] + keyedHash(`${kind}\n${text}`).slice(0, PSEUDONYM_DIGITS);
}

/**
 * A record with its identifiers taken out: what the treatments keep, and nothing else. The result is a record of the
 * same form, so that every export of it is free of them too.
 * Source: 45 CFR 164.514(b)(2)(i); with dates moved or counted it is stricter than a limited data set, not Safe Harbor.
 */
export function deidentifyRecord<N extends Group>(
  note: N,
  plan: GroupPlan,
  options: Deidentification,
  anchor: Anchor,
  count: RemovalCount,
): N {
  const rule: DateRule = {
    choice: options.dates,
    shift: options.dates === 'shifted' ? shiftFrom(options.keyedHash(`shift\n${anchor.patient ?? ''}`)) : 0,
    operationDate: anchor.operationDate,
  };
  const visit = new Visit(plan, options, rule, count);
  // The walk keeps every member of a record in its form or leaves it out, and every member may be missing.
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion
  return visit.group(note, plan, []) as unknown as N;
}

class Visit {
  readonly #root: GroupPlan;
  readonly #options: Deidentification;
  readonly #rule: DateRule;
  readonly #count: RemovalCount;

  constructor(root: GroupPlan, options: Deidentification, rule: DateRule, count: RemovalCount) {
    this.#root = root;
    this.#options = options;
    this.#rule = rule;
    this.#count = count;
  }

  group(members: Group, plan: GroupPlan, path: readonly string[]): Group {
    const kept: Record<string, unknown> = {};
    const isLocal = path.join('.') === 'codes' && isOfLocalSystem(members);
    for (const [key, field] of plan.fields) {
      if (isLocal && key === 'code' && members[key] !== undefined) {
        this.#dropped([...path, key].join('.'));
        continue;
      }
      const result = this.#any(members[key], field, [...path, key]);
      if (result !== undefined) kept[key] = result;
    }
    return { ...kept, $: members.$ };
  }

  #any(member: unknown, plan: Plan, path: readonly string[]): unknown {
    if (plan.kind === 'group') return isGroup(member) ? this.group(member, plan, path) : undefined;
    if (plan.kind === 'value') return isField(member) ? this.#value(member, plan, path) : undefined;
    if (!isList(member)) return undefined;
    const items = member.items.map((item) => this.#any(item, plan.item, path)).filter((item) => item !== undefined);
    // An empty list says that there is none; one whose entries were all withheld says nothing.
    return items.length === 0 && member.items.length > 0 ? undefined : { ...member, items };
  }

  #value(field: Field<unknown>, plan: ValuePlan, path: readonly string[]): Field<unknown> | undefined {
    const name = path.join('.');
    const treatment = treatmentOf(name, plan) ?? 'drop';
    if (treatment === 'keep') return this.#kept(field, plan, name);
    if (treatment === 'date') return this.#date(field, name);
    if (treatment === 'drug names') return isOnlyDrugs(field.text) ? field : this.#text(field, name);
    if (treatment === 'text') return this.#text(field, name);
    if (treatment === 'drop') return this.#dropped(name);
    this.#count.add(name, 'pseudonym');
    return withText(field, pseudonym(kindOf(treatment), field.text, this.#options.keyedHash));
  }

  #kept(field: Field<unknown>, { notation }: ValuePlan, name: string): Field<unknown> | undefined {
    if (notation.name !== 'identifier') {
      // What was typed for a word may be any of its spellings; only the word itself leaves.
      return typeof field.value === 'string' ? withText(field, field.value) : field;
    }
    if (name === 'changes.field' && planAt(this.#root, field.text.split(/[.[\]]+/u)) === undefined)
      return this.#dropped(name);
    return namesSomeone(field.text) ? this.#dropped(name) : field;
  }

  #date(field: Field<unknown>, name: string): Field<unknown> | undefined {
    if (
      typeof field.value === 'object' &&
      field.value !== null &&
      'kind' in field.value &&
      field.value.kind === 'after'
    )
      return field;
    const date = typeof field.value === 'string' ? field.value : dateOfDue(field.value);
    const leaving = date === undefined ? undefined : dateLeaving(date, this.#rule);
    if (leaving === undefined) return this.#dropped(name);
    this.#count.add(name, 'date changed');
    if (typeof field.value === 'string') return withText(field, leaving);
    return { ...field, text: leaving, value: { kind: 'date', date: leaving } };
  }

  #text(field: Field<unknown>, name: string): Field<unknown> | undefined {
    this.#count.add(name, this.#options.keepText ? 'text kept' : 'text withheld');
    return this.#options.keepText ? field : undefined;
  }

  #dropped(name: string): undefined {
    this.#count.add(name, 'dropped');
    return undefined;
  }
}

const withText = (field: Field<unknown>, text: string): Field<unknown> => ({ ...field, value: text, text });

function kindOf(treatment: Exclude<Treatment, 'keep' | 'drop' | 'date' | 'text' | 'drug names'>): keyof typeof PREFIX {
  if (treatment === 'pseudonym of note') return 'note';
  return treatment === 'pseudonym of patient' ? 'patient' : 'staff';
}

function dateOfDue(value: unknown): string | undefined {
  return typeof value === 'object' && value !== null && 'date' in value ? String(value.date) : undefined;
}

/** Whether a section holds a code of the department's own, or of no system: it may be a number of the patient. */
function isOfLocalSystem(members: Group): boolean {
  return !isField(members.system) || members.system.value === 'local';
}

/** Whether a short text that should be a model or a code holds what could name a person or a machine. */
function namesSomeone(text: string): boolean {
  return maskIdentifiers(text) !== text || ADDRESS.test(text);
}
