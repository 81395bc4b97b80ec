import { operationCheck, type About } from '../check.ts';
import { missingIn } from '../support/missing-fields.ts';
import { headOf } from '../support/place.ts';
import { listed } from '../support/words.ts';

const wanted = [
  ['drug', 'the drug'],
  ['route', 'the route'],
  ['dose', 'the dose with its unit'],
] as const;

export const drugIncomplete = operationCheck({
  id: 'drug-incomplete',
  group: 'completeness',
  summary: 'A drug given during the operation has no name, route or dose.',
  severity: 'unfinished',
  allowable: true,
  run: ({ drugs }, say, context) => {
    for (const given of drugs?.items ?? []) {
      const missing = missingIn(given, wanted, context);
      if (missing.length === 0) continue;
      say({
        at: given.drug ?? headOf(given.$, context),
        message: `Drugs: ${listed(missing)} of ${given.drug?.text ?? 'one drug'} ${missing.length === 1 ? 'is' : 'are'} missing.`,
      });
    }
  },
});

export const aboutDrugIncomplete: About = () => ({
  why: 'When the eye reacts afterwards, dose and route are the first questions.',
  whatToDo: 'Write drug, route and dose with its unit.',
  source: 'RCS Good Surgical Practice 2014, 1.3 (antibiotic prophylaxis); prescribing rules, common practice',
  since: '1.0',
  faulty: { note: 'drugs:\n  - drug: cefuroxime\n    purpose: antibiotic\n    route: intracameral' },
  sound: {
    note: 'drugs:\n  - drug: cefuroxime\n    purpose: antibiotic\n    route: intracameral\n    dose: 1 mg in 0.1 mL',
  },
});
