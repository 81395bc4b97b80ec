import { sideCheck } from '../support/sides.ts';

export const plannedEyeDiffers = sideCheck({
  id: 'planned-eye-differs',
  what: 'the plan',
  summary: 'The operating list names the other eye.',
  why: 'An operation on the wrong eye begins with two papers that disagree.',
  source: 'WHO Surgical Safety Checklist 2009',
  faulty: { note: 'plan:\n  eye: left' },
  sound: { note: 'plan:\n  eye: right' },
});
