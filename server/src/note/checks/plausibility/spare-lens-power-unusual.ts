import { operationCheck, type About } from '../check.ts';
import { lengthOf } from '../support/measurements.ts';
import { neededPower } from '../support/needed-power.ts';
import { related } from '../support/place.ts';
import { dioptres } from '../support/words.ts';

/** Dioptres by which a lens for the sulcus or the chamber may be weaker than the one for the bag of the same eye. */
const WEAKER = 4;

export const spareLensPowerUnusual = operationCheck({
  id: 'spare-lens-power-unusual',
  group: 'plausibility',
  summary: 'The power of the spare lens is far from what the eye needs.',
  severity: 'warning',
  allowable: true,
  run: (note, say) => {
    const spare = note.plan?.['spare-lens']?.power;
    const [length, needed] = [lengthOf(note), neededPower(note)];
    if (spare === undefined || length === undefined || needed === undefined) return;
    const stronger = spare.value.amount - needed.power;
    if (stronger <= needed.margin && -stronger <= needed.margin + WEAKER) return;
    const power = note.plan?.lens?.power;
    say({
      at: spare,
      message: `Spare lens: ${spare.text} is far from what an eye of ${length.text} needs, roughly ${dioptres(needed.power, 0)} in the bag and somewhat less in front of it. Is it the spare lens of another eye?`,
      related: [
        related(`axial length: ${length.text}`, length),
        ...(power === undefined ? [] : [related(`the lens of the plan: ${power.text}`, power)]),
      ],
    });
  },
});

export const aboutSpareLensPowerUnusual: About = () => ({
  why: 'The spare lens is taken up when something has gone wrong and nobody has time to look at its power again.',
  whatToDo: 'Compare with the biometry of this eye.',
  source:
    'Retzlaff, Sanders and Kraff, J Cataract Refract Surg 1990;16:333-40 (SRK/T, from memory), as a rough guide; margins common practice, no source',
  since: '1.0',
  faulty: { note: 'plan:\n  spare-lens:\n    power: +2.5 D' },
  sound: { note: 'plan:\n  spare-lens:\n    power: +20.5 D' },
});
