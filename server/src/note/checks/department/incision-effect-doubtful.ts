import { departmentCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';

const FEWEST = 20;
const MOST = 1;
const SMALL_INCISION = 3.5;

export const incisionEffectDoubtful = departmentCheck({
  id: 'incision-effect-doubtful',
  group: 'department file',
  summary: 'The effect of an incision rests on few eyes, or is larger than such an incision does.',
  severity: 'warning',
  allowable: true,
  run: ({ staff }, say) => {
    for (const { 'incision-effect': effects } of staff?.items ?? []) {
      for (const { width, flattening, eyes } of effects?.items ?? []) {
        if (
          flattening !== undefined &&
          width !== undefined &&
          width.value.amount <= SMALL_INCISION &&
          Math.abs(flattening.value.amount) > MOST
        ) {
          say({
            at: flattening,
            message: `Incision effect: ${flattening.text} is much for an incision of ${width.text}. Is it the centroid, not the mean of the magnitudes?`,
            related: [related(`width: ${width.text}`, width)],
          });
        } else if (eyes !== undefined && eyes.value < FEWEST) {
          say({
            at: eyes,
            message: `Incision effect: it rests on ${eyes.text} eyes only; with fewer than ${FEWEST} it is mostly chance.`,
          });
        }
      }
    }
  },
});

export const aboutIncisionEffectDoubtful: About = () => ({
  why: 'A mean of magnitudes, entered instead of the centroid, is several times too large; a centroid of few eyes is chance.',
  whatToDo: 'Take the centroid of at least twenty eyes from the audit, not the mean of the magnitudes.',
  source:
    'BMC Ophthalmol 2021, s12886-021-02131-x (2.2 mm: centroid 0.03 to 0.28 D, mean magnitude 0.41 to 0.46 D); limits common practice, no source',
  since: '1.0',
  faulty: {
    base: 'department',
    note: 'staff:\n  - ref: S-02\n    role: surgeon\n    grade: consultant\n    may-sign: yes\n    incision-effect:\n      - width: 2.4 mm\n        site: temporal\n        flattening: 1.30 D\n        eyes: 84',
  },
  sound: {
    base: 'department',
    note: 'staff:\n  - ref: S-02\n    role: surgeon\n    grade: consultant\n    may-sign: yes\n    incision-effect:\n      - width: 2.4 mm\n        site: temporal\n        flattening: 0.30 D\n        eyes: 84',
  },
});
