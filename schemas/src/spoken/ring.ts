import { ringReasons } from '../vocabulary/outcome.ts';
import type { SpokenSection } from './phrase.ts';

/** The capsular tension ring. */
export function ringSpoken(): SpokenSection {
  return {
    subjects: [{ id: 'ring', named: ['ring'] }],
    fields: [
      {
        path: 'ring.used',
        about: ['ring'],
        values: [
          { value: 'no', denies: true, said: ['no tension ring', '(tension ring|ctr) [,] (none|no|nil)'] },
          {
            value: 'no',
            denies: true,
            implied: true,
            said: [
              '(no|without) [a] ring [(was|is)] [(needed|used|required|implanted|inserted)]',
              'ring [,] (none|no|nil)',
            ],
          },
          {
            value: 'yes',
            denied: 'no',
            said: [
              'capsular tension ring',
              '[a|the] [(standard|plain|conventional|preloaded)] $ring',
              '(bag|capsule|capsular bag) (supported|stabilised) (with|by) [a] (ring|$ring)',
            ],
            heard: [
              '(captain|captains|capture|capsular|capsule|caps you lar) (tension|attention|pension) (ring|bring|wing)',
              'attention ring',
              'tenshun ring',
              'see tea are',
              'c t are',
              'capsular tension (wing|bring|rink)',
            ],
          },
        ],
      },
      {
        path: 'ring.size',
        about: ['ring'],
        called: ['ring (size|diameter)'],
        forms: [
          {
            said: [
              '{pair} [(capsular|capsule)] [tension] ring',
              '{pair} ctr',
              '$ring [(of|size|sized|a|measuring)] {pair}',
              'ring [(of|size|sized|measuring)] {pair}',
              '{pair} (sized|size) $ring',
            ],
            write: '{} mm',
            also: [['ring.used', 'yes']],
          },
          { said: ['[size|sized|of] {pair}'], bound: true, write: '{} mm' },
        ],
      },
      {
        path: 'ring.placed',
        about: ['ring'],
        values: [
          {
            value: 'capsular bag',
            bound: true,
            also: [['ring.used', 'yes']],
            said: ['(in|into|inside|within) [the] [capsular] bag', '[the] capsular bag', '(in|within) the capsule'],
          },
          { value: 'sulcus', bound: true, also: [['ring.used', 'yes']], said: ['(in|into) [the] [ciliary] sulcus'] },
        ],
      },
      {
        path: 'ring.reason',
        about: ['ring'],
        several: true,
        values: ringReasons.words
          .filter(({ word }) => word !== 'other')
          .map(({ word, synonyms }) => ({
            value: word,
            bound: true,
            said: [word, ...synonyms].map((text) => `(for|because of|due to) [(a|the)] ${text}`),
          })),
      },
      {
        path: 'ring.inserted',
        about: ['ring'],
        values: [
          {
            value: 'before nucleus removal',
            bound: true,
            said: ['before (nucleus removal|the nucleus|phaco|nuclear removal)'],
          },
          {
            value: 'before cortex removal',
            bound: true,
            said: [
              '(before (cortex removal|the cortex|cortex|irrigation and aspiration)|after (nucleus removal|the nucleus))',
            ],
          },
          {
            value: 'after cortex removal',
            bound: true,
            said: ['after (cortex removal|the cortex|cortex|irrigation and aspiration|cortical clean up)'],
          },
          { value: 'after lens insertion', bound: true, said: ['after (lens insertion|the lens|the implant)'] },
        ],
      },
      {
        path: 'ring.result',
        about: ['ring'],
        values: [
          {
            value: 'bag round and centred',
            bound: true,
            said: [
              'bag [$was] (round and centred|stable|well centred|round|centred)',
              '(with a|leaving a) (round|stable|centred) bag',
            ],
          },
          { value: 'bag still decentred', bound: true, said: ['bag [still] decentred'] },
        ],
      },
    ],
  };
}
