import type { About } from '../check.ts';
import { partnerCheck } from '../support/partner.ts';

export const amendmentOfOtherEye = partnerCheck({
  id: 'amendment-of-other-eye',
  record: 'amendment',
  what: 'eye',
  summary: 'The amendment is about the other eye than the operation it points to.',
});

export const aboutAmendmentOfOtherEye: About = () => ({
  why: 'A correction to the record of the other eye changes what is believed of this one.',
  whatToDo: 'Find out which note is wrong; correct the side, the reference, or the id it points to by hand.',
  source: 'RCS Good Surgical Practice 2014, 1.3 (identification on all records)',
  since: '1.0',
  faulty: { base: 'amendment', note: 'eye: left' },
  sound: { base: 'amendment', note: 'eye: right' },
});
