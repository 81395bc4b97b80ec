import type { About } from '../check.ts';
import { findTheSide, sideCheck } from '../support/sides.ts';

export const lensVerifiedForOtherEye = sideCheck({
  id: 'lens-verified-for-other-eye',
  what: 'the verification of the lens',
  summary: 'The lens was read out for the other eye.',
});

export const aboutLensVerifiedForOtherEye: About = () => ({
  why: 'The lens on the table may be the one chosen for the other eye.',
  whatToDo: findTheSide,
  source: 'IOL quality standard (RCOphth and UKOA 2018)',
  since: '1.0',
  faulty: { note: 'safety:\n  lens-verified:\n    eye: left' },
  sound: { note: 'safety:\n  lens-verified:\n    eye: right' },
});
