import type { SpokenSection } from './phrase.ts';

const notUsed = '(used|needed|required|necessary|done|performed|inserted|placed)';

/** The pupil, and what widened it. */
export function pupilSpoken(): SpokenSection {
  return {
    subjects: [
      {
        id: 'pupil',
        named: ['[the] pupil [size] [diameter]', '(dilated|dilatation|dilation) to', 'pupils'],
        heard: ['people', 'pew pill'],
      },
      { id: 'pupil aid', within: 'pupil' },
    ],
    fields: [
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
              'pupil [,] nothing (needed|required|used|necessary) [for it]',
              'nothing (needed|required|used|necessary) for (it|the pupil)',
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
