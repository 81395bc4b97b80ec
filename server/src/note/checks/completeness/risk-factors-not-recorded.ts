import { completenessCheck, nationalAudit, outcomeSet, registry } from '../support/completeness.ts';

export const riskFactorsNotRecorded = completenessCheck({
  id: 'risk-factors-not-recorded',
  title: 'Risk factors',
  summary: 'Ocular comorbidity or surgical difficulty is neither listed nor said to be none.',
  why: 'Results are compared after adjusting for them; an empty place counts as an easy eye.',
  whatToDo: 'List them, or write “none”.',
  planned: true,
  wanted: [
    { path: 'comorbidity', by: [outcomeSet, registry, nationalAudit], name: 'the comorbidity (or “none”)' },
    { path: 'difficulty', by: [registry, nationalAudit], grade: 'warning', name: 'the difficulty (or “none”)' },
  ],
  faulty: { note: 'without: comorbidity' },
  sound: { note: 'comorbidity: none' },
});
