import type { About } from '../check.ts';
import { findTheSide, sideCheck } from '../support/sides.ts';

export const biometryOfOtherEye = sideCheck({
  id: 'biometry-of-other-eye',
  what: 'the biometry',
  summary: 'The biometry is of the other eye.',
});

export const aboutBiometryOfOtherEye: About = () => ({
  why: 'A lens chosen from the measurements of the other eye is a wrong lens.',
  whatToDo: findTheSide,
  source: 'IOL quality standard (RCOphth and UKOA 2018)',
  since: '1.0',
  faulty: { note: 'preop:\n  biometry:\n    eye: left' },
  sound: { note: 'preop:\n  biometry:\n    eye: right' },
});
