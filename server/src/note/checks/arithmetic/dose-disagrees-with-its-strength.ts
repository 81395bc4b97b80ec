import { operationCheck, type About } from '../check.ts';
import { rounded } from '../support/words.ts';

const TOLERANCE = 0.1;

export const doseDisagreesWithItsStrength = operationCheck({
  id: 'dose-disagrees-with-its-strength',
  group: 'arithmetic',
  summary: 'Amount, volume and strength of a dose do not go together.',
  severity: 'error',
  allowable: false,
  run: ({ drugs }, say) => {
    for (const { dose, drug } of drugs?.items ?? []) {
      const { mass, volume, strength } = dose?.value ?? {};
      if (dose === undefined || mass === undefined || volume === undefined || strength === undefined) continue;
      const expected = strength * 10 * volume;
      if (Math.abs(mass - expected) <= TOLERANCE * Math.max(mass, expected)) continue;
      say({
        at: dose,
        message: `Dose: ${dose.text}${drug === undefined ? '' : ` of ${drug.text}`} does not add up: ${rounded(volume, 3)} mL of ${rounded(strength, 3)} % hold ${rounded(expected, 3)} mg, not ${rounded(mass, 3)} mg.`,
      });
    }
  },
});

export const aboutDoseDisagreesWithItsStrength: About = () => ({
  why: 'One per cent is 10 mg in each mL: when the three disagree, nobody knows what was given.',
  whatToDo: 'Compare with the drug chart and correct the one that is wrong.',
  source: 'definition of a strength in per cent (weight by volume)',
  since: '1.0',
  faulty: {
    note: 'drugs:\n  - drug: cefuroxime\n    purpose: antibiotic\n    route: intracameral\n    dose: 1 mg in 0.1 mL\n  - drug: triamcinolone\n    purpose: vitreous stain\n    route: intracameral\n    dose: 4 mg in 0.1 mL of 1 %',
  },
  sound: {
    note: 'drugs:\n  - drug: cefuroxime\n    purpose: antibiotic\n    route: intracameral\n    dose: 1 mg in 0.1 mL\n  - drug: triamcinolone\n    purpose: vitreous stain\n    route: intracameral\n    dose: 4 mg in 0.1 mL of 4 %',
  },
});
