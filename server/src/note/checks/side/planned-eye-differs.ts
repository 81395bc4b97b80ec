import type { About } from '../check.ts';
import { findTheSide, sideCheck } from '../support/sides.ts';

export const plannedEyeDiffers = sideCheck({
  id: 'planned-eye-differs',
  what: 'the plan',
  summary: 'The operating list names the other eye.',
});

export const aboutPlannedEyeDiffers: About = () => ({
  why: 'An operation on the wrong eye begins with two papers that disagree.',
  whatToDo: findTheSide,
  source: 'WHO Surgical Safety Checklist 2009',
  since: '1.0',
  faulty: { note: 'plan:\n  eye: left' },
  sound: { note: 'plan:\n  eye: right' },
});
