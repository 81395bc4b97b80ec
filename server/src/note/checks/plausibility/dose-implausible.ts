import { operationCheck, type About } from '../check.ts';
import { concentrationOf, massOf, usualDoseOf } from '../support/usual-doses.ts';
import { rounded } from '../support/words.ts';

const GRAVE = 3;

export const doseImplausible = operationCheck({
  id: 'dose-implausible',
  group: 'plausibility',
  summary: 'A dose given into or around the eye is not the usual one.',
  severity: 'warning',
  allowable: true,
  run: ({ drugs }, say) => {
    for (const { drug, route, dose } of drugs?.items ?? []) {
      if (drug === undefined || route === undefined || dose === undefined) continue;
      const usual = usualDoseOf(drug.value, route.value);
      const mass = massOf(dose.value, drug.value);
      if (usual === undefined) continue;
      const [least, most] = usual.mg;
      if (mass !== undefined && (mass < least || mass > most)) {
        const grave = mass >= most * GRAVE;
        say({
          at: dose,
          severity: grave ? 'error' : 'warning',
          message: `Dose: ${dose.text} of ${route.value} ${drug.text}${mass === dose.value.mass ? '' : ` (${rounded(mass, 2)} mg)`} is not the usual ${span(usual.mg)} mg${grave ? `: ${rounded(mass / usualMost(usual.mg), 0)} times as much` : ''}. Is it right?`,
        });
        continue;
      }
      const concentration = concentrationOf(dose.value);
      if (usual.mgPerMl === undefined || concentration === undefined) continue;
      if (concentration >= usual.mgPerMl[0] && concentration <= usual.mgPerMl[1]) continue;
      say({
        at: dose,
        message: `Dose: ${dose.text} of ${drug.text} is a dilution of ${rounded(concentration, 2)} mg/mL; usual are ${span(usual.mgPerMl)} mg/mL. Is it right?`,
      });
    }
  },
});

export const aboutDoseImplausible: About = () => ({
  why: 'An intracameral antibiotic ten times too strong destroys the endothelium and the macula; ten times too weak it protects nobody.',
  whatToDo:
    'Compare with the drug chart and the dilution. If it was really given, it is an incident: tell the team at once.',
  source:
    'ESCRS study, J Cataract Refract Surg 2007;33:978-88 (cefuroxime 1 mg in 0.1 mL); the other drugs from memory of the literature',
  since: '1.0',
  faulty: {
    note: 'drugs:\n  - drug: cefuroxime\n    purpose: antibiotic\n    route: intracameral\n    dose: 10 mg in 0.1 mL',
  },
  sound: {
    note: 'drugs:\n  - drug: cefuroxime\n    purpose: antibiotic\n    route: intracameral\n    dose: 1 mg in 0.1 mL',
  },
});

/** The middle of limits that only allow for rounding, else the upper one. */
function usualMost([least, most]: readonly [number, number]): number {
  return isNarrow([least, most]) ? (least + most) / 2 : most;
}

function isNarrow([least, most]: readonly [number, number]): boolean {
  return most - least <= 0.25 * (least + most);
}

/** “1” where the limits only allow for rounding, “0.1 to 0.75” otherwise. */
function span([least, most]: readonly [number, number]): string {
  const middle = (least + most) / 2;
  return isNarrow([least, most]) ? rounded(middle, 2) : `${least} to ${most}`;
}
