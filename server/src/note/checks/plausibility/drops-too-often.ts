import { operationCheck, type About } from '../check.ts';
import { rounded } from '../support/words.ts';

/** Once an hour, day and night: more is no regimen that a patient is sent home with. */
const MOST = 24;

export const dropsTooOften = operationCheck({
  id: 'drops-too-often',
  group: 'plausibility',
  summary: 'Drops are prescribed more often than once an hour.',
  severity: 'error',
  allowable: true,
  run: (note, say) => {
    for (const { drug, regimen } of note['after-care']?.drops?.items ?? []) {
      const often = regimen?.value.timesDaily;
      if (regimen === undefined || often === undefined || often <= MOST) continue;
      say({
        at: regimen,
        message: `Drops: ${drug === undefined ? 'they are' : `${drug.text} is`} to be given ${rounded(often, 0)} times a day, more than once an hour. Is a digit too many?`,
      });
    }
  },
});

export const aboutDropsTooOften: About = () => ({
  why: 'The instructions are copied to the patient and the general practitioner as they stand.',
  whatToDo: 'Correct the number.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: {
    note: 'after-care:\n  drops:\n    - drug: dexamethasone 0.1 %\n      kind: steroid\n      regimen: 40 times a day for 4 weeks',
  },
  sound: {
    note: 'after-care:\n  drops:\n    - drug: dexamethasone 0.1 %\n      kind: steroid\n      regimen: 4 times a day for 4 weeks',
  },
});
