import type { ListPlan, Path, Plan, Span, ValuePlan } from '@sideport/schemas';
import { yamlText } from '../edits/yaml-text.ts';
import type { Around } from './around.ts';
import { offersFor } from './offers.ts';
import type { Proposal } from './proposal.ts';
import { begunBy } from './propose-notations.ts';

/** The value being written. */
export interface ValueLine {
  readonly path: Path;
  /** What stands behind the field so far, up to the cursor. */
  readonly typed: string;
  readonly replace: Span;
  /** Values that a list has already. */
  readonly present?: readonly string[];
  readonly inBrackets?: boolean;
}

/** What could stand as the value of a field: known values first, then terms, then words for “there is none”. */
export function proposeValues(plan: Plan, line: ValueLine, around: Around): readonly Proposal[] {
  if (plan.kind === 'group') return absences(plan, line);
  const value = plan.kind === 'list' ? valueOf(plan) : plan;
  if (value === undefined) return absences(plan, line);
  const likely =
    value.guide.prose === true ? offered(value, line, around).map(onlyWhenEmpty) : known(value, line, around);
  return [...likely, ...absences(plan, line)];
}

/** Stays away as soon as something is typed: what is being typed is not what was offered. */
function onlyWhenEmpty(proposal: Proposal): Proposal {
  return { ...proposal, filter: '…' };
}

function valueOf(plan: ListPlan): ValuePlan | undefined {
  return plan.item.kind === 'value' ? plan.item : undefined;
}

function known(plan: ValuePlan, line: ValueLine, around: Around): readonly Proposal[] {
  const offers = offered(plan, line, around);
  const labels = new Set(offers.map(({ label }) => label));
  const begun = begunBy(plan.notation, line.typed, around).map((each): Proposal => {
    const proposal = { ...each, replace: line.replace, more: false };
    return each.snippet === true ? onlyWhenEmpty(proposal) : proposal;
  });
  const others = [...words(plan, line), ...begun, ...unit(plan, line)];
  return [...offers, ...others.filter(({ label }) => !labels.has(label))];
}

function offered({ notation }: ValuePlan, line: ValueLine, around: Around): readonly Proposal[] {
  const as = notation.name === 'identifier' ? 'identifier' : 'value';
  const { inBrackets = false } = line;
  return offersFor(line.path, around).map(({ text, from, explanation }): Proposal => ({
    label: text,
    kind: 'reference',
    detail: from,
    ...(explanation === undefined ? {} : { explanation }),
    insert: yamlText(text, { as, inBrackets }),
    replace: line.replace,
    more: false,
  }));
}

function words(plan: ValuePlan, line: ValueLine): readonly Proposal[] {
  const present = new Set(line.present);
  return (plan.notation.words ?? [])
    .filter(({ word }) => !present.has(word))
    .map(({ word, synonyms, meaning }) => ({
      label: word,
      kind: 'word',
      ...(meaning === undefined ? {} : { detail: meaning }),
      insert: word,
      replace: line.replace,
      // A synonym that is typed finds its term.
      filter: plan.notation.name === 'yes or no' ? word : [word, ...synonyms].join(' '),
      more: false,
    }));
}

const NUMBER = /^[+-]?\d+(?:\.\d+)?(?=\s)/u;

/** The unit behind a number and a blank: before the blank, the number may still grow. */
function unit(plan: ValuePlan, line: ValueLine): readonly Proposal[] {
  const number = NUMBER.exec(line.typed)?.[0];
  const own = plan.notation.unit;
  if (number === undefined || own === undefined || own === '') return [];
  const text = own === '°' ? `${number}°` : `${number} ${own}`;
  const filter = `${number} ${own}`;
  return [
    {
      label: text,
      kind: 'unit',
      detail: 'unit of this field',
      insert: text,
      filter,
      replace: line.replace,
      more: false,
    },
  ];
}

/** Prose that happens to begin like one of these words is left in peace until it can only be meant. */
function isMeant(word: string, typed: string): boolean {
  return typed === '' || (typed.length >= 3 && word.startsWith(typed.toLowerCase()));
}

function absences(plan: Plan, line: ValueLine): readonly Proposal[] {
  if ((line.present?.length ?? 0) > 0) return [];
  const own = plan.kind === 'value' ? (plan.notation.words ?? []).map(({ word }) => word) : [];
  const says = [...(plan.guide.says ?? []), 'not recorded'] as const;
  return says
    .filter((word) => !own.includes(word) && isMeant(word, line.typed))
    .map((word) => ({
      label: word,
      kind: 'absence',
      detail: word === 'not recorded' ? 'it is not known' : 'there was none',
      insert: word,
      replace: line.replace,
      more: false,
    }));
}
