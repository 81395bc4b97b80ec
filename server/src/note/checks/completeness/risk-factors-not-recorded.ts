import type { About } from '../check.ts';
import {
  completenessCheck,
  nationalAudit,
  outcomeSet,
  registry,
  sourcesOf,
  type Wanted,
} from '../support/completeness.ts';

const wanted: readonly Wanted[] = [
  { path: 'comorbidity', by: [outcomeSet, registry, nationalAudit], name: 'the comorbidity (or “none”)' },
  { path: 'difficulty', by: [registry, nationalAudit], grade: 'warning', name: 'the difficulty (or “none”)' },
];

export const riskFactorsNotRecorded = completenessCheck({
  id: 'risk-factors-not-recorded',
  title: 'Risk factors',
  summary: 'Ocular comorbidity or surgical difficulty is neither listed nor said to be none.',
  planned: true,
  wanted,
});

export const aboutRiskFactorsNotRecorded: About = () => ({
  why: 'Results are compared after adjusting for them; an empty place counts as an easy eye.',
  whatToDo: 'List them, or write “none”.',
  source: sourcesOf(wanted),
  since: '1.0',
  faulty: { note: 'without: comorbidity' },
  sound: { note: 'comorbidity: none' },
});
