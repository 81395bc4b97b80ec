import { formulaSlugs, formulaTitles, type ComputedName, type FormulaSlug } from '@sideport/schemas';
import { repeatPrompts } from '../../calculations/lens-power/repeat-prompts.ts';
import { formulaSpread } from '../../calculations/lens-power/spread.ts';
import { predictionDifference } from '../../calculations/refraction/prediction-error.ts';
import { corneaOf } from '../corneas.ts';
import type { Definition } from '../definition.ts';
import type { LensEntry } from '../department-entries.ts';
import { preferredFormulas, slugOf } from '../formulas.ts';
import { amountOf, from, withCautions, type Known } from '../known.ts';
import { placementCautions, predict, type Prediction } from '../lens-prediction.ts';
import { adjustedLength, adjustmentOf } from '../length-adjustment.ts';
import type { OperationFacts } from '../operation-facts.ts';
import { result, spotOf, type Result, type Spot } from '../result.ts';

/** Cautions that hold for every formula in this eye. */
function eyeCautions({ note }: OperationFacts): string[] {
  const method = note.preop?.biometry?.method?.value;
  return method !== undefined && method !== 'optical'
    ? ['Measured by ultrasound: constants made for optical biometry do not apply.']
    : [];
}

/** What the values of one formula share: whether they stand behind the line, and the adjusted length if there is one. */
interface FormulaCase {
  readonly slug: FormulaSlug;
  readonly inline: boolean;
  readonly adjusted: Known<number> | undefined;
}

function casesOf(facts: OperationFacts): readonly FormulaCase[] {
  const preferred = preferredFormulas(facts);
  const adjustment = adjustmentOf(facts);
  return formulaSlugs.map((slug) => {
    const length = adjustment === undefined ? undefined : adjustedLength(adjustment, slug, facts);
    return { slug, inline: preferred.includes(slug), adjusted: length?.ok === true ? length : undefined };
  });
}

/** Lens power for the target by every formula, and what the formulas differ by. */
export const lensPowers: Definition<OperationFacts> = {
  names: [
    ...formulaSlugs.flatMap((slug) => [`lens-power-${slug}`, `lens-power-${slug}-adjusted`] as const),
    'formula-spread',
  ],
  beside: ['plan'],
  compute: (facts) => {
    const { note, plannedLens, target, spot } = facts;
    if (note.plan === undefined) return [];
    const at = spot(note.plan.target, note.plan.$);
    const cautions = eyeCautions(facts);
    const power = (name: ComputedName, slug: FormulaSlug, inline: boolean, length?: Known<number>): Result => {
      const said: Prediction = target.ok
        ? predict(facts, plannedLens, slug, { kind: 'power', targetD: target.value }, length)
        : { inputs: {}, outcome: target };
      const inputs = { target, ...said.inputs };
      return { name, at, inputs, outcome: withCautions(said.outcome, cautions), inline };
    };
    const cases = casesOf(facts);
    const plain = cases.map(({ slug, inline }) => power(`lens-power-${slug}`, slug, inline));
    return [
      ...plain,
      ...cases.flatMap(({ slug, inline, adjusted }) =>
        adjusted === undefined ? [] : [power(`lens-power-${slug}-adjusted`, slug, inline, adjusted)],
      ),
      ...spreadOf(plain, at),
    ];
  },
};

function spreadOf(powers: readonly Result[], at: Spot): readonly Result[] {
  const known = formulaSlugs.flatMap((slug) => {
    const outcome = powers.find(({ name }) => name === `lens-power-${slug}`)?.outcome;
    return outcome?.ok === true && typeof outcome.value === 'number'
      ? [{ formula: formulaTitles[slug], powerD: outcome.value }]
      : [];
  });
  if (known.length < 2) return [];
  const inputs = Object.fromEntries(
    known.map(({ formula, powerD }) => [formula, { ok: true, value: powerD, unit: 'D' } as const]),
  );
  return [{ name: 'formula-spread', at, inputs, outcome: formulaSpread({ powers: known }) }];
}

/** What every formula predicts for one lens and power. */
function predictions(facts: OperationFacts, lens: LensEntry, power: Known<number>, at: Spot): Result[] {
  const cautions = eyeCautions(facts);
  const predicted = (name: ComputedName, slug: FormulaSlug, inline: boolean, length?: Known<number>): Result => {
    const said: Prediction = power.ok
      ? predict(facts, lens, slug, { kind: 'refraction', powerD: power.value }, length)
      : { inputs: {}, outcome: power };
    const inputs = { power, ...said.inputs };
    return { name, at, inputs, outcome: withCautions(said.outcome, cautions), inline };
  };
  return casesOf(facts).flatMap(({ slug, inline, adjusted }) => [
    predicted(`predicted-refraction-${slug}`, slug, inline),
    ...(adjusted === undefined ? [] : [predicted(`predicted-refraction-${slug}-adjusted`, slug, inline, adjusted)]),
  ]);
}

/** Whether the lens that went in is the one planned, so that what was predicted for one holds for the other. */
function isAsPlanned({ note, plannedLens, implantedLens }: OperationFacts): boolean {
  const planned = note.plan?.lens?.power?.value.amount;
  return (
    planned !== undefined &&
    planned === note.lens?.power?.value.amount &&
    plannedLens.ok &&
    implantedLens.ok &&
    plannedLens.entry === implantedLens.entry
  );
}

