import { operationCheck, type About } from '../check.ts';
import { differs, implantedLens, sameName, samePower } from '../support/lenses.ts';
import { related } from '../support/place.ts';

export const implantedLensDiffersFromVerified = operationCheck({
  id: 'implanted-lens-differs-from-verified',
  group: 'side and identity',
  summary: 'Another lens was implanted than the one that was verified.',
  severity: 'error',
  allowable: false,
  run: (note, say) => {
    const lens = implantedLens(note);
    const verified = note.safety?.['lens-verified'];
    const model = differs(verified?.model, lens?.model, sameName);
    const power = differs(verified?.power, lens?.power, samePower);
    const at = power ? lens?.power : lens?.model;
    const other = power ? verified?.power : verified?.model;
    if ((!model && !power) || at === undefined || other === undefined) return;
    const name = (one: typeof lens | typeof verified) =>
      [model ? one?.model?.text : undefined, power ? one?.power?.text : undefined]
        .filter((text) => text !== undefined)
        .join(' ');
    say({
      at,
      message: `Lens: ${name(lens)} was implanted, but ${name(verified)} was verified before. Compare with the label of the box.`,
      related: [related(`verified: ${name(verified)}`, other)],
    });
  },
});

export const aboutImplantedLensDiffersFromVerified: About = () => ({
  why: 'A wrong lens is found here, between the verification on the table and the label of the box, or it is found by the patient.',
  whatToDo:
    'Compare the note with the label of the box and with the plan. If another lens was taken on purpose, it was verified too: record that verification.',
  source: 'IOL quality standard (RCOphth and UKOA 2018)',
  since: '1.0',
  faulty: { note: 'safety:\n  lens-verified:\n    power: +22.5 D' },
  sound: { note: 'safety:\n  lens-verified:\n    power: +21.50 D' },
});
