import { axialLengthClass } from '../../calculations/eye/axial-length-class.ts';
import { capsularBagDiameter } from '../../calculations/eye/capsular-bag.ts';
import { maculopathyMeaning, pathologicMyopia, type MaculopathyCategory } from '../../calculations/eye/maculopathy.ts';
import { retinalDetachmentContext } from '../../calculations/eye/retinal-detachment.ts';
import { ringSizeAdvice } from '../../calculations/eye/ring-size.ts';
import type { Definition } from '../definition.ts';
import { known } from '../known.ts';
import type { OperationFacts } from '../operation-facts.ts';
import { result, spotOf, type Result } from '../result.ts';
import { ageOf } from './time.ts';
import { capsuleFactsOf } from './capsule-rupture.ts';

/** What follows from the length of the eye. */
export const lengthOfEye: Definition<OperationFacts> = {
  names: ['axial-length-class', 'capsular-bag-diameter', 'ring-size-advice', 'retinal-detachment-context'],
  compute: (facts) => {
    const { note, axialLength, cornea, spot } = facts;
    const field = note.preop?.biometry?.['axial-length'];
    const at = spot(field, note.preop?.biometry?.$, note.preop?.$);
    const inputs = { 'axial-length': axialLength };
    const classed = result('axial-length-class', at, inputs, (eye) =>
      axialLengthClass({ axialLengthMm: eye['axial-length'] }),
    );
    if (field === undefined) return [classed];
    const ring = note.ring?.size ?? note.ring?.kind ?? note.plan?.ring;
    const wanted =
      note.ring?.used?.value === true || (note.plan?.ring !== undefined && note.plan.ring.value !== 'not planned');
    const { posteriorCapsuleTorn, vitreousProlapsed } = capsuleFactsOf(note);
    const age = ageOf(facts);
    const group = {
      ...inputs,
      ...(age.ok ? { age } : {}),
      ...(posteriorCapsuleTorn === null ? {} : { 'posterior-capsule-torn': known(posteriorCapsuleTorn, '') }),
      ...(vitreousProlapsed === null ? {} : { 'vitreous-prolapsed': known(vitreousProlapsed, '') }),
    };
    return [
      classed,
      result('capsular-bag-diameter', at, { ...inputs, 'mean-keratometry': cornea.usual.mean }, (eye) =>
        capsularBagDiameter({ axialLengthMm: eye['axial-length'], meanKeratometryD: eye['mean-keratometry'] }),
      ),
      result(
        'ring-size-advice',
        spot(ring, field),
        inputs,
        (eye) => ringSizeAdvice({ axialLengthMm: eye['axial-length'] }),
        { inline: wanted },
      ),
      result('retinal-detachment-context', spot(note.preop?.fundus?.periphery?.$, field), group, (eye) =>
        retinalDetachmentContext({
          axialLengthMm: eye['axial-length'],
          ...(age.ok ? { ageYears: age.value } : {}),
          ...(posteriorCapsuleTorn === null ? {} : { posteriorCapsuleTorn }),
          ...(vitreousProlapsed === null ? {} : { vitreousLost: vitreousProlapsed }),
        }),
      ),
    ];
  },
};

const CATEGORY: Readonly<Record<string, MaculopathyCategory>> = { 0: 0, 1: 1, 2: 2, 3: 3, 4: 4 };

/** What the category of myopic maculopathy means. */
export const maculopathy: Definition<OperationFacts> = {
  names: ['myopic-maculopathy-meaning', 'pathologic-myopia'],
  compute: ({ note }) => {
    const fundus = note.preop?.fundus;
    const field = fundus?.['myopic-maculopathy'];
    if (field === undefined) return [];
    const at = spotOf(field);
    const category = known(CATEGORY[field.value], 'the category');
    const staphyloma = fundus?.staphyloma;
    const results: Result[] = [
      result('myopic-maculopathy-meaning', at, { category }, (given) => maculopathyMeaning(given)),
    ];
    // From category 2 on a staphyloma makes no difference; below it the answer needs one.
    const inputs = {
      category,
      staphyloma: known(staphyloma && staphyloma.value === 'present', 'whether there is a staphyloma'),
    };
    const decided = category.ok && category.value >= 2;
    results.push(
      decided && staphyloma === undefined
        ? result('pathologic-myopia', at, { category }, (given) => pathologicMyopia({ ...given, staphyloma: false }))
        : result('pathologic-myopia', at, inputs, (given) => pathologicMyopia(given)),
    );
    return results;
  },
};
