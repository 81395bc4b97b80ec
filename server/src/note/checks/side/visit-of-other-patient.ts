import type { About } from '../check.ts';
import { partnerCheck } from '../support/partner.ts';

export const visitOfOtherPatient = partnerCheck({
  id: 'visit-of-other-patient',
  record: 'follow-up',
  what: 'patient',
  summary: 'The visit is of another patient than the operation it points to.',
});

export const aboutVisitOfOtherPatient: About = () => ({
  why: 'Two patients would be mixed in one course.',
  whatToDo: 'Find out which note is wrong; correct the side, the reference, or the id it points to by hand.',
  source: 'RCS Good Surgical Practice 2014, 1.3 (identification on all records)',
  since: '1.0',
  faulty: { base: 'follow-up', note: 'patient:\n  ref: P-1043' },
  sound: { base: 'follow-up', note: 'patient:\n  ref: P-1042' },
});
