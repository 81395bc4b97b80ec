import { partnerCheck } from '../support/partner.ts';

export const visitOfOtherEye = partnerCheck({
  id: 'visit-of-other-eye',
  record: 'follow-up',
  what: 'eye',
  summary: 'The visit is about the other eye than the operation it points to.',
  why: 'The result of one eye would be counted for the other.',
  whatToDo: 'Find out which note is wrong; correct the side, the reference, or the id it points to by hand.',
  faulty: { base: 'follow-up', note: 'eye: left' },
  sound: { base: 'follow-up', note: 'eye: right' },
});
