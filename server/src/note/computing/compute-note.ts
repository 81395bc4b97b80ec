import { computedValues, type ComputedName, type Path } from '@sideport/schemas';
import type { CheckContext } from '../checks/check.ts';
import { widen } from '../reading/widen.ts';
import { followUpValues, operationValues } from './all-computed.ts';
import type { ComputedData, ComputedNote, ComputedValue, NotComputed } from './computed.ts';
import type { Definition } from './definition.ts';
import type { Source } from '../calculations/outcome.ts';
import { display } from './display.ts';
import { followUpFacts } from './follow-up-facts.ts';
import { operationFacts } from './operation-facts.ts';
import { notesPointingTo } from '../set/note-set.ts';
import type { Result } from './result.ts';

export type { ComputedNote, ComputedValue, NotComputed } from './computed.ts';

const guides = new Map(computedValues.map((guide) => [guide.name, guide]));

/**
 * Computes everything that the recorded fields of a note allow. Never throws.
 *
 * @param beside only the values that stand beside this place are wanted, and not all of the others need be computed
 */
export function computeNote(context: CheckContext, beside?: Path): ComputedNote {
  const { reading, department, operation, today } = context;
  if (reading.kind === 'operation') {
    const facts = operationFacts(reading.note, { department, today, visits: () => visitsOf(context) });
    return answered(near(operationValues, beside), facts, reading.text);
  }
  if (reading.kind === 'follow-up')
    return answered(near(followUpValues, beside), followUpFacts(reading.note, operation, department), reading.text);
  return { values: [], notComputed: [] };
}

function near<F>(definitions: readonly Definition<F>[], place: Path | undefined): readonly Definition<F>[] {
  const section = place?.[0];
  if (typeof section !== 'string') return definitions;
  return definitions.filter(({ beside }) => beside === undefined || beside.includes(section));
}

function visitsOf({ reading, set }: CheckContext): readonly string[] {
  const id = reading.kind === 'operation' ? reading.note.id?.value : undefined;
  if (set === null || id === undefined) return [];
  return notesPointingTo(set, id).flatMap(({ date }) => date ?? []);
}

function answered<F>(definitions: readonly Definition<F>[], facts: F, text: string): ComputedNote {
  const values: ComputedValue[] = [];
  const notComputed: NotComputed[] = [];
  for (const { names, compute } of definitions) {
    for (const result of resultsOf(names, compute, facts)) {
      const { name, at, outcome } = result;
      if (outcome.ok) values.push(valueOf(result, outcome, text));
      else notComputed.push({ name, because: outcome.because, path: at.path });
    }
  }
  return { values, notComputed };
}

/** A definition that fails says so in its own place and takes no other value with it. */
function resultsOf<F>(names: readonly ComputedName[], compute: Definition<F>['compute'], facts: F): readonly Result[] {
  try {
    return compute(facts);
  } catch {
    const because = 'the program failed here; the fault is not in the note, please report it';
    return names.map((name) => ({
      name,
      at: { path: [], span: { start: 0, end: 0 } },
      inputs: {},
      outcome: { ok: false, because },
    }));
  }
}

function valueOf(
  { name, at, inputs, inline }: Result,
  outcome: Extract<Result['outcome'], { ok: true }>,
  text: string,
): ComputedValue {
  const guide = guides.get(name);
  const plain: Record<string, ComputedData> = {};
  const units: Record<string, string> = {};
  for (const key in inputs) {
    const input = inputs[key];
    if (input?.ok !== true) continue;
    plain[key] = input.value;
    if (input.unit !== '') units[key] = input.unit;
  }
  const { value, unit, method, domain, source, cautions } = outcome;
  return {
    name,
    label: guide?.label ?? '',
    value,
    unit,
    inputs: plain,
    inputUnits: units,
    method,
    domain,
    source: cited(source),
    path: at.path,
    span: widen(text, at.span),
    display: display(name, value, unit),
    inline: inline ?? guide?.inline ?? false,
    cautions: withoutRepeats(cautions),
  };
}

const citations = new WeakMap<Source, string>();

/** A source in words, each made once: an export holds it many thousand times. */
function cited(source: Source): string {
  let words = citations.get(source);
  if (words === undefined) {
    words = `${source.citation} (${source.status})`;
    citations.set(source, words);
  }
  return words;
}

/** One caution may come from several inputs; it is said once. */
function withoutRepeats(cautions: readonly string[]): readonly string[] {
  return cautions.length < 2 ? cautions : cautions.filter((caution, index) => cautions.indexOf(caution) === index);
}
