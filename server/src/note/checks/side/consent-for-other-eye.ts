import type { About } from '../check.ts';
import { findTheSide, sideCheck } from '../support/sides.ts';

export const consentForOtherEye = sideCheck({
  id: 'consent-for-other-eye',
  what: 'the consent',
  summary: 'The consent is for the other eye.',
});

export const aboutConsentForOtherEye: About = () => ({
  why: 'The patient agreed to an operation on the eye that the consent names, and to no other.',
  whatToDo: findTheSide,
  source: 'WHO Surgical Safety Checklist 2009',
  since: '1.0',
  faulty: { note: 'safety:\n  consent:\n    eye: left' },
  sound: { note: 'safety:\n  consent:\n    eye: right' },
});
