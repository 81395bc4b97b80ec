import type { Operation } from '@sideport/schemas';
import { posteriorCapsuleRupture, type CapsuleFacts } from '../../calculations/eye/posterior-capsule-rupture.ts';
import { riskTerms, ruptureOdds, ruptureRisk } from '../../calculations/eye/rupture-risk.ts';
import { refused } from '../../calculations/outcome.ts';
import type { Definition } from '../definition.ts';
import { from, withCautions, type Known } from '../known.ts';
import { whyNoExtraction } from '../natural-lens.ts';
import { HEAD, type OperationFacts } from '../operation-facts.ts';
import { riskFactorsOf } from '../risk-factors.ts';
import { result } from '../result.ts';
import { ageOf } from './time.ts';

const POSTERIOR: Readonly<Record<string, boolean>> = { intact: false, torn: true, 'opened on purpose': false };
const ZONULE: Readonly<Record<string, boolean>> = { intact: false, weak: false, ruptured: true };
const VITREOUS: Readonly<Record<string, boolean>> = {
  'not prolapsed': false,
  prolapsed: true,
  'absent after vitrectomy': false,
  'silicone oil': false,
};

/** The three facts of the audit definition; null is "not recorded". */
export function capsuleFactsOf({ 'capsule-state': state }: Operation): CapsuleFacts {
  const before = state?.before?.items.map(({ value }) => value) ?? [];
  // What was so before the operation did not happen in it.
  const inOperation = (part: (typeof before)[number], fact: boolean | undefined): boolean | null =>
    before.includes(part) ? false : (fact ?? null);
  return {
    posteriorCapsuleTorn: inOperation('posterior capsule', POSTERIOR[state?.posterior?.value ?? '']),
    zonuleRuptured: inOperation('zonule', ZONULE[state?.zonule?.value ?? '']),
    vitreousProlapsed: inOperation('vitreous', VITREOUS[state?.vitreous?.value ?? '']),
  };
}

const fact = (value: boolean | null): Known<boolean | null> => ({ ok: true, value, unit: '' });

/** The audit definition, from facts; a planned operation has none yet. */
export const capsuleRupture: Definition<OperationFacts> = {
  names: ['posterior-capsule-rupture'],
  beside: ['capsule-state', 'complications', ...HEAD],
  compute: ({ note, spot }) => {
    const state = note['capsule-state'];
    if (note.status?.value === 'planned' && state === undefined) return [];
    const facts = capsuleFactsOf(note);
    const inputs = {
      'posterior-capsule-torn': fact(facts.posteriorCapsuleTorn),
      'zonule-ruptured': fact(facts.zonuleRuptured),
      'vitreous-prolapsed': fact(facts.vitreousProlapsed),
    };
    const at = spot(state?.posterior, state?.$, note.complications?.$);
    const against = whyNoExtraction(note);
    return [
      result('posterior-capsule-rupture', at, inputs, () =>
        against === undefined ? posteriorCapsuleRupture(facts) : refused(against),
      ),
    ];
  },
};

/** What raises the risk of an eye and is no factor of the model. */
function unknownToModel({ diagnosis, comorbidity }: Operation): string[] {
  const polar = diagnosis?.cataract?.items.some(({ value }) => value === 'posterior polar') === true;
  const loose = comorbidity?.items.some(({ value }) => value === 'lens subluxation') === true;
  const unknown = [...(polar ? ['a posterior polar cataract'] : []), ...(loose ? ['a subluxated lens'] : [])];
  return unknown.length === 0
    ? []
    : [`The model does not know ${unknown.join(' or ')}: the risk of this eye is higher.`];
}

/** Risk of rupture by the model of 2009, from the factors that are recorded. */
export const riskOfRupture: Definition<OperationFacts> = {
  names: ['rupture-risk', 'rupture-risk-odds'],
  beside: ['difficulty', 'comorbidity', ...HEAD],
  compute: (facts) => {
    const { note, axialLength, spot } = facts;
    const age = ageOf(facts);
    const at = spot(note.difficulty?.$, note.$.said['difficulty'], note.comorbidity?.$, note.$.said['comorbidity']);
    const against = whyNoExtraction(note);
    const factors =
      against !== undefined
        ? refused(against)
        : from({ age }, (given) => ({
            ok: true as const,
            value: riskFactorsOf(note, given.age, axialLength.ok ? axialLength.value : undefined),
            unit: '',
          }));
    const odds = factors.ok
      ? Object.fromEntries(
          riskTerms(factors.value)
            .filter(({ recorded }) => recorded)
            .map(({ factor, odds: ratio }) => [`odds ratio ${factor}`, { ok: true, value: ratio, unit: '' } as const]),
        )
      : {};
    const inputs = { age, ...odds };
    const composite = from({ factors }, (given) => ruptureOdds(given.factors));
    return [
      {
        name: 'rupture-risk',
        at,
        inputs: { ...inputs, 'composite odds ratio': composite },
        outcome: withCautions(
          from({ factors }, (given) => ruptureRisk(given.factors)),
          unknownToModel(note),
        ),
      },
      { name: 'rupture-risk-odds', at, inputs, outcome: composite },
    ];
  },
};
