import type { SpokenField, SpokenSection } from './phrase.ts';

const ovd = '(viscoelastic|viscoelastics|visco+elastic|visco|ovd|o v d|ovds|viscosurgical device)';
const notUsed = '(used|needed|required|necessary|done|performed|inserted|placed)';

/** Viscoelastic, dye, pupil. */
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
      {
        id: 'pupil',
        named: ['[the] pupil [size] [diameter]', '(dilated|dilatation|dilation) to', 'pupils'],
        heard: ['people', 'pew pill'],
      },
      { id: 'pupil aid', within: 'pupil' },
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
      {
        path: 'preop.pupil',
        about: ['pupil'],
        called: [
          '[the] (pupil|pupils) [size|diameter] [(dilated|dilating|dilates|opened|only|just|was|measured|measuring|at|of|to|is|came)] [(only|to|at|poorly to|just|up to)]',
          '(dilated|dilating|dilation|dilatation|poorly dilated|poor dilation) (to|at|of) [only|about|just]',
          'pupil diameter',
        ],
        amounts: [{ unit: 'mm', also: { mL: 1 }, bare: 'named', possible: [1, 10], usual: [2, 9] }],
        forms: [
          {
            said: [
              '{number} (millimetre|mm) pupil',
              '{number} (millimetre|mm) dilated pupil',
              'small pupil [of|at] {number} (millimetre|mm|millimetres)',
            ],
            write: '{} mm',
          },
        ],
      },
      {
        path: 'pupil-aid[none].kind',
        about: ['pupil aid', 'pupil'],
        values: [
          {
            value: 'none',
            as: ['pupil-aid', 'none'],
            denies: true,
            said: [
              `(no|without) [iris|pupil] (hooks|hook|rings|ring|retractors) (or|nor|and|/) [pupil|iris|expansion] (rings|ring|hooks|retractors|stretching|expanders|devices) [$was] [${notUsed}]`,
              `(no|without) (pupil|pupillary|iris|mechanical) (aid|aids|device|devices|expansion|expander|dilator|expansion device|expansion devices|dilation|stretching|manipulation|support) [$was|were] [${notUsed}]`,
              `no need (for|of) [pupil|iris] (hooks|rings|expansion|expanders|aids|devices|hooks or rings)`,
              'neither hooks nor rings [were] [used|needed|required]',
              'pupil (aid|aids|expansion) [,] (none|nil|not needed|not required|not used|was not needed|was not required|unnecessary)',
              '(hooks and rings|hooks or rings) (not|were not) (needed|required|used)',
              'no pupil expansion',
              'no (device|aid|devices|aids) [of any kind] [$was] [(needed|required|used|necessary)] for the pupil',
              '[the] pupil (needed|required|wanted) no (help|aid|aids|device|devices|assistance|support|expansion)',
              'no [iris] hooks needed',
            ],
          },
          {
            value: 'none',
            as: ['pupil-aid', 'none'],
            denies: true,
            implied: true,
            said: ['pupil (well dilated|dilated well) (no aids|without aids|unaided)'],
          },
          {
            value: 'none',
            as: ['pupil-aid', 'none'],
            denies: true,
            bound: true,
            said: [
              '[(and|so|it)] (needed|required|wanted) no (help|aid|aids|device|devices|assistance) [of any kind]',
              'no (device|aid|devices|aids) [of any kind]',
              'unaided',
            ],
          },
        ],
      },
      {
        path: 'pupil-aid[iris hooks].kind',
        about: ['pupil aid', 'pupil'],
        values: [
          {
            value: 'iris hooks',
            deniedAs: ['pupil-aid', 'none'],
            said: ['iris hooks', '[flexible] [iris|pupil] (hooks|hook|retractors|retractor)', 'iris retractor hooks'],
            heard: ['iris (hugs|hawks|hux|books)', 'i wrist hooks', 'virus hooks'],
          },
        ],
      },
      {
        path: 'pupil-aid[iris hooks].count',
        about: ['pupil aid'],
        amounts: [{ unit: '', bare: 'subject', possible: [1, 8], whole: true }],
        forms: [
          {
            said: [
              '{count} [flexible|disposable|nylon] [iris|pupil] (hooks|hook|retractors)',
              '[iris|pupil] (hooks|retractors) (x|times|by) {number}',
              '[iris] hooks [(numbering|were placed)] ({number} in number)',
            ],
            also: [['pupil-aid[iris hooks].kind', 'iris hooks']],
          },
        ],
      },
      {
        path: 'pupil-aid[expansion ring].kind',
        about: ['pupil aid', 'pupil'],
        values: [
          {
            value: 'expansion ring',
            deniedAs: ['pupil-aid', 'none'],
            said: [
              'pupil expansion ring',
              '[pupil|pupillary|iris] (expansion|expander|dilation|dilating|dilator) (ring|device)',
              '(pupil|pupillary|iris) (ring|expander)',
              'ring expander',
              '(pupil|pupillary|iris) (expansion|expanding|dilating) ring',
            ],
          },
        ],
      },
      {
        path: 'pupil-aid[stretch].kind',
        about: ['pupil aid', 'pupil'],
        values: [
          {
            value: 'stretch',
            deniedAs: ['pupil-aid', 'none'],
            said: [
              '(pupil|iris|pupillary|bimanual) (stretch|stretching|stretched)',
              '(pupil|iris) $was (stretched|manually stretched)',
              '(stretched|stretching) [of] [the] (pupil|iris)',
              'bimanual (pupil|iris) stretch',
              'bimanual stretch of the pupil',
              'mechanical (stretch|stretching)',
            ],
          },
          {
            value: 'stretch',
            bound: true,
            deniedAs: ['pupil-aid', 'none'],
            said: ['(gave|given) (it|the pupil) a [(gentle|quick|little)] stretch', '(stretched|stretch) it'],
          },
        ],
      },
      {
        path: 'pupil-aid[phenylephrine].kind',
        about: ['pupil aid', 'pupil'],
        values: [
          {
            value: 'intracameral phenylephrine',
            deniedAs: ['pupil-aid', 'none'],
            said: [
              'intra+cameral [preservative free] (phenylephrine|adrenaline phenylephrine)',
              'phenylephrine (intra+cameral|intra+camerally|into the [anterior] chamber|in the anterior chamber)',
              'phenylephrine [$was] [injected|given|instilled]',
            ],
            heard: ['intra+cameral (fennel effrin|fennel ephrin|phenol ephrine|fenilefrin|fennel f rin|phenyl effrin)'],
          },
        ],
      },
    ],
  };
}
