import { operationCheck, type About } from '../check.ts';
import { has } from '../support/course.ts';
import { related } from '../support/place.ts';
import { listed } from '../support/words.ts';

const OWN = 'other';

export const formulaAfterRefractiveSurgery = operationCheck({
  id: 'formula-after-refractive-surgery',
  group: 'plausibility',
  summary: 'After corneal refractive surgery the lens was chosen with formulas that do not know of it.',
  severity: 'warning',
  allowable: true,
  run: ({ plan, comorbidity }, say) => {
    const formulas = plan?.formula;
    const surgery = has(comorbidity, 'previous corneal refractive surgery');
    if (formulas === undefined || surgery === undefined || formulas.items.length === 0) return;
    if (formulas.items.some(({ value }) => value === OWN)) return;
    say({
      at: formulas.$,
      message: `Plan: a choice by ${listed(formulas.items.map(({ value }) => value))} alone after corneal refractive surgery tends to choose too weak a lens after a myopic correction and too strong a one after a hyperopic one. Was a method made for such eyes used as well?`,
      related: [related(`the comorbidity: ${surgery.text}`, surgery)],
    });
  },
});

export const aboutFormulaAfterRefractiveSurgery: About = () => ({
  why: 'The keratometer measures the front surface and assumes the back: after laser or radial cuts the power is wrong by a dioptre or more, and so is the position that the formula takes from it.',
  whatToDo:
    'Add the method that was used, “other” among the formulas, with its print-out; or allow the remark with the reason.',
  source: 'Hoffer, J Cataract Refract Surg 1995;21:490-1 and later literature, from memory',
  since: '1.0',
  faulty: { note: 'comorbidity: [previous corneal refractive surgery]' },
  sound: {
    note: 'comorbidity: [previous corneal refractive surgery]\nplan:\n  formula: [other, SRK/T]\n  predicted-by: other',
  },
});
