import { sideCheck } from '../support/sides.ts';

export const diagnosedEyeDiffers = sideCheck({
  id: 'diagnosed-eye-differs',
  what: 'the diagnosis',
  summary: 'The diagnosis is of the other eye.',
  why: 'A diagnosis of the other eye was copied from another note, or the side of this one is wrong.',
  source: 'RCS Good Surgical Practice 2014, 1.3 (site)',
  faulty: { note: 'diagnosis:\n  eye: left' },
  sound: { note: 'diagnosis:\n  eye: right' },
});
