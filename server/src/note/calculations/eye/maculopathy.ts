import { calculation } from '../calculation.ts';
import { choice } from '../fields.ts';
import { found } from '../outcome.ts';
import { CITATIONS } from '../sources.ts';

const CATEGORIES = [0, 1, 2, 3, 4] as const;
/** Category of myopic maculopathy in the classification with plus lesions, 0 to 4. */
export type MaculopathyCategory = (typeof CATEGORIES)[number];

const MEANING: Readonly<Record<MaculopathyCategory, string>> = {
  0: 'no myopic retinal lesions',
  1: 'tessellated fundus only',
  2: 'diffuse chorioretinal atrophy',
  3: 'patchy chorioretinal atrophy',
  4: 'macular atrophy',
};

const CATEGORY = choice('category of myopic maculopathy', CATEGORIES);
const cautions = ['Not the older scale M0 to M5: do not mix the two.'];

export const maculopathyMeaning = calculation<{ category: MaculopathyCategory }, string>({
  name: 'myopic-maculopathy-meaning',
  topic: 'Eye',
  definition: 'What a category of myopic maculopathy means.',
  inputs: { category: CATEGORY },
  unit: '',
  domain: 'Lacquer cracks, myopic neovascularisation and Fuchs spot are plus lesions, recorded beside the category.',
  method: 'table of the classification',
  source: { citation: CITATIONS.metaPm, status: 'seen second-hand' },
  cautions,
  example: { input: { category: 2 }, gives: 'diffuse chorioretinal atrophy' },
  compute: ({ category }) => found(MEANING[category]),
});

type Fundus = { category: MaculopathyCategory; staphyloma: boolean };

export const pathologicMyopia = calculation<Fundus, boolean>({
  name: 'pathologic-myopia',
  topic: 'Eye',
  definition: 'Whether the myopia is pathologic.',
  inputs: { category: CATEGORY, staphyloma: choice('posterior staphyloma', [true, false]) },
  unit: '',
  domain: 'By the fundus, not by refraction or axial length.',
  method: 'category 2 or more, or a posterior staphyloma',
  source: { citation: CITATIONS.metaPm, status: 'seen' },
  cautions,
  example: { input: { category: 1, staphyloma: true }, gives: true },
  compute: ({ category, staphyloma }) => found(category >= 2 || staphyloma),
});
