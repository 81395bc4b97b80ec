import type { Operation } from '@sideport/schemas';
import { operationCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';

export const capsulotomyNotSmallerThanOptic = operationCheck({
  id: 'capsulotomy-not-smaller-than-optic',
  group: 'plausibility',
  summary: 'The capsulotomy is as large as the optic or larger.',
  severity: 'warning',
  allowable: true,
  run: (note, say) => {
    const diameter = note.capsulotomy?.diameter;
    const optic = note.lens?.['optic-diameter'];
    if (diameter === undefined || optic === undefined || diameter.value.amount < optic.value.amount) return;
    // A wide opening through which the whole nucleus is to come is no rim that was meant to hold the optic.
    if (isWideOnPurpose(note)) return;
    say({
      at: diameter,
      message: `Capsulotomy: ${diameter.text} is not smaller than the optic of ${optic.text}, so that no rim holds the optic. Is the number right?`,
      related: [related(`the optic: ${optic.text}`, optic)],
    });
  },
});

const WHOLE_NUCLEUS = ['extracapsular extraction with lens', 'manual small-incision extraction with lens'];

function isWideOnPurpose({ capsulotomy, procedure }: Operation): boolean {
  return (
    capsulotomy?.technique?.value === 'can-opener' ||
    capsulotomy?.outcome?.value === 'converted to can-opener' ||
    WHOLE_NUCLEUS.includes(procedure?.value ?? '')
  );
}

export const aboutCapsulotomyNotSmallerThanOptic: About = () => ({
  why: 'Then no rim of the capsule holds the optic, and it may tilt or come forward; or a number is a slip.',
  whatToDo: 'Compare the diameter with what was seen. If it is so large, say in words how the optic is held.',
  source: 'Eur J Ophthalmol 2003;13:541-5 (capsule over the optic edge); geometry of two circles',
  since: '1.0',
  faulty: { note: 'capsulotomy:\n  diameter: 6.2 mm' },
  sound: { note: 'capsulotomy:\n  diameter: 5.2 mm' },
});
