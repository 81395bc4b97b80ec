import { followUpCheck, type About } from '../check.ts';
import { missingIn } from '../support/missing-fields.ts';
import { placeOfMissing } from '../support/place.ts';
import { listed } from '../support/words.ts';

const always = [
  ['operation', 'the operation it follows'],
  ['date', 'the date'],
  ['eye', 'the eye'],
  ['visit', 'which visit it is'],
  ['by', 'who examined'],
  ['acuity', 'the acuity'],
  ['pressure', 'the pressure'],
  ['complications', 'the complications (or “none”)'],
] as const;
const settled = [['refraction', 'the refraction']] as const;
const SETTLED = ['month 1', 'week 6', 'month 2', 'month 3', 'month 6', 'year 1'];

export const visitIncomplete = followUpCheck({
  id: 'visit-incomplete',
  group: 'completeness',
  summary: 'A visit does not say which operation, which eye, when, or what was found.',
  severity: 'unfinished',
  allowable: true,
  run: (note, say, context) => {
    const missing = [
      ...missingIn(note, always, context),
      ...(SETTLED.includes(note.visit?.value ?? '') ? missingIn(note, settled, context) : []),
    ];
    if (missing.length === 0) return;
    say({
      at: placeOfMissing(context),
      message: `Visit: the note does not record ${listed(missing)}. Asked for by the ICHOM cataract set and the European cataract registry.`,
    });
  },
});

export const aboutVisitIncomplete: About = () => ({
  why: 'Refraction and complications after the operation are what the next plan and the audit rest on.',
  whatToDo: 'Fill in the fields; write “none” or “not recorded” where there is nothing.',
  source: 'ICHOM cataract set; Lundström et al. 2021 (acuity, refraction, complications after the operation)',
  since: '1.0',
  faulty: { base: 'follow-up', note: 'without: refraction' },
  sound: { base: 'follow-up', note: 'visit: month 1' },
});
