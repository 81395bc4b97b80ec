import type { About } from '../check.ts';
import { findTheSide, sideCheck } from '../support/sides.ts';

export const diagnosedEyeDiffers = sideCheck({
  id: 'diagnosed-eye-differs',
  what: 'the diagnosis',
  summary: 'The diagnosis is of the other eye.',
});

export const aboutDiagnosedEyeDiffers: About = () => ({
  why: 'A diagnosis of the other eye was copied from another note, or the side of this one is wrong.',
  whatToDo: findTheSide,
  source: 'RCS Good Surgical Practice 2014, 1.3 (site)',
  since: '1.0',
  faulty: { note: 'diagnosis:\n  eye: left' },
  sound: { note: 'diagnosis:\n  eye: right' },
});
