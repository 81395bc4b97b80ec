import { partnerCheck } from '../support/partner.ts';

export const visitOfOtherPatient = partnerCheck({
  id: 'visit-of-other-patient',
  record: 'follow-up',
  what: 'patient',
  summary: 'The visit is of another patient than the operation it points to.',
  why: 'Two patients would be mixed in one course.',
  whatToDo: 'Find out which note is wrong; correct the side, the reference, or the id it points to by hand.',
  faulty: { base: 'follow-up', note: 'patient:\n  ref: P-1043' },
  sound: { base: 'follow-up', note: 'patient:\n  ref: P-1042' },
});
