import type { Field } from '@sideport/schemas';
import { operationCheck, type About, type Say } from '../check.ts';
import { drugClassesOf } from '../support/drug-classes.ts';
import { related } from '../support/place.ts';

/** Words that say what a drug is; “other” and “vitreous stain” say what it was used for. */
const CLASSES = ['antibiotic', 'steroid', 'non-steroidal', 'miotic', 'mydriatic', 'pressure lowering', 'anaesthetic'];

export const purposeNotOfDrug = operationCheck({
  id: 'purpose-not-of-drug',
  group: 'agreement',
  summary: 'A drug is said to be for what it does not do.',
  severity: 'warning',
  allowable: true,
  run: (note, say) => {
    for (const { drug, purpose } of note.drugs?.items ?? []) compare(drug, purpose, say);
    for (const { drug, kind } of note['after-care']?.drops?.items ?? []) compare(drug, kind, say);
  },
});

function compare(drug: Field<string> | undefined, purpose: Field<string> | undefined, say: Say): void {
  if (drug === undefined || purpose === undefined || !CLASSES.includes(purpose.value)) return;
  const classes: readonly string[] = drugClassesOf(drug.value);
  if (classes.length === 0 || classes.includes(purpose.value)) return;
  // A steroid and a non-steroidal drug are both recorded as given against inflammation where only one word is offered.
  if (purpose.value === 'steroid' && classes.includes('non-steroidal')) return;
  say({
    at: purpose,
    message: `Drugs: ${drug.text} is recorded as “${purpose.value}”, but it is ${withArticle(classes)}. Is the drug or its purpose the wrong one?`,
    related: [related(`the drug: ${drug.text}`, drug)],
  });
}

function withArticle(classes: readonly string[]): string {
  return classes
    .map((one) =>
      one === 'pressure lowering'
        ? 'one that lowers the pressure'
        : `${/^[aeiou]/u.test(one) ? 'an' : 'a'} ${one === 'non-steroidal' ? 'non-steroidal drug' : one}`,
    )
    .join(' and ');
}

export const aboutPurposeNotOfDrug: About = () => ({
  why: 'The register counts the prophylaxis by its purpose: an antibiotic filed as something else was not given, and a drug filed as an antibiotic protected nobody.',
  whatToDo: 'Correct the drug or the purpose.',
  source: 'generic names and classes from memory, no source',
  since: '1.0',
  faulty: {
    note: 'after-care:\n  drops:\n    - drug: dexamethasone 0.1 %\n      kind: antibiotic\n      regimen: 4 times a day for 4 weeks',
  },
  sound: {
    note: 'after-care:\n  drops:\n    - drug: dexamethasone 0.1 %\n      kind: steroid\n      regimen: 4 times a day for 4 weeks',
  },
});
