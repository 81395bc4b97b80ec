import { sideCheck } from '../support/sides.ts';

export const biometryOfOtherEye = sideCheck({
  id: 'biometry-of-other-eye',
  what: 'the biometry',
  summary: 'The biometry is of the other eye.',
  why: 'A lens chosen from the measurements of the other eye is a wrong lens.',
  source: 'IOL quality standard (RCOphth and UKOA 2018)',
  faulty: { note: 'preop:\n  biometry:\n    eye: left' },
  sound: { note: 'preop:\n  biometry:\n    eye: right' },
});
