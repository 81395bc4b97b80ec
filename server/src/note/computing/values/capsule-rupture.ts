import type { Operation } from '@sideport/schemas';
import { posteriorCapsuleRupture, type CapsuleFacts } from '../../calculations/eye/posterior-capsule-rupture.ts';
import { riskTerms, ruptureOdds, ruptureRisk } from '../../calculations/eye/rupture-risk.ts';
import type { Definition } from '../definition.ts';
import { from, type Known } from '../known.ts';
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
};

/** The three facts of the audit definition; null is "not recorded". */
export function capsuleFactsOf({ 'capsule-state': state }: Operation): CapsuleFacts {
  return {
    posteriorCapsuleTorn: POSTERIOR[state?.posterior?.value ?? ''] ?? null,
    zonuleRuptured: ZONULE[state?.zonule?.value ?? ''] ?? null,
    vitreousProlapsed: VITREOUS[state?.vitreous?.value ?? ''] ?? null,
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
    return [result('posterior-capsule-rupture', at, inputs, () => posteriorCapsuleRupture(facts))];
  },
};

/** Risk of rupture by the model of 2009, from the factors that are recorded. */
export const riskOfRupture: Definition<OperationFacts> = {
  names: ['rupture-risk', 'rupture-risk-odds'],
  beside: ['difficulty', 'comorbidity', ...HEAD],
  compute: (facts) => {
    const { note, axialLength, spot } = facts;
    const age = ageOf(facts);
    const at = spot(note.difficulty?.$, note.$.said['difficulty'], note.comorbidity?.$, note.$.said['comorbidity']);
    const factors = from({ age }, (given) => ({
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
        outcome: from({ factors }, (given) => ruptureRisk(given.factors)),
      },
      { name: 'rupture-risk-odds', at, inputs, outcome: composite },
    ];
  },
};
