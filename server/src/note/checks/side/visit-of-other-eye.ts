import type { About } from '../check.ts';
import { partnerCheck } from '../support/partner.ts';

export const visitOfOtherEye = partnerCheck({
  id: 'visit-of-other-eye',
  record: 'follow-up',
  what: 'eye',
  summary: 'The visit is about the other eye than the operation it points to.',
});

export const aboutVisitOfOtherEye: About = () => ({
  why: 'The result of one eye would be counted for the other.',
  whatToDo: 'Find out which note is wrong; correct the side, the reference, or the id it points to by hand.',
  source: 'RCS Good Surgical Practice 2014, 1.3 (identification on all records)',
  since: '1.0',
  faulty: { base: 'follow-up', note: 'eye: left' },
  sound: { base: 'follow-up', note: 'eye: right' },
});
