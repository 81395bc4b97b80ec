import { departmentCheck, type About } from '../check.ts';
import { missingIn } from '../support/missing-fields.ts';
import { headOf } from '../support/place.ts';
import { listed } from '../support/words.ts';

const wanted = [
  ['width', 'the width'],
  ['site', 'the site'],
  ['flattening', 'the flattening'],
  ['eyes', 'the number of eyes'],
] as const;

export const incisionEffectIncomplete = departmentCheck({
  id: 'incision-effect-incomplete',
  group: 'department file',
  summary: 'The effect of an incision has no width, site, amount or number of eyes.',
  severity: 'warning',
  allowable: true,
  run: ({ staff }, say, context) => {
    for (const { ref, 'incision-effect': effects } of staff?.items ?? []) {
      for (const effect of effects?.items ?? []) {
        const missing = missingIn(effect, wanted, context);
        if (missing.length > 0)
          say({
            at: headOf(effect.$, context),
            message: `Incision effect: an entry of ${ref?.text ?? 'this surgeon'} lacks ${listed(missing)}.`,
          });
      }
    }
  },
});

export const aboutIncisionEffectIncomplete: About = () => ({
  why: 'Without them it can be used for no incision, or nobody knows how far to trust it.',
  whatToDo: 'Fill it in from the audit of this surgeon’s own eyes.',
  source: 'centroid of the surgically induced astigmatism: Holladay, Cravy and Koch 1992 (from memory)',
  since: '1.0',
  faulty: {
    base: 'department',
    note: 'staff:\n  - ref: S-02\n    role: surgeon\n    grade: consultant\n    may-sign: yes\n    incision-effect:\n      - width: 2.4 mm\n        site: temporal\n        flattening: 0.20 D',
  },
  sound: {
    base: 'department',
    note: 'staff:\n  - ref: S-02\n    role: surgeon\n    grade: consultant\n    may-sign: yes\n    incision-effect:\n      - width: 2.4 mm\n        site: temporal\n        flattening: 0.20 D\n        eyes: 84',
  },
});
