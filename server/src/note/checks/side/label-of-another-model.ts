import { labelValue } from '../../label/reading.ts';
import { operationCheck, type About } from '../check.ts';
import { listedLens } from '../support/department-lens.ts';
import { labelIsSound, labelOf } from '../support/label.ts';
import { implantedLens } from '../support/lenses.ts';
import { inDepartment, related } from '../support/place.ts';

export const labelOfAnotherModel = operationCheck({
  id: 'label-of-another-model',
  group: 'side and identity',
  summary: 'The scanned identifier belongs to another model than the one recorded.',
  severity: 'error',
  allowable: false,
  run: (note, say, context) => {
    const lens = implantedLens(note);
    const label = lens === undefined ? undefined : labelOf(lens, note.date?.value);
    if (lens?.udi === undefined || lens.model === undefined || label === undefined || !labelIsSound(label)) return;
    const scanned = labelValue(label, 'device-identifier');
    const listed = listedLens(context.department, lens)?.['device-identifier'];
    if (scanned === undefined || listed === undefined || listed.value === scanned) return;
    const owner = context.department?.lenses?.items.find((one) => one['device-identifier']?.value === scanned)?.model;
    say({
      at: lens.udi,
      message: `Lens: the scanned identifier is that of ${owner === undefined ? 'another model' : owner.text} (${scanned}), but ${lens.model.text} is recorded.`,
      related: [
        related(`recorded: ${lens.model.text}`, lens.model),
        ...inDepartment(`${lens.model.text}: ${listed.text}`, listed, context),
      ],
    });
  },
});

export const aboutLabelOfAnotherModel: About = () => ({
  why: 'What was scanned was on the box; if the model differs, another lens was opened than the record says.',
  whatToDo: 'Compare model and code with the box, and correct the wrong one by hand.',
  source: 'IOL quality standard (RCOphth and UKOA 2018); GS1 General Specifications (device identifier)',
  since: '1.0',
  faulty: {
    note: 'lens:\n  udi: (01)09521234543206(17)340630(10)L2031B(21)0040719101',
    files: { 'sideport.yaml': '' },
  },
  sound: { note: 'lens:\n  udi: (01)09521234543213(17)340630(10)L2031B(21)0040719101', files: { 'sideport.yaml': '' } },
});
