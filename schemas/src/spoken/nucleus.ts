import type { SpokenSection } from './phrase.ts';

const ia =
  '(irrigation [and] aspiration|irrigation / aspiration|irrigation aspiration|i / a|i and a|i a|ia|cortical (clean up|cleanup|removal|aspiration|wash out)|cortex (removal|aspiration|clean up)|removal of (cortex|[the] soft lens matter)|aspiration of (cortex|[the] (cortex|soft lens matter)))';

/** Hydrodissection, nucleus, cortex. The settings of the machine: see machine.ts. */
export function nucleusSpoken(): SpokenSection {
  return {
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
              'hydrodissection',
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
          {
            value: 'yes',
            denied: 'no',
            said: [
              'hydro+dissection (and|plus|&|/|with) (delineation|delamination)',
              'hydro (dissection and delineation|dissection plus delineation)',
            ],
            also: [['hydrodissection.delineation', 'yes']],
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
              'hydrodelineation',
              '[the] (delineation|delineated)',
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
        path: 'hydrodissection.rotation',
        about: ['hydrodissection'],
        values: [
          {
            value: 'yes',
            denied: 'no',
            said: [
              'nucleus turned freely',
              '[the] nucleus [$was] (rotated|turned|rotating|mobile) [(freely|easily|well)]',
              '(rotated|rotation of) the nucleus',
              'free rotation [of the nucleus]',
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
              'divide and conquer',
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
            said: ['stop (and|-|&|n|plus) [-] chop', 'stop chop', 'stop and chopped', 's and c'],
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
              '(chop|chopping) $was horizontal',
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
              '(chop|chopping) $was vertical',
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
              '(expressed|delivered|extracted|brought out) (manually|by hand) [with [a|the] [wire|irrigating] (vectis|loop)]',
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
          { value: 'manual', said: [`manual ${ia}`, 'dry aspiration'] },
        ],
      },
      {
        path: 'cortex.complete',
        about: ['cortex'],
        values: [
          {
            value: 'yes',
            denied: 'no',
            said: [
              'all cortex removed',
              'all [the] (cortex|soft lens matter) [$was] (removed|aspirated|cleared)',
              'complete (cortex removal|cortical removal|cortical clean up)',
              'cortex [$was] (completely|fully) (removed|aspirated)',
            ],
          },
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
              'posterior capsule polished',
              '[the] [posterior] capsule [$was] (polished|polish|polishing|vacuumed|cleaned)',
              '(polished|polishing|polish) [of] [the] [posterior] capsule',
              '(capsular|capsule|posterior capsule) (polish|polishing)',
              '$pc [$was] polished',
              '(polished|polishing) [of] [the] $pc',
            ],
            heard: ['capsule (palest|polisht)'],
          },
          {
            value: 'no',
            denies: true,
            said: [
              '[the] [posterior] capsule $not (polished|vacuumed)',
              '$pc $not polished',
              '(did not|didnt) polish [the] [posterior] [capsule]',
              '(did not|didnt|not) polish it',
            ],
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
}
