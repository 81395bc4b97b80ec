import { operationCheck, type About } from '../check.ts';
import { implantedLens, lensInDoubt } from '../support/lenses.ts';
import { othersWith, placeIn } from '../support/others.ts';

export const lotOfTwoModels = operationCheck({
  id: 'lot-of-two-models',
  group: 'across notes',
  summary: 'The same lot is recorded with another model elsewhere.',
  severity: 'warning',
  allowable: true,
  run: (note, say, context) => {
    if (lensInDoubt(note)) return;
    const { lot, model } = implantedLens(note) ?? {};
    if (lot === undefined || model === undefined) return;
    const other = othersWith(context, 'lensLot', lot.value).find(
      (facts) => facts.id !== note.id?.value && facts.lensModel !== undefined && facts.lensModel !== model.value,
    );
    if (other === undefined) return;
    say({
      at: lot,
      message: `Lens: lot ${lot.text} is recorded here with ${model.text}, but with ${other.lensModel} in ${other.file}. A lot is made of one model.`,
      related: placeIn(context, other.file, `the other model: ${other.lensModel}`, ({ kind, note: found }) =>
        kind === 'operation' ? found.lens?.lot : undefined,
      ),
    });
  },
});

export const aboutLotOfTwoModels: About = () => ({
  why: 'A lot is made of one model: a recall of the batch would then miss an eye or alarm a wrong one.',
  whatToDo: 'Compare both notes with the labels kept.',
  source: 'GS1 General Specifications (the lot belongs to a device identifier)',
  since: '1.0',
  faulty: {
    note: 'lens:\n  lot: L2031B',
    files: {
      'other.opnote.yaml':
        'id: OP-2031-0103\npatient:\n  ref: P-1050\nlens:\n  model: HT-3\n  serial: "0050719102"\n  udi: not recorded',
    },
  },
  sound: {
    note: 'lens:\n  lot: L2031B',
    files: {
      'other.opnote.yaml':
        'id: OP-2031-0103\npatient:\n  ref: P-1050\nlens:\n  model: HT-3\n  lot: L2031C\n  serial: "0050719102"\n  udi: not recorded',
    },
  },
});
