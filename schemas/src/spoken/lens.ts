import type { SpokenAmount, SpokenSection } from './phrase.ts';

const degrees: SpokenAmount = { unit: '°', bare: 'named', possible: [0, 360], whole: true };
const aim =
  '(target|target refraction|refractive target|targeted|targeting|aim|aiming|aimed|aiming for|aimed for|aim for|aiming at|aimed at|intended refraction|refractive aim|postoperative target|post operative target|planned refraction|desired refraction|target spherical equivalent|refraction target) [(of|for|at|is|was|to be|to leave|about|a)]';
const at = '(at|on|to|with|along) [(the|axis|meridian|an axis of|a)]';

/** The lens, and the refraction aimed at. */
export function lensSpoken(): SpokenSection {
  return {
    subjects: [
      {
        id: 'lens',
        named: ['[a|the] $lens', 'intraocular implant', 'optic'],
        heard: [
          '(lends|lance|lenz|lands|lence|glands)',
          '(eye oh el|i o el|iowa|eye o l)',
          'inter ocular lens',
          'intra ocular lance',
        ],
      },
    ],
    fields: [
      {
        path: 'lens.power',
        about: ['lens'],
        critical: true,
        called: [
          '[$lens] power [(of|is|was)]',
          '(spherical|sphere) [power|equivalent]',
          '$lens [(of|was|is|with)] power [of]',
        ],
        amounts: [
          {
            unit: 'D',
            bare: 'subject',
            possible: [-25, 50],
            usual: [4, 32],
            bareWithin: [-20, 45],
            signed: true,
            byDefault: 'signed',
          },
        ],
        forms: [{ said: ['{number} [(dioptres|dioptre|d)] (that|which|is what) [actually] went in'], write: '{} D' }],
      },
      {
        path: 'lens.cylinder',
        about: ['lens'],
        critical: true,
        called: [
          '[a|with|with a|the] (cylinder|cyl|toric power|cylindrical power|cylinder power|cylindrical|toricity|astigmatic power) [(power|of|was|is)] [of]',
          'dioptres of (cylinder|cyl)',
        ],
        calledHeard: ['(silly under|cillinder|sill in der|sealing her|cinder|selander|sillinder)'],
        amounts: [{ unit: 'D', bare: 'named', namedOnly: true, possible: [0.5, 15], signed: true }],
        forms: [
          {
            said: [
              '{number} (dioptres|dioptre|d) [of] (cylinder|cyl|toricity|astigmatic correction|cylindrical power|toric correction|cylinder power|of astigmatism)',
              '{number} (dioptre|d) (cylinder|cyl|toric)',
            ],
            write: '{} D',
          },
        ],
      },
      {
        path: 'lens.axis',
        about: ['lens'],
        critical: true,
        called: [
          '(rotated|turned|dialled|brought|swung) [(the|its)] ($lens|toric) [(round|around)] (to|onto) [(the|axis)]',
          '[(its|the)] marks (sat|sit|lay|lie|rest|are|were) (on|at) [the]',
          `[toric|lens] (axis|aligned|lined up|alignment|orientated|oriented|rotated|marks aligned|dialled|toric marks|rotated into position|rotated and aligned|rotated to|lens axis) ${at}`,
          '[lens|toric|implant|implantation|implanted|final] axis [(of|is|was|at)]',
          'aligned',
        ],
        calledThen: [`(positioned|placed|set|marks) ${at}`, '(on|at) [the] (axis|meridian) [of]'],
        amounts: [degrees, { ...degrees, bare: 'after at' }],
        forms: [{ said: ['[the|on the] {number} (degree|degrees) (mark|meridian|axis)'], bound: true, write: '{}°' }],
      },
      {
        path: 'plan.target',
        about: ['lens'],
        critical: true,
        called: [aim],
        calledHeard: ['(targeted at|tar get|argot|aiming form) [of]'],
        amounts: [{ unit: 'D', bare: 'named', namedOnly: true, possible: [-12, 6], signed: true }],
        values: [
          {
            value: '0 D',
            said: [
              `${aim} (plano|emmetropia|zero|emmetropic)`,
              '(target|aim) [is|was|for] [to be] (plano|emmetropia|emmetropic)',
              '(plano|emmetropia|emmetropic) (target|aim|targeted)',
              '(aiming|aimed|aim) for (plano|emmetropia|zero)',
            ],
          },
        ],
      },
      {
        path: 'plan.predicted',
        about: ['lens'],
        called: [
          '(predicted|predicting|expected) (refraction|spherical equivalent|post operative refraction) [(of|was|is)]',
          '(predicted|predicting|expected)',
        ],
        amounts: [{ unit: 'D', bare: 'named', namedOnly: true, possible: [-15, 10], signed: true }],
      },
      {
        path: 'lens.optic-diameter',
        about: ['lens'],
        called: ['optic (diameter|size) [of|is|was]', 'optic'],
        amounts: [{ unit: 'mm', bare: 'never', possible: [4.5, 8], usual: [5.5, 7] }],
      },
      {
        path: 'lens.pieces',
        about: ['lens'],
        values: [
          {
            value: '1',
            said: ['(one|single|1) [-] (piece|pieced|pc)', 'one piece (acrylic|foldable)', 'single piece acrylic'],
            heard: ['(one|won|single|wan|juan) (peace|peas|peice|pease)', 'won piece', 'wan piece'],
          },
          {
            value: '3',
            said: ['(three|3|multi) [-] (piece|pieced|pieces|pc)', 'multipiece', 'three piece (acrylic|foldable)'],
            heard: ['(three|tree|free) (peace|peas|peice|pease)', '(tree|free) piece'],
          },
        ],
      },
      {
        path: 'lens.material',
        about: ['lens'],
        values: [
          {
            value: 'hydrophobic acrylic',
            said: ['hydrophobic acrylic', 'hydro+phobic [-] [acrylic]', 'acrylic hydro+phobic'],
            heard: [
              '(hydra|high dro|hydro|hydrogen|hi dro|hydrate|hide row) (phobic|phobia|forbic|foe bick|phobics|fobic) [(acrylic|a crylic|acrillic|a krill ick|a cry lick|crylic)]',
              'hydro phobic (a crylic|acrillic|a krill ick|a cry lick|idyllic|a real ick)',
            ],
          },
          {
            value: 'hydrophilic acrylic',
            said: ['hydrophilic acrylic', 'hydro+philic [-] [acrylic]', 'acrylic hydro+philic'],
            heard: [
              '(hydra|high dro|hydro|hydrogen|hi dro|hydrate|hide row) (philic|fillick|filic|phyllic|phillic|philip|fill ick|full ick) [(acrylic|a crylic|acrillic|a krill ick|a cry lick|crylic)]',
            ],
          },
          { value: 'silicone', said: ['silicone', 'silicon'] },
          {
            value: 'PMMA',
            said: [
              'pmma',
              'p m m a',
              'poly methyl methacrylate',
              'polymethylmethacrylate',
              'polymethyl methacrylate',
              'perspex',
            ],
            heard: ['pm ma', 'p mm a', 'pee em em a', 'p m ma'],
          },
        ],
      },
      {
        path: 'lens.kind',
        about: ['lens'],
        values: [
          {
            value: 'monofocal',
            said: ['monofocal', 'mono+focal'],
            heard: ['mono (vocal|folk al|fo cal)', 'monofocle'],
          },
          {
            value: 'toric',
            said: ['toric [$lens]', 'toric monofocal'],
            heard: ['(torrid|tor ick|doric|toric k|tori|caloric|historic|tore rick|torque) (lens|implant|iol)'],
          },
          { value: 'multifocal', said: ['(multi+focal|tri+focal|bi+focal)'], heard: ['multi (vocal|folk al|fo cal)'] },
          { value: 'toric multifocal', said: ['toric (multi+focal|tri+focal)', '(multi+focal|tri+focal) toric'] },
          {
            value: 'extended depth of focus',
            said: [
              'extended [-] depth [-] [of] [-] [focus]',
              '(edof|e d o f|enhanced depth of focus|extended range of vision|extended range)',
            ],
            heard: ['extended (deaf|death) of focus', 'e dof', 'he doff'],
          },
          {
            value: 'anterior chamber',
            said: [
              '(anterior chamber|angle supported|angle fixated) [(angle supported)] $lens',
              '(aciol|ac iol|a c i o l|ac lens|a c lens|ac implant)',
            ],
            also: [['lens.placed', 'anterior chamber']],
          },
          {
            value: 'iris-claw',
            said: ['iris [-] claw [$lens]', '(iris claw|iris clip|iris fixated claw|claw) lens', 'irisclaw'],
            heard: [
              '(iris|i wrist|virus|eye rest|irish) (clore|clause|clor|call|law|close|clore) [lens]',
              '(virus|irish) claw [lens]',
            ],
          },
        ],
      },
      {
        path: 'lens.serial',
        about: ['lens'],
        forms: [
          {
            said: ['[lens] serial [number|no] [,] [(is|was)] {serial}', 's / n {serial}', 'sn {serial}'],
            heard: ['(cereal|several) [number] {serial}'],
          },
          {
            corrected: true,
            said: [
              '[lens] serial [number|no] [,] [(is|was)] {serial} [,] [(no|sorry)] [,] (correction|no|sorry|i mean|scratch that|delete that|make that|rather|actually) [,] {serial}',
            ],
          },
        ],
      },
      {
        path: 'lens.card-given',
        about: ['lens'],
        values: [
          {
            value: 'yes',
            denied: 'no',
            said: ['implant card given', '(implant|lens) card [$was] (given|handed over)'],
          },
        ],
      },
      { path: 'lens.lot', about: ['lens'], forms: [{ said: ['(lot|batch) [number|no] [is] {serial}'] }] },
    ],
  };
}
