import { operationCheck, type About } from '../check.ts';
import { implantsLens, wasAbandoned } from '../support/course.ts';
import { implantedLens } from '../support/lenses.ts';
import { placeOfMissing } from '../support/place.ts';
import { isWritten } from '../support/written.ts';

export const lensWithoutSerialOrLot = operationCheck({
  id: 'lens-without-serial-or-lot',
  group: 'traceability',
  summary: 'A lens is recorded without serial number and without lot.',
  severity: 'unfinished',
  allowable: true,
  run: (note, say, context) => {
    const lens = implantedLens(note);
    if (lens === undefined || context.status === 'planned' || !implantsLens(note) || wasAbandoned(note)) return;
    const keys = ['serial', 'lot', 'udi'] as const;
    if (
      keys.some(
        (key) => lens[key] !== undefined || lens.$.said[key] !== undefined || isWritten(context.reading, ['lens', key]),
      )
    )
      return;
    say({
      at: placeOfMissing(context, lens),
      message:
        'Lens: neither serial number nor lot is recorded, so that the eye cannot be found when a batch is recalled.',
    });
  },
});

export const aboutLensWithoutSerialOrLot: About = () => ({
  why: 'When a batch is recalled, the eye can be found by nothing else.',
  whatToDo: 'Copy the serial number or the lot from the label of the box, or scan its code into “udi”.',
  source: 'RCS Good Surgical Practice 2014, 1.3 (prosthesis, including serial numbers); FDA UDI formats 2017',
  since: '1.0',
  faulty: { note: 'without: lens.serial, lens.lot, lens.udi' },
  sound: { note: 'without: lens.lot, lens.udi' },
});
