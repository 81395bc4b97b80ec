import { coveredShare, leastOverlap } from '../../calculations/capsulotomy/overlap.ts';
import { operationCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';
import { rounded } from '../support/words.ts';

export const capsulotomyDoesNotCoverOptic = operationCheck({
  id: 'capsulotomy-does-not-cover-optic',
  group: 'plausibility',
  summary: 'The capsulotomy is so far off centre that it does not cover the edge of the optic all round.',
  severity: 'warning',
  allowable: true,
  run: (note, say) => {
    const diameter = note.capsulotomy?.diameter;
    const optic = note.lens?.['optic-diameter'];
    const offset = note.capsulotomy?.['off-centre'];
    const offsetMm = offset?.value.distance ?? 0;
    if (diameter === undefined || optic === undefined || offset === undefined || offsetMm === 0) return;
    if (diameter.value.amount >= optic.value.amount) return;
    const circles = { capsulotomyMm: diameter.value.amount, opticMm: optic.value.amount, offsetMm };
    const [least, share] = [leastOverlap(circles), coveredShare(circles)];
    if (!least.ok || !share.ok || share.value >= 1) return;
    say({
      at: offset,
      message: `Capsulotomy: ${diameter.text} and ${offset.text} leave the edge of the ${optic.text} optic uncovered by ${rounded(-least.value, 2)} mm at the widest; about ${Math.round(share.value * 100)} % of the rim lies on the optic.`,
      related: [related(`the capsulotomy: ${diameter.text}`, diameter), related(`the optic: ${optic.text}`, optic)],
    });
  },
});

export const aboutCapsulotomyDoesNotCoverOptic: About = () => ({
  why: 'Where the rim is missing the capsule shrinks against the lens unevenly, and opacification grows under its edge.',
  whatToDo:
    'Compare diameter and offset with what was seen. If they are right, nothing need be changed: allow the remark.',
  source: 'geometry of two circles; Hollick, Spalton and Meacock, Am J Ophthalmol 1999 (as quoted)',
  since: '1.0',
  faulty: { note: "capsulotomy:\n  diameter: 5.5 mm\n  off-centre: 0.4 mm toward 3 o'clock" },
  sound: { note: "capsulotomy:\n  diameter: 5.0 mm\n  off-centre: 0.4 mm toward 3 o'clock" },
});
