import type { SpokenAmount, SpokenSection } from './phrase.ts';

const ia =
  '(irrigation [and] aspiration|irrigation / aspiration|irrigation aspiration|i / a|i and a|i a|ia|cortical (clean up|cleanup|removal|aspiration|wash out)|cortex (removal|aspiration|clean up)|removal of (cortex|[the] soft lens matter)|aspiration of (cortex|[the] (cortex|soft lens matter)))';
const mmhg: SpokenAmount = { unit: 'mmHg', bare: 'named', possible: [5, 750] };

/** Hydrodissection, nucleus, machine settings, cortex. */
export const nucleusSpoken: SpokenSection = {
  subjects: [
    { id: 'hydrodissection' },
    {
      id: 'nucleus',
      named: [
        '[the] nucleus [$was] [(removed|divided|disassembled|dismantled|emulsified|rotated and removed|cracked and removed|fragmented|dealt with|broken up|came out)] [(by|with|using|via|through)] [a|the]',
        'nuclear (removal|disassembly|fragmentation|emulsification)',
        '(chop|phaco|nucleus|nuclear) technique',
        'technique',
      ],
      heard: ['new clear us', 'nuclears'],
    },
    { id: 'machine', named: ['(machine|phaco) (settings|parameters)', 'settings', 'parameters'] },
    {
      id: 'cortex',
      named: [
        ia,
        '[residual|remaining|all|the|any] (cortex|cortical matter|soft lens matter|cortical remnants|lens matter) [$was] [(removed|aspirated|cleared|cleaned|stripped|washed out|cleaned up|taken out)]',
      ],
      heard: ['(irrigation|a irrigation) aspersion', 'eye and a', 'eye an a', 'high and a'],
    },
  ],
  fields: [
    {
      path: 'hydrodissection.cortex',
      about: ['hydrodissection'],
      values: [
        {
          value: 'yes',
          denied: 'no',
          said: [
            '[cortical] [cleaving] hydro+dissection',
            'hydro+dissected',
            '(hd|h d|hdiss)',
            'cortical cleavage',
            'hydro+dissection and rotation',
          ],
          heard: [
            '(hydra|high dro|hydro|hydrogen|hi dro|hide row|hydrate) (dissection|this section|the section|section|direction|the sexual)',
            '(hydrosection|hydradissection)',
          ],
        },
      ],
    },
    {
      path: 'hydrodissection.delineation',
      about: ['hydrodissection'],
      values: [
        {
          value: 'yes',
          denied: 'no',
          said: [
            'hydro+delineation',
            '(hdel|hdl|h del|hdelin)',
            'hydro+delamination',
            'hydro+demarcation',
            'hydro+delineated',
            'golden ring',
          ],
          heard: [
            '(hydra|high dro|hydro|hydrogen) (deli nation|delineate|the lineation|deal in nation|delin eation|line eation|the alienation)',
          ],
        },
      ],
    },
    {
      path: 'nucleus.technique',
      about: ['nucleus'],
      values: [
        {
          value: 'divide and conquer',
          said: [
            '(divide|divided|dividing) [and|-|&|n] (conquer|conquered|conquering)',
            'four quadrant divide and conquer',
            'd and c',
            'dnc',
          ],
          heard: [
            '(divide|the vide|divided|device) (and|in|an|on) (conker|concur|conk her|conga|conger|cong kerr|concrete|conkers)',
            'dividing conquer',
            'divine and conquer',
          ],
        },
        {
          value: 'stop and chop',
          said: ['stop (and|-|&|n) [-] chop', 'stop chop', 'stop and chopped', 's and c'],
          heard: [
            '(stop|stopped|stock|top|shop) (in|an|and|at) (chop|shop|job|chopped|chap)',
            'stopping chop',
            'stop and shop',
          ],
        },
        {
          value: 'horizontal chop',
          bound: true,
          said: ['horizontal', 'horizontally'],
        },
        { value: 'vertical chop', bound: true, said: ['vertical', 'vertically'] },
        {
          value: 'horizontal chop',
          said: [
            'horizontal [-] (chop|chopping|phaco chop|chop technique)',
            '(chop|chopping|phaco chop|chop technique) horizontal [technique]',
            '(chop|chopping) [technique] horizontally',
            'chopped horizontally',
          ],
          heard: ['horizontal (shop|job|chap|chalk)', 'horizon tall chop', 'horizontally chop'],
        },
        {
          value: 'horizontal chop',
          bound: true,
          said: ['horizontal', 'horizontally'],
        },
        { value: 'vertical chop', bound: true, said: ['vertical', 'vertically'] },
        {
          value: 'horizontal chop',
          said: ['phaco chop', 'phaco chopping', 'direct chop', 'primary chop'],
          implied: true,
        },
        {
          value: 'vertical chop',
          said: [
            'vertical [-] (chop|chopping|phaco chop|chop technique)',
            '(chop|chopping|phaco chop|chop technique) vertical',
            'chopped vertically',
            '(chop|chopping) vertically',
          ],
          heard: ['vertical (shop|job|chap|chalk)', 'vertically chop'],
        },
        {
          value: 'quick chop',
          said: ['(quick|quic) [-] (chop|chopping|phaco chop)', 'phaco quick chop'],
          heard: ['quick (shop|job|chap|chalk)', 'quit chop', 'quickshop'],
        },
        {
          value: 'flip',
          said: [
            'phaco [-] flip',
            '(chip and flip|phaco flip|flip technique|flip and chip|supracapsular [flip]|supra capsular flip)',
            '(nucleus|nuclear) [$was] (flip|flipped)',
          ],
          heard: ['(fake oh|faco|fako|faker|fake o) flip'],
        },
        {
          value: 'prechop',
          said: [
            'pre+chop',
            'pre+chopped',
            'pre+chopping',
            'pre+chopper',
            'pre chop technique',
            'prechopping technique',
          ],
          heard: ['(pre|free|pray) (shop|job)'],
        },
        {
          value: 'manual expression',
          said: [
            'manual (expression|delivery|extraction) [of the (nucleus|lens)]',
            '(nucleus|lens) [$was] (expressed|manually expressed|delivered manually|expressed manually|hydroexpressed|delivered by (manual expression|expression)|manually delivered|prolapsed and delivered|delivered|expressed out)',
            '(nucleus|nuclear) (expression|delivery)',
            'expression of the (nucleus|lens)',
            '(expressed|delivered) the (nucleus|lens)',
            'hydro+expression [of the nucleus]',
            'visco+expression [of the nucleus]',
          ],
        },
        {
          value: 'manual fragmentation',
          said: ['(sandwich|phacofragmentation|phaco fragmentation|manual fragmentation) [technique]'],
        },
        { value: 'aspiration', said: ['lens (aspiration|washout|wash out)', 'lensectomy'] },
      ],
    },
    {
      path: 'nucleus.steps[settings].bottle-height',
      about: ['machine'],
      called: [
        '[the|with|with the] [infusion|irrigation] bottle [height] [(lowered|raised|dropped|reduced|kept|set|turned down|at|down|up|was|of|to|is|held)] [(to|at|low at)]',
        'infusion height',
        'irrigation height',
        'height of [the] bottle',
        '(bh|b h|bottle ht|bottle)',
      ],
      calledHeard: [
        'bottle (hide|hi|heights|high|hyde|hate|heist|hiked|tide|eight)',
        '(bottom|battle|bottled|boggle|bubble) (height|hide|hight)',
      ],
      amounts: [{ unit: 'cm', bare: 'named', also: { mm: 0.1 }, possible: [10, 160] }],
    },
    {
      path: 'nucleus.steps[settings].set-pressure',
      about: ['machine'],
      called: [
        '(target|set|infusion|irrigation|active) [infusion] (pressure|iop|i o p|intraocular pressure) [(set|of|at|was|to)] [(at|to)]',
        'target (iop|i o p|intraocular pressure|pressure)',
        'intraocular pressure [(set|setting|target)] [(at|to)]',
        '(iop|i o p) (set|setting|target|at|of) [at|to]',
        '(iop|i o p)',
      ],
      amounts: [{ ...mmhg, possible: [10, 130], namedOnly: true }],
    },
    {
      path: 'nucleus.steps[settings].vacuum',
      about: ['machine'],
      called: [
        '[maximum|max|the|phaco] (vacuum|vac|vacuum limit) [(limit|level|setting|set|of|at|was|to|is|up to|limited)] [(at|to)]',
        '[the] (vacuum|vac)',
      ],
      calledHeard: ['(back you|vac you|vacume|back room|vacuums|vaccum|vaccine|vacu um|back um|vack you um|fact you)'],
      amounts: [{ ...mmhg, bare: 'named', possible: [5, 750] }],
    },
    {
      path: 'nucleus.steps[settings].flow',
      about: ['machine'],
      called: [
        '[aspiration|the|maximum|max] (flow|flow rate|aspiration rate|aspiration flow|aspiration flow rate) [(rate|set|of|at|was|to|is)] [(at|to)]',
        'aspiration [(at|of|was|set at)]',
        '(afr|a f r)',
      ],
      calledHeard: ['(flo|flaw|floor|flown|flows) [rate]'],
      amounts: [{ unit: 'mL/min', bare: 'named', possible: [2, 100], also: { mL: 1 } }],
    },
    {
      path: 'nucleus.steps[settings].power',
      about: ['machine'],
      called: [
        '[the|phaco|ultrasound|max|maximum|us|u s|u / s|torsional|longitudinal|phaco max] power [(limit|setting|set|of|at|was|to|is|limited|up to)] [(at|to)]',
        'phaco (energy|percent)',
        'pwr',
        '(amplitude|torsional amplitude)',
      ],
      calledHeard: ['(pour|pow her|powder|tower)'],
      amounts: [{ unit: '%', bare: 'named', possible: [1, 100] }],
    },
    {
      path: 'nucleus.ultrasound-time',
      about: ['machine'],
      called: [
        '[total|the|effective|elapsed|absolute] (phaco|ultrasound|us|u s|u / s|phacoemulsification) time [(of|was|at|is)]',
        '(ept|e p t|upt|ust|apt)',
        '(phaco|ultrasound) (for|lasted|took)',
        '[ultrasound|phaco] time',
      ],
      calledHeard: ['(fake oh|faco|fako|faker|fake o) time'],
      amounts: [{ unit: 's', bare: 'named', namedOnly: true, possible: [1, 900], also: { min: 60 } }],
      forms: [
        {
          said: [
            '{number} (seconds|second|secs|s) of (phaco|ultrasound|phaco time|ultrasound time|us time)',
            '{number} (seconds|second|secs|s) (phaco|ultrasound|phaco time|ultrasound time)',
          ],
          write: '{} s',
        },
      ],
    },
    {
      path: 'nucleus.dissipated-energy',
      about: ['machine'],
      called: [
        '(cde|c d e|cumulative dissipated energy|cumulated dissipated energy|dissipated energy|cumulative energy) [(of|was|at|is)]',
      ],
      calledHeard: ['(see d e|c d|see dee e|see the e|cede e|seedy e|sea dee e|cd e|cdee|cumulative decimated energy)'],
      amounts: [{ unit: '', bare: 'named', namedOnly: true, possible: [0, 300] }],
    },
    {
      path: 'cortex.method',
      about: ['cortex'],
      values: [
        {
          value: 'bimanual',
          said: [
            `(bimanual|bi manual) ${ia}`,
            `${ia} (bimanual|bi manual|bimanually|using bimanual)`,
            '(bimanual|bi manual|bimanually)',
            '(bimanual|bi manual) technique',
          ],
          heard: [
            'by manual [irrigation [and] aspiration]',
            'buy manual [irrigation aspiration]',
            'bye manual [irrigation aspiration]',
          ].concat([`(by manual|buy manual) ${ia}`]),
        },
        {
          value: 'coaxial',
          said: [`(coaxial|co axial) ${ia}`, `${ia} (coaxial|co axial|coaxially)`, '(coaxial|co axial|coaxially)'],
          heard: [`(co actual|co actually|coact seal|quack seal|co ax seal) [${ia}]`, 'go axial [i and a]'],
        },
        { value: 'manual', said: [`(manual|simcoe) ${ia}`, 'dry aspiration'] },
      ],
    },
    {
      path: 'cortex.polished-posterior',
      about: ['cortex'],
      values: [
        {
          value: 'yes',
          denied: 'no',
          said: [
            '[the] [posterior] capsule [$was] (polished|polish|polishing|vacuumed|cleaned)',
            '(polished|polishing|polish) [of] [the] [posterior] capsule',
            '(capsular|capsule|posterior capsule) (polish|polishing)',
            '$pc [$was] polished',
            '(polished|polishing) [of] [the] $pc',
          ],
          heard: ['capsule (Polish|palest|polisht)'].map((text) => text.toLowerCase()),
        },
      ],
    },
    {
      path: 'cortex.polished-anterior',
      about: ['cortex'],
      values: [
        {
          value: 'yes',
          denied: 'no',
          said: ['[the] anterior capsule [$was] polished', '(polished|polishing) [of] [the] anterior capsule'],
        },
      ],
    },
  ],
};
