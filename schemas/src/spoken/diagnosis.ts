import { comorbidities } from '../vocabulary/findings.ts';
import type { SpokenSection, SpokenValue } from './phrase.ts';

const opacity = '(cataract|cataracts|lens|sclerosis|opacity|change|changes|lens opacity|opacities)';

/** Diseases of the eye that are named in a dictation as in the vocabulary, with their synonyms. */
function comorbidityValues(): readonly SpokenValue[] {
  return comorbidities.words
    .filter(({ word }) => !['other', 'diabetes', 'narrow angle', 'dry eye'].includes(word))
    .map(({ word }) => ({ value: word, said: [fold(word)] }));
}

function fold(word: string): string {
  return word.toLowerCase().replace(/[-']/gu, ' ').replace(/\s+/gu, ' ');
}

/** Cataract, its grade, and what else is wrong with the eye. */
export function diagnosisSpoken(): SpokenSection {
  return {
    subjects: [{ id: 'cataract', named: ['cataract', 'cataracts'] }, { id: 'comorbidity' }],
    fields: [
      {
        path: 'diagnosis.cataract',
        about: ['cataract'],
        several: true,
        values: [
          {
            value: 'nuclear',
            said: [`nuclear ${opacity}`, '(nuclear sclerotic|nucleosclerotic|nuclear sclerosis) [cataract]'],
          },
          { value: 'nuclear', bound: true, said: ['nuclear'] },
          {
            value: 'cortical',
            said: [`cortical ${opacity}`, 'cortical (spoke|spokes|spoking)'],
          },
          { value: 'cortical', bound: true, said: ['cortical'] },
          {
            value: 'posterior subcapsular',
            said: [
              `posterior sub+capsular ${opacity}`,
              'posterior sub+capsular [plaque]',
              '(psc|p s c|psco) [(cataract|opacity|changes|change|plaque)]',
            ],
          },
          {
            value: 'white',
            said: [
              '[mature] (white|mature|intumescent) (cataract|lens|mature cataract)',
              'white [mature] [intumescent] (cataract|lens)',
              'intumescent white (cataract|lens)',
              'mature white (cataract|lens)',
              'totally white (cataract|lens)',
              'cataract $was [(totally|completely)] (white|mature)',
            ],
          },
          { value: 'white', bound: true, said: ['white', 'mature', 'intumescent'] },
          {
            value: 'brunescent',
            said: [
              `(brunescent|brown|black|brunescence) (cataract|lens|nucleus|nuclear cataract|nuclear sclerosis)`,
              'brunescent',
              'dense brown (cataract|nucleus)',
              'cataract $was brunescent',
            ],
            heard: [
              'brunette scent [cataract]',
              'brunes scent [cataract]',
              'brun essent [cataract]',
              'brunet sent [cataract]',
              'brew nescent [cataract]',
            ],
          },
          {
            value: 'posterior polar',
            said: [`posterior polar ${opacity}`, 'posterior polar', 'cataract $was posterior polar'],
            heard: ['posterior poller [cataract]', 'posterior poler [cataract]'],
          },
          { value: 'anterior polar', said: ['anterior polar [cataract]'] },
          { value: 'hypermature', said: ['(hypermature|hyper mature|morgagnian) [cataract]'] },
          { value: 'traumatic', said: ['traumatic cataract'] },
          { value: 'congenital', said: ['(congenital|infantile) cataract'] },
          { value: 'steroid-induced', said: ['steroid induced cataract'] },
        ],
      },
      {
        path: 'diagnosis.grade',
        about: ['cataract'],
        forms: [
          {
            said: [
              '(grade|graded) {number} (nuclear sclerosis|nuclear cataract|nuclear sclerotic cataract|nuclear|nuclear sclerotic)',
              '(nuclear sclerosis|nuclear cataract|nuclear sclerotic cataract|nuclear|nuclear sclerotic) [cataract] [$was] [graded] [as] (grade|graded|of grade) {number}',
              'nuclear grade [of|is|was] {number}',
              '(ns|n s|nuclear sclerosis|nuclear sclerotic cataract|n o) {number} [plus]',
              '{number} (plus|+) (nuclear sclerosis|nuclear sclerotic|ns|n s) [cataract]',
              '(nuclear|nucleus) (hardness|density|grade) [of|was|is] [grade] {number}',
              '(nucleus|nuclear) [$was] (grade|graded) {number}',
              'grade {number} nucleus',
            ],
            write: 'nuclear {}',
          },
          { said: ['grade {number}', 'graded {number}'], bound: true, write: 'nuclear {}' },
          {
            said: [
              '(grade|graded) {number} (nuclear sclerosis|nuclear cataract|nuclear sclerotic cataract|nuclear sclerotic)',
              '(nuclear sclerosis|nuclear cataract|nuclear sclerotic cataract|nuclear sclerotic) [cataract] [$was] [graded] [as] (grade|graded|of grade) {number}',
              '(ns|n s|nuclear sclerosis) {number} [plus]',
              '(nuclear|nuclear sclerotic) cataract {number} (plus|+)',
              '{number} (plus|+) (nuclear sclerosis|nuclear sclerotic|ns|n s) [cataract]',
            ],
            write: 'nuclear {}',
            also: [['diagnosis.cataract', 'nuclear']],
          },
        ],
      },
      {
        path: 'comorbidity',
        about: ['comorbidity'],
        several: true,
        values: comorbidityValues(),
      },
    ],
  };
}
