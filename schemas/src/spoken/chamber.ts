import type { SpokenField, SpokenSection } from './phrase.ts';

const ovd = '(viscoelastic|viscoelastics|visco+elastic|visco|ovd|o v d|ovds|viscosurgical device)';

/** Viscoelastic and dye. */
export function chamberSpoken(): SpokenSection {
  return {
    subjects: [
      {
        id: 'viscoelastic',
        named: [ovd],
        heard: [
          'viscose elastic',
          'vis go elastic',
          'fiscal elastic',
          'viscous elastic',
          'disco elastic',
          'visco lastic',
          'biscoelastic',
          'this go elastic',
          'whisky elastic',
          'visco plastic',
          'fisco elastic',
        ],
      },
      { id: 'methylcellulose', within: 'viscoelastic' },
      { id: 'hyaluronate', within: 'viscoelastic' },
      { id: 'dye', named: ['[capsule|capsular] (stain|dye)', '(capsular|capsule) staining'] },
    ],
    fields: [
      {
        path: 'ovd[cohesive].kind',
        about: ['viscoelastic'],
        values: [
          {
            value: 'cohesive',
            said: [`cohesive ${ovd}`, `${ovd} cohesive`, 'cohesive'],
            heard: [`(co hesive|co easy|co he sieve|coercive|co hesif|cohesion) [${ovd}]`],
          },
        ],
      },
      {
        path: 'ovd[dispersive].kind',
        about: ['viscoelastic'],
        values: [
          {
            value: 'dispersive',
            said: [`dispersive ${ovd}`, `${ovd} dispersive`, 'dispersive', 'viscodispersive'],
            heard: [`(this persive|dis persive|disperse if|dispersion|discursive|this purse of) [${ovd}]`],
          },
        ],
      },
      {
        path: 'ovd[viscoadaptive].kind',
        about: ['viscoelastic'],
        values: [{ value: 'viscoadaptive', said: ['visco+adaptive', `visco+adaptive ${ovd}`, 'visco [-] adaptive'] }],
      },
      {
        path: 'ovd[methylcellulose].agent',
        about: ['viscoelastic'],
        opens: 'methylcellulose',
        values: [
          {
            value: 'hydroxypropyl methylcellulose',
            said: [
              'hydroxypropyl methylcellulose',
              '[hydroxy+propyl] methyl+cellulose',
              'hpmc',
              'h p m c',
              'hypromellose',
              'hydroxypropylmethylcellulose',
              'hydroxy propyl methyl cellulose',
            ],
            heard: ['methyl sell you lows', 'methyl cellular', 'methyl cell you lose'],
          },
        ],
      },
      {
        path: 'ovd[hyaluronate].agent',
        about: ['viscoelastic'],
        opens: 'hyaluronate',
        values: [
          {
            value: 'sodium hyaluronate',
            said: ['sodium hyaluronate', '[sodium] hyaluronate', 'hyaluronic acid', 'sodium hyaluronic acid'],
            heard: [
              'sodium (high a lure on eight|hyla your nate|hi a luronate|hyaluronic|high allure on ate|high alluring eight)',
              'sodium hi al uronate',
            ],
          },
          {
            value: 'chondroitin sulphate with hyaluronate',
            said: ['chondroitin (sulphate|sulfate) [with|and|plus] [sodium] hyaluronate'],
          },
        ],
      },
      ...(
        [
          [
            'methylcellulose',
            'hydroxypropyl methylcellulose',
            '([hydroxy+propyl] methyl+cellulose|hydroxy propyl methyl cellulose|hydroxypropyl methylcellulose|hpmc)',
          ],
          ['hyaluronate', 'sodium hyaluronate', '[sodium] hyaluronate'],
        ] as const
      ).map(([id, agent, said]): SpokenField => ({
        path: `ovd[${id}].strength`,
        about: [id],
        forms: [
          {
            said: [
              `{number} (percent|per cent) [(cohesive|dispersive)] ${said}`,
              `${said} [,] [(of|at)] {number} (percent|per cent)`,
            ],
            write: '{} %',
            also: [[`ovd[${id}].agent`, agent]],
          },
        ],
      })),
      {
        path: 'dye',
        about: ['dye'],
        values: [
          {
            value: 'trypan blue',
            denied: 'none',
            said: [
              'trypan blue',
              'trypan [blue]',
              '[anterior] capsule [$was] (stained|dyed) (with|using) [trypan] blue',
              '[vision] blue dye',
              'blue (stain|dye)',
              'stained [the capsule] with trypan [blue]',
              'stained blue',
            ],
            heard: [
              '(try pan|tri pan|trip an|try pain|type an|tree pan|try pin|trippan|trypanned|tripe an|try panned) blue',
              '(try pan|tri pan|trip an)',
            ],
          },
          {
            value: 'none',
            said: [
              '(no|without) [capsule|capsular|trypan] (stain|dye|staining) [$was] [needed|required|used|necessary]',
              '(stain|dye|staining) (not|was not|wasnt|unnecessary) [needed|required|used|necessary]',
              '(capsule|it) (not|wasnt|was not) stained',
              'unstained capsule',
              '(did not|didnt) (stain|dye) [the] capsule',
              '[capsule] (dye|stain|staining) [,] [$was] (none|nil|no)',
            ],
          },
          { value: 'brilliant blue', said: ['brilliant blue'] },
          { value: 'indocyanine green', said: ['indocyanine green', 'icg'] },
        ],
      },
    ],
  };
}
