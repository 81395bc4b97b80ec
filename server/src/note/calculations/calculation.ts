import { part, type Field } from './fields.ts';
import { refused, type Answer, type Outcome, type Source } from './outcome.ts';

export interface Example<I, V> {
  readonly input: I;
  readonly gives: V;
  /** How far a number may be from `gives`; 0.0005 when left out. */
  readonly within?: number;
}

/** Everything that can be said of a calculation beside running it; docs/computations.md is made from it. */
export interface About {
  /** Kebab-case, unique. */
  readonly name: string;
  readonly topic: string;
  /** What the value is, with its sign. */
  readonly definition: string;
  readonly inputs: Readonly<Record<string, Field>>;
  readonly unit: string;
  /** Where it applies, beside the ranges of the inputs. */
  readonly domain: string;
  readonly method: string;
  /** The method written out, where it is too long to stand beside a value. */
  readonly inFull?: string;
  readonly source: Source;
  /** What holds for every value of this kind. */
  readonly cautions: readonly string[];
  readonly example: Example<object, unknown>;
}

/** A calculation as a list, a page or a test sees it. */
export interface ListedCalculation {
  readonly about: About;
  readonly runExample: () => Outcome<unknown>;
}

/** A pure function of typed quantities that knows its own definition. It never throws and never answers NaN. */
export interface Calculation<I extends object, V> extends ListedCalculation {
  (input: I): Outcome<V>;
}

export interface Definition<I extends object, V> extends Omit<About, 'inputs' | 'example' | 'cautions'> {
  readonly inputs: Readonly<Record<keyof I & string, Field>>;
  readonly cautions?: readonly string[];
  readonly example: Example<I, V>;
  readonly compute: (input: I) => Answer<V>;
}

function isSound(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  if (value === null || typeof value !== 'object') return true;
  for (const key in value) if (!isSound(value[key as keyof typeof value])) return false;
  return true;
}

/** Joins a definition and its body: every input is held against its range, every answer against being a number. */
export function calculation<I extends object, V>(definition: Definition<I, V>): Calculation<I, V> {
  const { compute, cautions: standing = [], ...rest } = definition;
  const fields = Object.entries<Field>(definition.inputs).map(([key, { fault }]) => ({ key, fault }));
  const { unit, method, domain, source } = definition;
  const run = (input: I): Outcome<V> => {
    if (typeof input !== 'object' || input === null) return refused('no values were given');
    for (const { key, fault } of fields) {
      const found = fault(part(input, key));
      if (found !== undefined) return refused(found);
    }
    const answer = compute(input);
    if (!answer.ok) return answer;
    if (!isSound(answer.value)) return refused('these values together give no number');
    const cautions = answer.cautions.length === 0 ? standing : [...standing, ...answer.cautions];
    return { ok: true, value: answer.value, unit, method, domain, source, cautions };
  };
  const about: About = { ...rest, cautions: standing };
  return Object.assign(run, { about, runExample: () => run(definition.example.input) });
}
