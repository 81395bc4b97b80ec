import { nearest } from '@sideport/schemas';
import { sameNumbers } from '@sideport/schemas/notation/likely-term.ts';
import { operationCheck, type About } from '../check.ts';
import { lensToHold, listedLens } from '../support/department-lens.ts';
import { lensInDoubt } from '../support/lenses.ts';
import { inDepartment } from '../support/place.ts';

export const lensNotInList = operationCheck({
  id: 'lens-not-in-list',
  group: 'agreement',
  summary: 'The lens is not in the department’s list of lenses.',
  severity: 'warning',
  allowable: true,
  run: (note, say, context) => {
    const list = context.department?.lenses;
    if (list === undefined || list.items.length === 0 || lensInDoubt(note)) return;
    const lens = lensToHold(note);
    const planned = note.plan?.lens;
    // A planned lens of the same name is the same slip.
    const others = planned === undefined || planned.model?.value === lens?.model?.value ? [] : [planned];
    for (const { model, maker } of [lens, ...others].filter((one) => one !== undefined)) {
      if (model === undefined || listedLens(context.department, { model, ...(maker && { maker }) }) !== undefined)
        continue;
      const near = nearest(
        model.value,
        // Another number is another lens, however near.
        list.items.flatMap((one) =>
          one.model !== undefined && sameNumbers(one.model.value, model.value) ? [one.model.value] : [],
        ),
      );
      say({
        at: model,
        message: `Lens: ${model.text} is not in the list of the department.${near === undefined ? '' : ` Is ${near} meant?`}`,
        related: inDepartment('the list of lenses', list.$, context),
      });
    }
  },
});

export const aboutLensNotInList: About = () => ({
  why: 'A misspelt model cannot be counted or recalled, and its constants are not found.',
  whatToDo: 'Correct the model from the box, or add the lens to the list.',
  source: 'IOL quality standard (RCOphth and UKOA 2018)',
  since: '1.0',
  faulty: {
    note: 'plan:\n  lens:\n    model: HY-1\nsafety:\n  lens-verified:\n    model: HY-1\nlens:\n  model: HY-1',
    files: { 'sideport.yaml': '' },
  },
  sound: { note: 'plan:\n  lens:\n    model: HX-1', files: { 'sideport.yaml': '' } },
});
