import type { FormulaSlug } from '@sideport/schemas';
import { powerWithMinusConstants } from '../calculations/lens-power/minus-power.ts';
import { refused, type Outcome } from '../calculations/outcome.ts';
import type { LensEntry } from './department-entries.ts';
import { from, withCautions, type Known } from './known.ts';
import { constantOf, haigisConstantsOf, type LensConstants } from './lens-constants.ts';
import { withoutNaturalLens } from './natural-lens.ts';
import type { OperationFacts } from './operation-facts.ts';
import { runFormula, type FormulaTask } from './run-formula.ts';
import { wordsOf } from './words.ts';

export interface Prediction {
  readonly inputs: Readonly<Record<string, Known<number>>>;
  readonly outcome: Outcome<number>;
}

const CONSTANT_NAME: Readonly<Record<FormulaSlug, string>> = {
  'srk-t': 'a-constant',
  t2: 'a-constant',
  'holladay-1': 'surgeon-factor',
  'hoffer-q': 'pacd',
  haigis: 'a0',
};

/** One formula with the constants of one lens, ordinary or for minus powers. */
function withConstants(
  facts: OperationFacts,
  slug: FormulaSlug,
  length: Known<number>,
  model: string,
  constants: LensConstants,
  task: FormulaTask,
  constantForMinus: boolean,
): Prediction {
  const { value: constant, cautions } = constantOf(slug, constants, model);
  const further = slug === 'haigis' ? haigisConstantsOf(constants) : undefined;
  const measured = { 'axial-length': length, 'mean-keratometry': facts.cornea.usual.mean, constant };
  const run = (
    eye: { 'axial-length': number; 'mean-keratometry': number; constant: number },
    chamberDepthMm?: number,
  ) =>
    runFormula(
      slug,
      {
        axialLengthMm: eye['axial-length'],
        meanKeratometryD: eye['mean-keratometry'],
        constant: eye.constant,
        constantForMinus,
        lengthAdjusted: length !== facts.axialLength,
        ...(chamberDepthMm === undefined ? {} : { chamberDepthMm }),
        ...(further === undefined ? {} : { a1: further.a1, a2: further.a2 }),
      },
      task,
    );
  const outcome =
    slug === 'haigis'
      ? from({ ...measured, depth: phakicDepth(facts) }, (eye) => run(eye, eye.depth))
      : from(measured, (eye) => run(eye));
  return {
    inputs: {
      'axial-length': length,
      'mean-keratometry': facts.cornea.usual.mean,
      ...(slug === 'haigis' ? { 'chamber-depth': phakicDepth(facts) } : {}),
      [CONSTANT_NAME[slug]]: constant,
      ...(further === undefined ? {} : { a1: plain(further.a1), a2: plain(further.a2) }),
    },
    outcome: withCautions(outcome, [...cautions, ...(further?.cautions ?? [])]),
  };
}

/** Haigis was fitted to the depth of the chamber in front of the natural lens. */
function phakicDepth({ note, chamberDepth }: OperationFacts): Known<number> {
  const lost = withoutNaturalLens(note);
  return lost === undefined
    ? chamberDepth
    : refused(`Haigis asks for the chamber depth of the eye with its natural lens, and the diagnosis is ${lost.value}`);
}

const plain = (value: number): Known<number> => ({ ok: true, value, unit: '' });

/**
 * What one formula says of one lens in this eye. Constants for minus powers are used for minus powers, where the
 * lens list has them.
 */
export function predict(
  facts: OperationFacts,
  lens: LensEntry,
  slug: FormulaSlug,
  task: FormulaTask,
  length: Known<number> = facts.axialLength,
): Prediction {
  const against = whyNot(facts, lens);
  if (against !== undefined || !lens.ok) return { inputs: {}, outcome: refused(against ?? 'the lens is not known') };
  const { entry, model } = lens;
  if (entry.constants === undefined)
    return { inputs: {}, outcome: refused(`the department's lens list has no constants for ${model}`) };
  const ordinary = withConstants(facts, slug, length, model, entry.constants, task, false);
  const forMinus = entry['minus-constants'];
  if (forMinus === undefined || !isMinus(ordinary.outcome, task)) return ordinary;
  const minus = withConstants(facts, slug, length, model, forMinus, task, true);
  if (!minus.outcome.ok)
    return {
      ...ordinary,
      outcome: withCautions(ordinary.outcome, [
        `Not computed with the constants for minus powers of ${model}: ${minus.outcome.because}.`,
      ]),
    };
  return task.kind === 'power'
    ? { ...minus, outcome: powerWithMinusConstants(ordinary.outcome, minus.outcome) }
    : minus;
}

function isMinus(outcome: Outcome<number>, task: FormulaTask): boolean {
  return task.kind === 'refraction' ? task.powerD < 0 : task.kind === 'power' && outcome.ok && outcome.value < 0;
}

/** Why no formula may be used in this eye. */
function whyNot({ note }: OperationFacts, lens: LensEntry): string | undefined {
  const comorbidity = wordsOf(note.comorbidity, 'comorbidity', note.$);
  if (comorbidity?.includes('previous corneal refractive surgery') === true)
    return 'these formulas do not hold after corneal refractive surgery: its keratometry misleads them';
  return lens.ok ? undefined : lens.because;
}

/** Where the lens position comes from: the plan's first formula, else Holladay 1, else SRK/T. */
export function lensPosition(
  facts: OperationFacts,
  lens: LensEntry,
  preferred: readonly FormulaSlug[],
): Outcome<number> {
  let first: Outcome<number> | undefined;
  for (const slug of [...preferred, 'holladay-1' as const, 'srk-t' as const]) {
    const { outcome } = predict(facts, lens, slug, { kind: 'position' });
    if (outcome.ok) return outcome;
    first ??= outcome;
  }
  return first ?? refused('no formula could place the lens');
}

/** What must be said of a prediction when the lens lies elsewhere than in the bag. */
export function placementCautions(placed: string | undefined): string[] {
  return placed === undefined || placed === 'capsular bag'
    ? []
    : [`The lens lies elsewhere than in the bag (${placed}); a constant for the bag does not describe it.`];
}
