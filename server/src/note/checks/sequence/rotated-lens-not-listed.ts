import { meridianDifference } from '../../calculations/angles.ts';
import { followUpCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';
import { rounded } from '../support/words.ts';

const ROTATED = 10;

export const rotatedLensNotListed = followUpCheck({
  id: 'rotated-lens-not-listed',
  group: 'sequence and consequence',
  summary: 'The toric lens lies on another axis than at the operation, and the rotation is not listed.',
  severity: 'warning',
  allowable: true,
  run: ({ lens, complications }, say, { operation, operationFile }) => {
    const [axis, implanted] = [lens?.axis, operation?.lens?.axis];
    if (axis === undefined || implanted === undefined) return;
    const off = Math.abs(meridianDifference(axis.value.amount, implanted.value.amount));
    if (off < ROTATED || complications?.items.some(({ what }) => what?.value === 'lens rotated') === true) return;
    say({
      at: axis,
      message: `Toric lens: it lies at ${axis.text}, ${rounded(off, 0)}° from ${implanted.text} at the operation, but no rotation is listed.`,
      related: [related(`at the operation: ${implanted.text}`, implanted, operationFile)],
    });
  },
});

export const aboutRotatedLensNotListed: About = () => ({
  why: 'Rotation is a complication that is counted, and early it is easily put right.',
  whatToDo: 'List “lens rotated” under complications, or correct the axis.',
  source: 'Felipe et al., J Cataract Refract Surg 2011 (a third of the effect lost at 10°)',
  since: '1.0',
  faulty: {
    base: 'follow-up',
    note: 'lens:\n  axis: 70°',
    files: { 'operation.opnote.yaml': 'lens:\n  kind: toric\n  cylinder: +3.00 D\n  axis: 88°' },
  },
  sound: {
    base: 'follow-up',
    note: 'lens:\n  axis: 70°\ncomplications:\n  - what: lens rotated\n    found: 2031-05-06\n    action: to be turned back next week',
    files: { 'operation.opnote.yaml': 'lens:\n  kind: toric\n  cylinder: +3.00 D\n  axis: 88°' },
  },
});
