import { followUpCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';
import { dioptres } from '../support/words.ts';

const SURPRISE = 1;
const SETTLED = ['month 1', 'week 6', 'month 2', 'month 3', 'month 6', 'year 1'];

export const refractiveSurpriseUnexplained = followUpCheck({
  id: 'refractive-surprise-unexplained',
  group: 'sequence and consequence',
  summary: 'The refraction is more than a dioptre from the prediction, and nothing is said about it.',
  severity: 'warning',
  allowable: true,
  run: (note, say, { operation, operationFile }) => {
    const { refraction, visit } = note;
    const predicted = operation?.plan?.predicted;
    if (refraction === undefined || predicted === undefined || visit === undefined || !SETTLED.includes(visit.value))
      return;
    if (note['free-text'] !== undefined || operation?.lens?.['changed-because'] !== undefined) return;
    const equivalent = refraction.value.sphere + refraction.value.cylinder / 2;
    const error = equivalent - predicted.value.amount;
    if (Math.abs(error) <= SURPRISE) return;
    say({
      at: refraction,
      message: `Refraction: ${refraction.text} (${dioptres(equivalent)}) is ${Math.abs(error).toFixed(2)} D more ${error > 0 ? 'plus' : 'minus'} than the predicted ${predicted.text}, and nothing is said about it.`,
      related: [related(`predicted: ${predicted.text}`, predicted, operationFile)],
    });
  },
});

export const aboutRefractiveSurpriseUnexplained: About = () => ({
  why: 'A surprise is how a wrong lens, a wrong length or a slip of the sign is found, in time for the other eye.',
  whatToDo:
    'Compare the label of the lens and the biometry; say in “free-text” what was found, or correct the refraction.',
  source: 'Gale et al., Eye 2009;23:149-52 (85 % within 1 D as benchmark)',
  since: '1.0',
  faulty: { base: 'follow-up', note: 'refraction: +1.75 / -0.25 x 180' },
  sound: {
    base: 'follow-up',
    note: 'refraction: +1.75 / -0.25 x 180\nfree-text: lens checked against its card, biometry to be repeated before the second eye',
  },
});