/** The refraction that every formula predicts for the planned and for the implanted lens. */
export const predictedRefractions: Definition<OperationFacts> = {
  names: formulaSlugs.flatMap(
    (slug) => [`predicted-refraction-${slug}`, `predicted-refraction-${slug}-adjusted`] as const,
  ),
  beside: ['plan', 'lens'],
  compute: (facts) => {
    const { note, plannedLens, implantedLens, aphakic } = facts;
    const planned = note.plan?.lens?.power;
    const implanted = note.lens?.power;
    const ofPlanned =
      planned === undefined
        ? []
        : predictions(facts, plannedLens, amountOf(planned, 'the planned power'), spotOf(planned));
    if (implanted === undefined || aphakic) return ofPlanned;
    const at = spotOf(implanted);
    const cautions = placementCautions(note.lens?.placed?.value);
    const ofImplanted = isAsPlanned(facts)
      ? ofPlanned
      : predictions(facts, implantedLens, amountOf(implanted, 'the implanted power'), at);
    return [...ofPlanned, ...ofImplanted.map((one) => ({ ...one, at, outcome: withCautions(one.outcome, cautions) }))];
  },
};

/** The print-out's prediction beside the one computed by the same formula. */
export const printOutComparison: Definition<OperationFacts> = {
  names: ['prediction-difference'],
  beside: ['plan'],
  compute: (facts) => {
    const plan = facts.note.plan;
    const slug = slugOf(plan?.['predicted-by']?.value);
    if (plan?.predicted === undefined || slug === undefined) return [];
    const recorded = amountOf(plan.predicted, 'the recorded prediction');
    const power = amountOf(plan.lens?.power, 'the power of the planned lens');
    const adjustment = plan['length-adjustment'] === undefined ? undefined : adjustmentOf(facts);
    const computed = from({ power }, (given) => {
      const length = adjustment === undefined ? facts.axialLength : adjustedLength(adjustment, slug, facts);
      return predict(facts, facts.plannedLens, slug, { kind: 'refraction', powerD: given.power }, length).outcome;
    });
    return [
      result('prediction-difference', spotOf(plan.predicted), { recorded, computed }, (given) =>
        predictionDifference({ recordedD: given.recorded, computedD: given.computed }),
      ),
    ];
  },
};

/** The adjusted axial length of each formula, where an adjustment is named and applies. */
export const adjustedLengths: Definition<OperationFacts> = {
  names: ['adjusted-axial-length'],
  compute: (facts) => {
    const { note, axialLength, lensThickness, spot } = facts;
    const adjustment = adjustmentOf(facts);
    if (adjustment === undefined) return [];
    const at = spot(note.preop?.biometry?.['axial-length'], note.plan?.['length-adjustment'], note.preop?.$);
    const inputs = {
      'axial-length': axialLength,
      ...(adjustment === 'Cooke-modified' ? { 'lens-thickness': lensThickness } : {}),
      adjustment: { ok: true, value: adjustment, unit: '' } as const,
    };
    const wanted = adjustment === 'Cooke-modified' ? (['srk-t'] as const) : formulaSlugs;
    const outcomes = wanted.map((formula) => ({ formula, outcome: adjustedLength(adjustment, formula, facts) }));
    const found = outcomes.filter(({ outcome }) => outcome.ok);
    const shown = found.length > 0 ? found : outcomes.slice(0, 1);
    return shown.map(({ formula, outcome }) => ({
      name: 'adjusted-axial-length',
      at,
      inputs: adjustment === 'Cooke-modified' ? inputs : { ...inputs, formula: { ok: true, value: formula, unit: '' } },
      outcome,
    }));
  },
};

/** Reasons to measure again, from this eye and the other one. */
export const repeatedBiometry: Definition<OperationFacts> = {
  names: ['biometry-to-repeat'],
  compute: ({ note, axialLength, cornea, department }) => {
    const field = note.preop?.biometry?.['axial-length'];
    if (field === undefined || !cornea.usual.mean.ok) return [];
    const fellow = note.preop?.['fellow-eye'];
    const otherLength = amountOf(fellow?.['axial-length'], 'the axial length of the other eye');
    const otherMean = corneaOf(fellow, department?.['keratometric-index']?.value.amount).usual.mean;
    const inputs = {
      'axial-length': axialLength,
      'mean-keratometry': cornea.usual.mean,
      ...(otherLength.ok ? { 'fellow-axial-length': otherLength } : {}),
      ...(otherMean.ok ? { 'fellow-mean-keratometry': otherMean } : {}),
    };
    return [
      result('biometry-to-repeat', spotOf(field), inputs, (eye) =>
        repeatPrompts({
          axialLengthMm: eye['axial-length'],
          meanKeratometryD: eye['mean-keratometry'],
          ...(otherLength.ok ? { fellowAxialLengthMm: otherLength.value } : {}),
          ...(otherMean.ok ? { fellowMeanKeratometryD: otherMean.value } : {}),
        }),
      ),
    ];
  },
};
