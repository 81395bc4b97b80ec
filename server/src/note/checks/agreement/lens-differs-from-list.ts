import { operationCheck, type About } from '../check.ts';
import { lensToHold, listedLens } from '../support/department-lens.ts';
import { differs, lensInDoubt, sameName, samePower } from '../support/lenses.ts';
import { inDepartment } from '../support/place.ts';

export const lensDiffersFromList = operationCheck({
  id: 'lens-differs-from-list',
  group: 'agreement',
  summary: 'Maker, kind, pieces, material or optic of the lens differ from the department’s list.',
  severity: 'warning',
  allowable: true,
  run: (note, say, context) => {
    const { department } = context;
    if (lensInDoubt(note)) return;
    const lens = lensToHold(note);
    const listed = listedLens(department, lens);
    if (lens === undefined || listed === undefined || lens !== note.lens) return;
    const { lens: implanted } = note;
    const compared = [
      ['maker', implanted.maker, listed.maker, differs(implanted.maker, listed.maker, sameName)],
      ['kind', implanted.kind, listed.kind, differs(implanted.kind, listed.kind, (a, b) => a === b)],
      [
        'number of pieces',
        implanted.pieces,
        listed.pieces,
        differs(implanted.pieces, listed.pieces, (a, b) => a === b),
      ],
      [
        'material',
        implanted.material,
        listed.material,
        differs(implanted.material, listed.material, (a, b) => a === b),
      ],
      [
        'optic',
        implanted['optic-diameter'],
        listed['optic-diameter'],
        differs(implanted['optic-diameter'], listed['optic-diameter'], samePower),
      ],
    ] as const;
    for (const [name, here, there, different] of compared) {
      if (!different || here === undefined || there === undefined) continue;
      say({
        at: here,
        message: `Lens: the ${name} is ${here.text}, but ${listed.model?.text ?? 'this model'} is listed with ${there.text}.`,
        related: inDepartment(`the list: ${there.text}`, there, context),
      });
    }
  },
});

export const aboutLensDiffersFromList: About = () => ({
  why: 'The model says what the lens is: if the rest does not fit, the model or the rest is wrong.',
  whatToDo: 'Compare with the label of the box; correct the note, or the list.',
  source: 'IOL quality standard (RCOphth and UKOA 2018)',
  since: '1.0',
  faulty: { note: 'lens:\n  pieces: 3', files: { 'sideport.yaml': '' } },
  sound: { note: 'lens:\n  pieces: 1', files: { 'sideport.yaml': '' } },
});
