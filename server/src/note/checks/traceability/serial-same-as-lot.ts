import { operationCheck, type About } from '../check.ts';
import { implantedLens } from '../support/lenses.ts';
import { related } from '../support/place.ts';

export const serialSameAsLot = operationCheck({
  id: 'serial-same-as-lot',
  group: 'traceability',
  summary: 'Serial number and lot are the same.',
  severity: 'warning',
  allowable: true,
  run: (note, say) => {
    const { serial, lot } = implantedLens(note) ?? {};
    if (serial === undefined || lot === undefined || serial.value !== lot.value) return;
    say({
      at: lot,
      message: `Lens: serial number and lot are both ${lot.text}. Is one of them in the wrong field?`,
      related: [related(`serial number: ${serial.text}`, serial)],
    });
  },
});

export const aboutSerialSameAsLot: About = () => ({
  why: 'A lot has many lenses and a serial number one: one of the two was copied into the wrong field.',
  whatToDo: 'Copy each from its own line of the label.',
  source: 'GS1 General Specifications (10 is the lot, 21 the serial number)',
  since: '1.0',
  faulty: { note: 'without: lens.udi\nlens:\n  lot: "0040719101"' },
  sound: { note: 'without: lens.udi\nlens:\n  lot: L2031B' },
});
