import type { Dose } from '@sideport/schemas';

/** What is usually given of a drug by one route: mg, and mg per mL where the dilution matters. */
interface UsualDose {
  readonly name: string;
  readonly drug: RegExp;
  readonly route: string;
  readonly mg: readonly [number, number];
  readonly mgPerMl?: readonly [number, number];
  readonly source: string;
}

const memory = 'from memory of the literature';

const usualDoses: readonly UsualDose[] = [
  {
    name: 'cefuroxime',
    drug: /cefurox/iu,
    route: 'intracameral',
    mg: [0.9, 1.1],
    mgPerMl: [9, 11],
    source: 'ESCRS study, J Cataract Refract Surg 2007;33:978-88: 1 mg in 0.1 mL',
  },
  {
    name: 'moxifloxacin',
    drug: /moxiflox/iu,
    route: 'intracameral',
    mg: [0.1, 0.75],
    mgPerMl: [0.5, 5],
    source: memory,
  },
  { name: 'vancomycin', drug: /vancomyc/iu, route: 'intracameral', mg: [0.8, 1.2], mgPerMl: [8, 12], source: memory },
  { name: 'cefazolin', drug: /cefazol/iu, route: 'intracameral', mg: [1, 2.5], source: memory },
  { name: 'acetylcholine', drug: /acetylcholin/iu, route: 'intracameral', mg: [5, 20], source: memory },
  { name: 'carbachol', drug: /carbachol/iu, route: 'intracameral', mg: [0.02, 0.1], source: memory },
  { name: 'lidocaine', drug: /li[dg]n?ocaine/iu, route: 'intracameral', mg: [1, 10], source: memory },
  { name: 'triamcinolone', drug: /triamcinol/iu, route: 'intracameral', mg: [0.5, 4], source: memory },
  { name: 'triamcinolone', drug: /triamcinol/iu, route: 'intravitreal', mg: [1, 4], source: memory },
  { name: 'dexamethasone', drug: /dexameth/iu, route: 'intracameral', mg: [0.1, 0.5], source: memory },
  { name: 'dexamethasone', drug: /dexameth/iu, route: 'subconjunctival', mg: [1, 4], source: memory },
  { name: 'betamethasone', drug: /betameth/iu, route: 'subconjunctival', mg: [2, 6], source: memory },
  { name: 'gentamicin', drug: /gentamic/iu, route: 'subconjunctival', mg: [10, 40], source: memory },
  { name: 'acetazolamide', drug: /acetazolam/iu, route: 'oral', mg: [125, 1000], source: memory },
  { name: 'acetazolamide', drug: /acetazolam/iu, route: 'intravenous', mg: [250, 1000], source: memory },
  { name: 'phenylephrine', drug: /phenyleph?rin/iu, route: 'intracameral', mg: [0.5, 10], source: memory },
];

export function usualDoseOf(drug: string, route: string): UsualDose | undefined {
  return usualDoses.find((usual) => usual.route === route && usual.drug.test(drug));
}

/** mg given, from the mass or from strength and volume (1 % is 10 mg per mL); the drug's name may hold its strength. */
export function massOf({ mass, strength, volume }: Dose, drug: string): number | undefined {
  if (mass !== undefined) return mass;
  const perCent = strength ?? strengthIn(drug);
  return perCent === undefined || volume === undefined ? undefined : perCent * 10 * volume;
}

/** The strength in per cent that stands behind the name of a drug: “lidocaine 1 %”. */
function strengthIn(drug: string): number | undefined {
  const typed = /(\d+(?:\.\d+)?)\s*(?:%|per ?cent)/iu.exec(drug)?.[1];
  return typed === undefined ? undefined : Number(typed);
}

export function concentrationOf({ mass, volume, strength }: Dose): number | undefined {
  if (mass !== undefined && volume !== undefined && volume > 0) return mass / volume;
  return strength === undefined ? undefined : strength * 10;
}
