import { operationCheck, type About } from '../check.ts';
import { wasAbandoned } from '../support/course.ts';
import { headOf, placeOfMissing } from '../support/place.ts';
import { rcs } from '../support/completeness.ts';
import { isWritten } from '../support/written.ts';

export const antibioticNotRecorded = operationCheck({
  id: 'antibiotic-not-recorded',
  group: 'completeness',
  summary: 'No antibiotic is recorded at the end of the operation, and no reason why none was given.',
  severity: 'unfinished',
  allowable: true,
  run: (note, say, context) => {
    if (context.status === 'planned' || note['antibiotic-withheld'] !== undefined || wasAbandoned(note)) return;
    if (
      note.drugs?.items.some(({ purpose, drug }) => purpose?.value === 'antibiotic' || isAntibiotic(drug?.value)) ===
      true
    )
      return;
    const said = note.$.said['drugs'];
    if (said?.word === 'not recorded' || isWritten(context.reading, ['antibiotic-withheld'])) return;
    if (note.drugs === undefined && said === undefined && isWritten(context.reading, ['drugs'])) return;
    // A purpose that could not be read may have been that of the antibiotic.
    if (note.drugs?.items.some(({ purpose }) => purpose === undefined) === true) return;
    say({
      at: said ?? (note.drugs === undefined ? placeOfMissing(context) : headOf(note.drugs.$, context)),
      message: `Antibiotic: none is recorded at the end of the operation, and no reason why (“antibiotic-withheld”). Asked for by ${rcs}.`,
    });
  },
});

export const aboutAntibioticNotRecorded: About = () => ({
  why: 'Without an intracameral antibiotic endophthalmitis is about five times as common.',
  whatToDo: 'List the antibiotic under “drugs”, or say in “antibiotic-withheld” why none was given.',
  source:
    'ESCRS study, J Cataract Refract Surg 2007;33:978-88; RCS Good Surgical Practice 2014, 1.3 (antibiotic prophylaxis)',
  since: '1.0',
  faulty: { note: 'drugs: none' },
  sound: { note: 'drugs: none\nantibiotic-withheld: anaphylaxis to several antibiotics; drops only' },
});

function isAntibiotic(drug: string | undefined): boolean {
  return drug !== undefined && /cef|moxiflox|vancomyc|gentamic|chloramphen|levoflox/iu.test(drug);
}
