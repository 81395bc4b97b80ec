import type { CodingFacts, Fact } from '../../server/src/note/codes/facts.ts';

const fact = <const T>(value: T, ...from: string[]): Fact<T> => ({ value, from });

export const phacoemulsification = fact('phacoemulsification' as const, 'procedure');
export const implanted = fact(true, 'lens.placed');
export const none = { cataract: [], complications: [], laterComplications: [], chosen: [] };
const cataract = (...kinds: string[]): readonly Fact<string>[] => kinds.map((kind) => fact(kind, 'diagnosis.cataract'));
const torn = fact(true as const, 'capsule-state.posterior');

export interface Scenario {
  readonly name: string;
  /** The published rule that decides it. */
  readonly rule: string;
  readonly facts: CodingFacts;
  readonly right: { readonly icd10cm: readonly string[]; readonly 'icd10-opcs4': readonly string[] };
  readonly left: { readonly icd10cm: readonly string[]; readonly 'icd10-opcs4': readonly string[] };
}

const usual = { ...none, cataract: cataract('nuclear'), extraction: phacoemulsification, lensImplanted: implanted };

/** Diagnoses then procedures, each in its own sequence. */
export const scenarios: readonly Scenario[] = [
  {
    name: 'phacoemulsification with a lens',
    rule: 'PCS Replacement alone (public table, edition of 2023); OPCS C75.1 before C71.2 (NCCS OPCS-4 2026 p. 31)',
    facts: usual,
    right: { icd10cm: ['H25.11', '08RJ3JZ'], 'icd10-opcs4': ['H25.1', 'C75.1', 'C71.2', 'Z94.2'] },
    left: { icd10cm: ['H25.12', '08RK3JZ'], 'icd10-opcs4': ['H25.1', 'C75.1', 'C71.2', 'Z94.3'] },
  },
  {
    name: 'no lens implanted',
    rule: 'PCS Extraction only when no lens is implanted (public table, edition of 2023)',
    facts: { ...usual, lensImplanted: fact(false, 'lens.placed') },
    right: { icd10cm: ['H25.11', '08DJ3ZZ'], 'icd10-opcs4': ['H25.1', 'C71.2', 'Z94.2'] },
    left: { icd10cm: ['H25.12', '08DK3ZZ'], 'icd10-opcs4': ['H25.1', 'C71.2', 'Z94.3'] },
  },
  {
    name: 'a tension ring',
    rule: 'OPCS C77.6 as a supplement before the side (OPCS-4.11); no PCS code found',
    facts: { ...usual, tensionRing: fact(true, 'ring.used') },
    right: { icd10cm: ['H25.11', '08RJ3JZ'], 'icd10-opcs4': ['H25.1', 'C75.1', 'C71.2', 'C77.6', 'Z94.2'] },
    left: { icd10cm: ['H25.12', '08RK3JZ'], 'icd10-opcs4': ['H25.1', 'C75.1', 'C71.2', 'C77.6', 'Z94.3'] },
  },
  {
    name: 'iris hooks',
    rule: 'OPCS C64.7 as a supplement (OPCS-4.11)',
    facts: { ...usual, irisHooks: fact(true, 'pupil-aid.kind') },
    right: { icd10cm: ['H25.11', '08RJ3JZ'], 'icd10-opcs4': ['H25.1', 'C75.1', 'C71.2', 'C64.7', 'Z94.2'] },
    left: { icd10cm: ['H25.12', '08RK3JZ'], 'icd10-opcs4': ['H25.1', 'C75.1', 'C71.2', 'C64.7', 'Z94.3'] },
  },
  {
    name: 'posterior capsule rupture with anterior vitrectomy',
    rule: 'T81.2 then Y60.0 (NCCS ICD-10 2026 DCS.XIX.7, XX.8); C79.1 (OPCS-4.11); 08B4/08B5 beside the lens (public tables)',
    facts: { ...usual, posteriorCapsuleTorn: torn, vitrectomy: fact('anterior', 'complications[0].done') },
    right: {
      icd10cm: ['H25.11', 'H59.211', '08RJ3JZ', '08B43ZZ'],
      'icd10-opcs4': ['H25.1', 'T81.2', 'Y60.0', 'C75.1', 'C71.2', 'C79.1', 'Z94.2'],
    },
    left: {
      icd10cm: ['H25.12', 'H59.212', '08RK3JZ', '08B53ZZ'],
      'icd10-opcs4': ['H25.1', 'T81.2', 'Y60.0', 'C75.1', 'C71.2', 'C79.1', 'Z94.3'],
    },
  },
  {
    name: 'vitrectomy whose approach is not stated',
    rule: 'OPCS C79.2 also takes an unspecified approach (OPCS-4.11)',
    facts: { ...usual, vitrectomy: fact('approach not stated', 'complications[0].done') },
    right: { icd10cm: ['H25.11', '08RJ3JZ', '08B43ZZ'], 'icd10-opcs4': ['H25.1', 'C75.1', 'C71.2', 'C79.2', 'Z94.2'] },
    left: { icd10cm: ['H25.12', '08RK3JZ', '08B53ZZ'], 'icd10-opcs4': ['H25.1', 'C75.1', 'C71.2', 'C79.2', 'Z94.3'] },
  },
  {
    name: 'hooks, ring and pars plana vitrectomy together',
    rule: 'The side once, after all procedures on the site (NCCS OPCS-4 2026 PCSZ2 p. 204)',
    facts: {
      ...usual,
      irisHooks: fact(true, 'pupil-aid.kind'),
      tensionRing: fact(true, 'ring.used'),
      vitrectomy: fact('pars plana', 'vitrectomy.approach'),
    },
    right: {
      icd10cm: ['H25.11', '08RJ3JZ', '08B43ZZ'],
      'icd10-opcs4': ['H25.1', 'C75.1', 'C71.2', 'C64.7', 'C77.6', 'C79.2', 'Z94.2'],
    },
    left: {
      icd10cm: ['H25.12', '08RK3JZ', '08B53ZZ'],
      'icd10-opcs4': ['H25.1', 'C75.1', 'C71.2', 'C64.7', 'C77.6', 'C79.2', 'Z94.3'],
    },
  },
  {
    name: 'a white cataract of no stated form',
    rule: 'H26.9 for a mature cataract (NCCS ICD-10 2026 DCS.VII.1)',
    facts: { ...usual, cataract: cataract('white') },
    right: { icd10cm: ['H26.9', '08RJ3JZ'], 'icd10-opcs4': ['H26.9', 'C75.1', 'C71.2', 'Z94.2'] },
    left: { icd10cm: ['H26.9', '08RK3JZ'], 'icd10-opcs4': ['H26.9', 'C75.1', 'C71.2', 'Z94.3'] },
  },
  {
    name: 'a brunescent cataract is a nuclear one',
    rule: 'Inclusion term of H25.1 in ICD-10 (from memory)',
    facts: { ...usual, cataract: cataract('brunescent', 'nuclear') },
    right: { icd10cm: ['H25.11', '08RJ3JZ'], 'icd10-opcs4': ['H25.1', 'C75.1', 'C71.2', 'Z94.2'] },
    left: { icd10cm: ['H25.12', '08RK3JZ'], 'icd10-opcs4': ['H25.1', 'C75.1', 'C71.2', 'Z94.3'] },
  },
  {
    name: 'two forms',
    rule: 'Combined forms, H25.8 and H25.81- (from memory)',
    facts: { ...usual, cataract: cataract('nuclear', 'posterior subcapsular') },
    right: { icd10cm: ['H25.811', '08RJ3JZ'], 'icd10-opcs4': ['H25.8', 'C75.1', 'C71.2', 'Z94.2'] },
    left: { icd10cm: ['H25.812', '08RK3JZ'], 'icd10-opcs4': ['H25.8', 'C75.1', 'C71.2', 'Z94.3'] },
  },
  {
    name: 'a stated cause comes before the form',
    rule: 'Traumatic cataract, H26.1 and H26.10- (from memory)',
    facts: { ...usual, cataract: cataract('nuclear', 'traumatic') },
    right: { icd10cm: ['H26.101', '08RJ3JZ'], 'icd10-opcs4': ['H26.1', 'C75.1', 'C71.2', 'Z94.2'] },
    left: { icd10cm: ['H26.102', '08RK3JZ'], 'icd10-opcs4': ['H26.1', 'C75.1', 'C71.2', 'Z94.3'] },
  },
  {
    name: 'exchange of a lens',
    rule: 'PCS Removal beside the Replacement (definitions, from memory); OPCS C75 (from memory)',
    facts: { ...none, earlierLens: fact('exchanged', 'procedure'), lensImplanted: implanted },
    right: { icd10cm: ['08RJ3JZ', '08PJ3JZ'], 'icd10-opcs4': ['C75.1', 'C75.3', 'Z94.2'] },
    left: { icd10cm: ['08RK3JZ', '08PK3JZ'], 'icd10-opcs4': ['C75.1', 'C75.3', 'Z94.3'] },
  },
  {
    name: 'a second lens in an eye without one, sutured to the sclera',
    rule: 'PCS Replacement where the part was taken out before; OPCS C75.4 suture fixation (from memory)',
    facts: {
      ...none,
      cataract: cataract('aphakia'),
      lensImplanted: implanted,
      scleralFixation: fact('sutured', 'lens.placed'),
    },
    right: { icd10cm: ['H27.01', '08RJ3JZ'], 'icd10-opcs4': ['H27.0', 'C75.4', 'Z94.2'] },
    left: { icd10cm: ['H27.02', '08RK3JZ'], 'icd10-opcs4': ['H27.0', 'C75.4', 'Z94.3'] },
  },
  {
    name: 'a lens fixed to the sclera, sutured or not',
    rule: 'OPCS C75.4 says “using suture fixation” (from memory): not suggested where no suture is recorded',
    facts: {
      ...none,
      earlierLens: fact('exchanged', 'procedure'),
      lensImplanted: implanted,
      scleralFixation: fact('sutures not stated', 'lens.placed'),
    },
    right: { icd10cm: ['08RJ3JZ', '08PJ3JZ'], 'icd10-opcs4': ['C75.3', 'Z94.2'] },
    left: { icd10cm: ['08RK3JZ', '08PK3JZ'], 'icd10-opcs4': ['C75.3', 'Z94.3'] },
  },
  {
    name: 'repositioning of a lens',
    rule: 'PCS Revision, OPCS C75.2 (from memory)',
    facts: { ...none, earlierLens: fact('repositioned', 'procedure') },
    right: { icd10cm: ['08WJ3JZ'], 'icd10-opcs4': ['C75.2', 'Z94.2'] },
    left: { icd10cm: ['08WK3JZ'], 'icd10-opcs4': ['C75.2', 'Z94.3'] },
  },
  {
    name: 'a fragment lost into the vitreous',
    rule: 'H59.02- (from memory)',
    facts: { ...usual, complications: [fact('lens fragment into vitreous', 'complications[0].what')] },
    right: { icd10cm: ['H25.11', 'H59.021', '08RJ3JZ'], 'icd10-opcs4': ['H25.1', 'C75.1', 'C71.2', 'Z94.2'] },
    left: { icd10cm: ['H25.12', 'H59.022', '08RK3JZ'], 'icd10-opcs4': ['H25.1', 'C75.1', 'C71.2', 'Z94.3'] },
  },
  {
    name: 'extracapsular extraction with a lens',
    rule: 'C75.1 first (NCCS OPCS-4 2026 p. 31); C71.9 (from memory)',
    facts: { ...usual, extraction: fact('extracapsular', 'procedure') },
    right: { icd10cm: ['H25.11', '08RJ3JZ'], 'icd10-opcs4': ['H25.1', 'C75.1', 'C71.9', 'Z94.2'] },
    left: { icd10cm: ['H25.12', '08RK3JZ'], 'icd10-opcs4': ['H25.1', 'C75.1', 'C71.9', 'Z94.3'] },
  },
];
