import { partnerCheck } from '../support/partner.ts';

export const amendmentOfOtherPatient = partnerCheck({
  id: 'amendment-of-other-patient',
  record: 'amendment',
  what: 'patient',
  summary: 'The amendment is of another patient than the operation it points to.',
  why: 'Two patients would be mixed in one course.',
  whatToDo: 'Find out which note is wrong; correct the side, the reference, or the id it points to by hand.',
  faulty: { base: 'amendment', note: 'patient:\n  ref: P-1043' },
  sound: { base: 'amendment', note: 'patient:\n  ref: P-1042' },
});
