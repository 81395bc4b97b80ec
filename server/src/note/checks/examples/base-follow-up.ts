/** A sound visit after the routine operation. */
export const baseFollowUp = `opnote: 1
record: follow-up
status: final
id: FU-2031-0102-1
operation: OP-2031-0102
date: 2031-05-06
patient:
  ref: P-1042
eye: right
visit: month 1
by: S-02
acuity:
  uncorrected: 6/7.5
  corrected: 6/6
refraction: -0.25 / -0.25 x 180
keratometry:
  k1: 43.00 D @ 178
  k2: 43.62 D @ 88
  index: 1.3375
pressure: 14 mmHg
cornea: clear
chamber: deep, quiet
wound: no leak
lens:
  placed: capsular bag
  off-centre: centred
capsule: clear
fundus:
  dilated: yes
  macula: flat
  periphery: [flat]
complications: none
treatment: steroid drops to stop in one week
reviews: none
signed:
  - by: S-02
    meaning: author
    at: 2031-05-06T11:20+01:00
`;
