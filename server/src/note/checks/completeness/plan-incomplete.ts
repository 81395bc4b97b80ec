import type { About } from '../check.ts';
import {
  completenessCheck,
  lensStandard,
  outcomeSet,
  practice,
  who,
  sourcesOf,
  type Wanted,
} from '../support/completeness.ts';
import { implantsLens } from '../support/course.ts';

const wanted: readonly Wanted[] = [
  { path: 'plan.eye', by: [who], grade: 'warning', name: 'the side on the list' },
  { path: 'plan.target', by: [outcomeSet, lensStandard], name: 'the target refraction' },
  { path: 'plan.formula', by: [lensStandard], grade: 'warning', name: 'the formula' },
  { path: 'plan.lens.maker', by: [lensStandard], name: 'the maker of the lens' },
  { path: 'plan.lens.model', by: [lensStandard], name: 'the model of the lens' },
  { path: 'plan.lens.power', by: [lensStandard], name: 'the power of the lens' },
  { path: 'plan.anaesthesia', by: [practice], grade: 'info', name: 'the anaesthesia' },
  { path: 'plan.incision.at', by: [practice], grade: 'info', name: 'the site of the incision' },
];

export const planIncomplete = completenessCheck({
  id: 'plan-incomplete',
  section: 'plan',
  title: 'Plan',
  summary: 'The plan does not name the lens, the target or the anaesthesia.',
  planned: true,
  due: implantsLens,
  wanted,
});

export const aboutPlanIncomplete: About = () => ({
  why: 'What was implanted can only be held against a plan that names maker, model, power and target.',
  whatToDo: 'Fill in the plan as it stood before the operation, not as it turned out.',
  source: sourcesOf(wanted),
  since: '1.0',
  faulty: { note: 'without: plan.target' },
  sound: { note: 'plan:\n  target: -0.25 D' },
});
