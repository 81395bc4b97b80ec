import type { Operation } from '@sideport/schemas';
import { fact, type CodingFacts, type Fact } from './facts.ts';

const RUPTURE = 'posterior capsule rupture';

interface Complication extends Fact<string> {
  readonly isLater: boolean;
}

/** The complications that are listed, in their order. */
export function complicationsIn(note: Operation): readonly Complication[] {
  return (note.complications?.items ?? []).flatMap(({ what, when }, at) =>
    what
      ? [{ ...fact<string>(what.value, `complications[${at}].what`), isLater: when?.value === 'after the operation' }]
      : [],
  );
}

export interface ComplicationFacts {
  readonly torn: CodingFacts['posteriorCapsuleTorn'];
  readonly otherTear: CodingFacts['otherTear'];
  readonly during: readonly Fact<string>[];
  readonly later: readonly Fact<string>[];
}

/** Complications during the operation and after it; a tear of the posterior capsule counts when it is listed as one. */
export function complicationFacts(note: Operation): ComplicationFacts {
  const all = complicationsIn(note);
  const plain = (isLater: boolean): readonly Fact<string>[] =>
    all.filter((one) => one.isLater === isLater && one.value !== RUPTURE).map(({ value, from }) => ({ value, from }));
  return { ...tears(note, all), during: plain(false), later: plain(true) };
}

function tears(
  { 'capsule-state': state }: Operation,
  all: readonly Complication[],
): Pick<ComplicationFacts, 'torn' | 'otherTear'> {
  const found = state?.posterior?.value === 'torn' ? ['capsule-state.posterior'] : [];
  const before = state?.before?.items.findIndex((part) => part.value === 'posterior capsule') ?? -1;
  const listed = all.filter(({ value }) => value === RUPTURE);
  const during = listed.filter(({ isLater }) => !isLater).flatMap(({ from }) => from);
  const from = [...found, ...listed.flatMap((one) => one.from)];
  if (from.length === 0) return { torn: undefined, otherTear: undefined };
  if (before >= 0)
    return { torn: undefined, otherTear: fact('before the operation', `capsule-state.before[${before}]`, ...from) };
  if (during.length > 0) {
    const says = [...found.map(() => 'torn'), ...during.map(() => RUPTURE)];
    return { torn: { ...fact(true, ...found, ...during), says }, otherTear: undefined };
  }
  return { torn: undefined, otherTear: fact(listed.length > 0 ? 'after the operation' : 'not documented', ...from) };
}
