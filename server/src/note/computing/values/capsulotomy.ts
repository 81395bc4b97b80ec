import { diameterUnderMark, markForDiameter } from '../../calculations/capsulotomy/corneal-mark.ts';
import {
  coveredShare,
  largestOffset,
  leastOverlap,
  meanOverlap,
  mostOverlap,
} from '../../calculations/capsulotomy/overlap.ts';
import { refused } from '../../calculations/outcome.ts';
import { brokenRim } from '../capsule-rim.ts';
import type { Definition } from '../definition.ts';
import { amountOf, missing, type Known } from '../known.ts';
import type { OperationFacts } from '../operation-facts.ts';
import { result, spotOf } from '../result.ts';

/** The optic of the lens implanted, else planned: from the note, else from the department's list. */
function opticOf({ note, implantedLens, plannedLens, aphakic }: OperationFacts): Known<number> {
  if (aphakic) return refused('the eye was left without a lens');
  const written = note.lens?.['optic-diameter'];
  if (written !== undefined) return amountOf(written, 'the optic diameter');
  const entry = note.lens?.model === undefined ? plannedLens : implantedLens;
  return amountOf(entry.ok ? entry.entry['optic-diameter'] : undefined, 'the optic diameter of the lens');
}

function offsetOf({ note }: OperationFacts): Known<number> {
  const field = note.capsulotomy?.['off-centre'];
  if (field === undefined) return missing('how far the capsulotomy lies off centre');
  const { distance } = field.value;
  return distance === null
    ? refused('how far off centre the capsulotomy lies was not measured')
    : { ok: true, value: distance, unit: 'mm' };
}

/** How the capsulotomy achieved lies on the optic; before the operation, the one aimed at. */
export const capsulotomyOnOptic: Definition<OperationFacts> = {
  names: [
    'capsulotomy-overlap-least',
    'capsulotomy-overlap-most',
    'capsulotomy-covered-share',
    'capsulotomy-overlap-centred',
    'capsulotomy-largest-offset',
  ],
  beside: ['capsulotomy'],
  compute: (facts) => {
    const { note } = facts;
    const achieved = note.capsulotomy?.diameter;
    const field = achieved ?? note.capsulotomy?.aimed;
    const placed = note.lens?.placed?.value;
    // Elsewhere than in the bag the optic does not lie behind the capsule, and there is no overlap to speak of.
    if (field === undefined || (placed !== undefined && placed !== 'capsular bag' && placed !== 'none')) return [];
    const at = spotOf(field);
    if (achieved !== undefined && brokenRim(note) !== undefined)
      return [result('capsulotomy-overlap-least', at, {}, () => refused('its rim is not unbroken'))];
    const capsulotomy = amountOf(field, 'the diameter of the capsulotomy');
    const optic = opticOf(facts);
    const inputs = { capsulotomy, optic };
    const placedInputs = { ...inputs, offset: offsetOf(facts) };
    const centred = [
      result('capsulotomy-overlap-centred', at, inputs, (mm) =>
        meanOverlap({ capsulotomyMm: mm.capsulotomy, opticMm: mm.optic }),
      ),
      result('capsulotomy-largest-offset', at, inputs, (mm) =>
        largestOffset({ capsulotomyMm: mm.capsulotomy, opticMm: mm.optic }),
      ),
    ];
    if (achieved === undefined) return centred;
    return [
      result('capsulotomy-overlap-least', at, placedInputs, (mm) =>
        leastOverlap({ capsulotomyMm: mm.capsulotomy, opticMm: mm.optic, offsetMm: mm.offset }),
      ),
      result('capsulotomy-overlap-most', at, placedInputs, (mm) =>
        mostOverlap({ capsulotomyMm: mm.capsulotomy, opticMm: mm.optic, offsetMm: mm.offset }),
      ),
      result('capsulotomy-covered-share', at, placedInputs, (mm) =>
        coveredShare({ capsulotomyMm: mm.capsulotomy, opticMm: mm.optic, offsetMm: mm.offset }),
      ),
      ...centred,
    ];
  },
};

/** What a corneal mark encloses on the capsule, and the mark that the capsulotomy aimed at would need. */
export const cornealMark: Definition<OperationFacts> = {
  names: ['capsulotomy-under-marker', 'marker-for-capsulotomy'],
  beside: ['capsulotomy'],
  compute: ({ note, chamberDepth, cornea }) => {
    const { 'corneal-marker': marker, aimed } = note.capsulotomy ?? {};
    const eye = { 'chamber-depth': chamberDepth, 'mean-keratometry': cornea.usual.mean };
    return [
      ...(marker === undefined
        ? []
        : [
            result(
              'capsulotomy-under-marker',
              spotOf(marker),
              { ...eye, mark: amountOf(marker, 'the corneal mark') },
              (given) =>
                diameterUnderMark({
                  depthMm: given['chamber-depth'],
                  meanKeratometryD: given['mean-keratometry'],
                  markMm: given.mark,
                }),
            ),
          ]),
      ...(aimed === undefined || !chamberDepth.ok
        ? []
        : [
            result(
              'marker-for-capsulotomy',
              spotOf(aimed),
              { ...eye, aimed: amountOf(aimed, 'the diameter aimed at') },
              (given) =>
                markForDiameter({
                  depthMm: given['chamber-depth'],
                  meanKeratometryD: given['mean-keratometry'],
                  wantedMm: given.aimed,
                }),
            ),
          ]),
    ];
  },
};
