import { calculation } from '../calculation.ts';
import { quantity } from '../fields.ts';
import { found } from '../outcome.ts';
import { CITATIONS } from '../sources.ts';

interface BeforeAndAfter {
  readonly beforeLogmar: number;
  readonly afterLogmar: number;
}

const inputs = {
  beforeLogmar: quantity('acuity before', 'logMAR', -0.7, 3),
  afterLogmar: quantity('acuity after', 'logMAR', -0.7, 3),
};
const domain = 'Both measured in the same way (both with, or both without, correction).';
const example = { beforeLogmar: 0.6, afterLogmar: 0.1 };

export const linesGained = calculation<BeforeAndAfter, number>({
  name: 'lines-gained',
  topic: 'Acuity',
  definition: 'Lines of a logMAR chart gained; negative is lost.',
  inputs,
  unit: 'lines',
  domain,
  method: '(before - after) / 0.1',
  source: { citation: CITATIONS.holladay2004, status: 'seen' },
  example: { input: example, gives: 5 },
  compute: ({ beforeLogmar, afterLogmar }) => found((beforeLogmar - afterLogmar) / 0.1),
});

export const lettersGained = calculation<BeforeAndAfter, number>({
  name: 'letters-gained',
  topic: 'Acuity',
  definition: 'ETDRS letters gained; negative is lost.',
  inputs,
  unit: 'letters',
  domain,
  method: '(before - after) x 50, five letters to a line',
  source: { citation: CITATIONS.gregori2010, status: 'seen' },
  example: { input: example, gives: 25 },
  compute: ({ beforeLogmar, afterLogmar }) => found((beforeLogmar - afterLogmar) * 50),
});
