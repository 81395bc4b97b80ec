import { operationCheck, type About } from '../check.ts';
import { USUAL_INDEX } from '../../calculations/keratometry/index-of-refraction.ts';
import { inDepartment } from '../support/place.ts';

export const keratometricIndexDiffers = operationCheck({
  id: 'keratometric-index-differs',
  group: 'agreement',
  summary: 'The keratometric index is not the usual one of this department.',
  severity: 'warning',
  allowable: true,
  run: ({ preop }, say, context) => {
    const { department } = context;
    const index = preop?.biometry?.index;
    const usual = department?.['keratometric-index'];
    if (index === undefined || index.value.amount === (usual?.value.amount ?? USUAL_INDEX)) return;
    say({
      at: index,
      message: `Keratometry: the index ${index.text} is not the usual ${usual?.text ?? USUAL_INDEX}, so that the powers cannot be compared.`,
      related: inDepartment('the usual index', usual, context),
    });
  },
});

export const aboutKeratometricIndexDiffers: About = () => ({
  why: 'The same cornea reads almost a dioptre lower with index 1.332; formulas expect 1.3375.',
  whatToDo: 'Compare with the print-out. If the device uses another index, convert the powers before a lens is chosen.',
  source: 'ISO 10343 (index 1.3375; from memory)',
  since: '1.0',
  faulty: { note: 'preop:\n  biometry:\n    index: 1.3320' },
  sound: { note: 'preop:\n  biometry:\n    index: 1.3375' },
});
