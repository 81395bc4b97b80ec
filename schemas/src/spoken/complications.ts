import { complicationKinds } from '../vocabulary/outcome.ts';
import type { SpokenField, SpokenSection, SpokenValue } from './phrase.ts';

const intact =
  '[$was] [(found|seen|noted|left|remained|stayed|still|kept|remains|confirmed|all|fully|to be)] [(to be|completely|quite|entirely|fully)] (intact|preserved|whole) [(throughout|from start to finish|to the end|at the end|from beginning to end|all the way through)]';

interface Fact {
  readonly what: string;
  readonly said: readonly string[];
  readonly heard?: readonly string[];
  readonly denied?: readonly string[];
  /** Field of the capsule's state, its value when the complication happened and when it did not. */
  readonly state?: readonly [path: string, yes: string, no: string];
  /** The subject that the complication opens. */
  readonly opens?: string;
  /** Said of the subject while it is spoken about. */
  readonly bound?: { readonly subject: string; readonly said: readonly string[]; readonly denied: readonly string[] };
}

const facts: readonly Fact[] = [
  {
    what: 'posterior capsule rupture',
    state: ['capsule-state.posterior', 'torn', 'intact'],
    said: [
      '[the] $pc [$was] (rupture|ruptured|tear|torn|tore|broke|broken|hole|break|dehiscence|defect|rent|gave way|breached|breach|opened up|split|ruptures)',
      '(pcr|p c r|pc rent|pc break)',
      '(rupture|tear|hole|rent|break|breach|defect|split|opening) (in|of|through) [the] $pc',
      '[the] (capsule|capsular) (ruptured|rupture|gave way|broke)',
      'posterior (tear|rupture|rent)',
      '(tore|ruptured|broke|breached) the posterior capsule',
    ],
    heard: [
      '(posterior|posture|post area) (capsule|capsular|captial) (rapture|raptured|raptor|rupper|wrapped chair)',
      'peace see are',
      'pc rapture',
      'post here your capsule rupture',
    ],
    denied: [
      `[the] $pc ${intact}`,
      '(intact|preserved) (posterior capsule|pc|posterior capsular bag|bag|capsular bag|capsule)',
      `[the] (capsule|capsular bag|bag) ${intact}`,
      '[the] $pc $not (ruptured|torn|breached|broken|rupture|tear|break|damaged)',
      '[the] capsule $not (ruptured|breached|broken|rupture|damaged)',
      '(no (damage|breach|problem|problems) (to|of|with) [the] (posterior capsule|pc|capsule))',
      '(kept|left|preserved) the posterior capsule intact',
    ],
  },
  {
    what: 'vitreous loss',
    state: ['capsule-state.vitreous', 'prolapsed', 'not prolapsed'],
    said: [
      '[the] vitreous [$was] (loss|prolapse|prolapsed|lost|presented|presentation|encountered|prolapsing|disturbance|came forward|came through|present|seen|strand|strands|knuckle) [(in|into|to|through|at|within) [the] (anterior chamber|wound|ac|a c|incision|main wound|bag|rhexis)]',
      'vitreous (in|into|to) [the] (anterior chamber|wound|ac|a c|incision|main wound)',
      '(loss|prolapse|strand|strands|knuckle) of vitreous [(in|into|to) [the] (anterior chamber|wound)]',
      '(lost|losing) [some] vitreous',
      '(vit|vitreous) (loss|lost)',
    ],
    heard: [
      '(vitreous|vitrious|bit reus|victorious|vitriol|vitrius) (lost|laws|los)',
      '(vitrious|bit reus|victorious|vitriol|vitrius) loss',
      'vit re us loss',
    ],
    denied: [
      '$no vitreous [(seen|lost|at all)]',
      '[the] vitreous [face] [$was] (intact|undisturbed|not disturbed|behind the capsule|not lost|not seen|not prolapsed)',
      '[the] vitreous [face] $not (lost|seen|prolapse|prolapsed|disturbed|presented|present)',
      '[anterior] hyaloid [face] [$was] [(remained|left)] (intact|undisturbed)',
      'vitreous [face] (stayed|remained) (back|intact|behind|undisturbed|in place)',
    ],
  },
  {
    what: 'zonular dialysis',
    state: ['capsule-state.zonule', 'ruptured', 'intact'],
    opens: 'zonule',
    said: [
      '(zonular|zonule|zonules) [$was] (dialysis|dehiscence|rupture|ruptured|disinsertion|loss|break|defect|separation|disruption|dialysed|broken|tear|torn)',
      'dialysis [of the (zonule|zonules)]',
      '(zonulodialysis|zonulo dialysis)',
      '(loss|rupture|dehiscence|disinsertion|break) of (zonules|zonule|the zonule|the zonules|zonular support)',
    ],
    heard: [
      '(zonular|zone euler|zoning your|zonal|zona lar|sonular|zone you la|zone ular|zone uler|so new lar|zoneular) (dialysis|die alysis|di alysis|dial assist|analysis|diagnosis|dialects is)',
    ],
    denied: [
      '[the] (zonule|zonules|zonular support|zonular apparatus) [$was] [(all|remained|appeared|looked|seemed|found to be|still|felt)] (intact|sound|normal|stable|strong|good|secure|healthy|firm)',
      '(intact|good|normal|stable|sound) (zonules|zonule|zonular support)',
      '[the] (zonule|zonules) $not (ruptured|torn|broken|damaged|weak|dialysed)',
    ],
  },
  {
    what: 'lens fragment into vitreous',
    said: [
      '(dropped|drop|dropping|lost|dislocated|sunken) [of] [the] [lens] (nucleus|nuclear fragment|nuclear fragments|lens fragment|lens fragments|fragment|fragments|quadrant|lens matter|nuclear piece|nuclear material|lens material)',
      '[the] [(a|one|last|lens|nuclear|entire|whole|part of the|some|any)] (nucleus|nuclear fragment|nuclear fragments|lens fragment|lens fragments|fragment|fragments|quadrant|nuclear material|lens material|lens matter) [$was] (dropped|fell|lost|sank|dislocated|went south|gone|went|drop|loss|fallen|fall) [(posteriorly|into the vitreous|back|to the back|into the vitreous cavity|backwards|to the retina|into the posterior segment|onto the retina|in the vitreous|to the posterior segment)]',
      '(loss|drop|dislocation) of [the] (nucleus|lens fragment|lens fragments|nuclear fragments|nuclear fragment|lens matter|nuclear material) [(posteriorly|into the vitreous|to the posterior segment)]',
      '(nuclear|nucleus) (loss|drop)',
    ],
    denied: [
      '[the] [(nothing|no fragment|no fragments|none)] (nucleus|nuclear fragments|fragments|lens|lens fragments|nothing) (did not|didnt|has not|hasnt|never) (drop|dropped|fall|fell|go|sink)',
      'nothing [(of it|at all|else|of the nucleus)] [$was] (dropped|drop|fell|lost|fell back|lost posteriorly|went posteriorly|dropped posteriorly|went down|went back)',
      '(not|no) [a|any|single] (fragment|piece|part|bit|fragments|pieces) [of [the] (nucleus|lens)] [$was] (dropped|lost|fell|fallen|went down|went back)',
      '(nucleus|nuclear fragments|fragments|lens fragments) $not (dropped|lost|dislocated|drop|fall)',
    ],
    heard: ['drop to nucleus', 'drop nuclear us', 'dropped new clear us', 'dropped nuclears'],
  },
  {
    what: 'iris prolapse',
    bound: {
      subject: 'iris',
      said: ['prolapsed', 'prolapsing', 'did [(however|indeed)] prolapse'],
      denied: ['(did not|didnt|never) prolapse'],
    },
    said: [
      '[the] iris [$was] (prolapse|prolapsed|prolapsing|prolapses|kept prolapsing|came out) [(through|from|out of|into|at) [the] (wound|main wound|incision|side port|main incision|wounds)]',
      'prolapse of [the] iris [(through|from|out of) [the] (wound|main wound|incision|main incision)]',
      'prolapsed iris',
      '[the] iris did [(however|indeed|then)] prolapse',
    ],
    heard: [
      '(iris|virus|i wrist|eye wrist|eye rest) (pro laps|pro lapse|prolapsed it|pro lap|collapse|relapse)',
      '(virus|i wrist|eye rest) prolapse',
    ],
    denied: [
      '[the] iris (did not|didnt|never|does not) prolapse',
      '[the] iris $not (prolapsed|prolapse|prolapsing)',
      'iris (stayed|remained) (in place|in the eye|put|in position)',
    ],
  },
  {
    what: 'Descemet detachment',
    said: [
      '(descemets|descemet|descement|descements|descemetic) [membrane] [$was] (detachment|detached|detach|tear|stripped|strip|separation|separated|stripping|came off|tore|torn|partially detached)',
      '(detachment|stripping|separation|tear) of [the] (descemets|descemet) [membrane]',
    ],
    heard: [
      '(desk mets|decimates|dessa mets|does a mets|death a mets|the summits|desert mets|dis mets|dece mets|des mets|dece meets|desmet|desmets|december|decimets|desk mits|this mets|deaths a mets) [membrane] (detachment|detached|tear|attachment)',
    ],
    denied: [
      '(descemets|descemet) [membrane] $not (detached|torn|stripped|detach|disturbed)',
      '(descemets|descemet) [membrane] $was nowhere (detached|torn|stripped|disturbed)',
      '(descemets|descemet) [membrane] [$was] [(all|remained|still)] (intact|attached|flat|in place|fully attached)',
    ],
  },
  {
    what: 'wound burn',
    said: [
      '(wound|phaco|corneal|thermal|incision|incisional|phacoemulsification) [$was] (burn|burns|burnt|burned)',
      '(burn|burns|thermal injury|thermal burn) (at|of|to|in) [the] [main] (wound|incision|cornea)',
      '(burned|burnt) [the] (wound|incision|cornea)',
      'thermal (injury|damage) [(to|of|at) the (wound|incision)]',
    ],
    heard: ['(wound|wind|room|womb) (born|bern|bun)', '(wind|womb) burn'],
    denied: ['(wound|incision) $not (burnt|burned)'],
  },
  {
    what: 'suprachoroidal haemorrhage',
    said: [
      '(supra+choroidal|choroidal|expulsive|supra+choroidal expulsive) (haemorrhage|bleed|bleeding|haematoma)',
      '(haemorrhage|bleed) (in|into) the supra+choroidal space',
      'expulsive',
    ],
    heard: [
      '(supra coral|super choroidal|super coral|supra chloride all|supra choroid all|super core oidal|supra corroidal) (haemorrhage|hammer age|hemorrhoid)',
      'supra choroidal hammer age',
    ],
  },
  {
    what: 'anterior capsule tear',
    state: ['capsule-state.anterior', 'torn, uncontained', 'intact'],
    said: [
      '[the] $ac [$was] (tear|torn|tore|rupture|ruptured|split|radial tear|break|rent)',
      '(tear|rupture|split|rent|radial tear|break) (in|of) [the] $ac',
      '(tore|torn) [the] anterior capsule',
    ],
    denied: [
      `[the] $ac ${intact}`,
      '[the] $ac $not (torn|tear|tore|damaged|split|rupture)',
      'intact anterior capsule',
      '[the] $ac [$was] (free of|without) [(a|any)] (tear|tears|split|splits)',
    ],
    heard: ['(interior|and terrier|ant ear ear) capsule (tear|tare)', 'anterior capsule (tare|tier|terror)'],
  },
];

function factField(fact: Fact): SpokenField {
  const yes: SpokenValue = {
    value: fact.what,
    denied: fact.what,
    said: fact.said,
    ...(fact.heard === undefined ? {} : { heard: fact.heard }),
    ...(fact.state === undefined ? {} : { also: [[fact.state[0], fact.state[1]] as const] }),
  };
  const no: SpokenValue[] =
    fact.denied === undefined
      ? []
      : [
          {
            value: fact.what,
            denies: true,
            said: fact.denied,
            ...(fact.state === undefined ? {} : { as: [fact.state[0], fact.state[2]] as const }),
          },
        ];
  const bound: SpokenValue[] =
    fact.bound === undefined
      ? []
      : [
          { value: fact.what, bound: true, said: fact.bound.said, denied: fact.what },
          { value: fact.what, bound: true, denies: true, said: fact.bound.denied },
        ];
  return {
    path: `complications[${fact.what}].what`,
    about: [fact.opens ?? fact.bound?.subject ?? 'complications'],
    critical: true,
    deniedIn: 'complications-excluded',
    values: [yes, ...no, ...bound],
  };
}

const told = new Set(facts.map(({ what }) => what));
/** Words of the vocabulary that are spoken as they are written. */
const plainly = complicationKinds.words.filter(
  ({ word }) =>
    !told.has(word) &&
    ![
      'other',
      'uveitis',
      'wound leak',
      'lens exchanged',
      'lens decentred',
      'endophthalmitis',
      'abandoned',
      'raised pressure',
      'retinal detachment',
      'posterior capsule opacification',
      'lens rotated',
    ].includes(word),
);

/** Complications that happened or did not, and the state of capsule, zonule and vitreous. */
export function complicationsSpoken(): SpokenSection {
  return {
    subjects: [
      { id: 'complications', named: ['complications', 'complication'] },
      { id: 'zonule', named: ['zonule', 'zonules'], heard: ['zone yules', 'zone ules'] },
      { id: 'vitrectomy' },
      { id: 'iris', named: ['[the] iris'] },
    ],
    fields: [
      {
        path: 'complications',
        about: ['complications'],
        critical: true,
        values: [
          {
            value: 'none',
            denies: true,
            said: [
              'no complications',
              '(no|nil|zero|without|without any|no evidence of|free of|not any) [any] [(intraoperative|intra operative|operative|surgical|immediate|perioperative|per operative|peri operative|obvious|significant|major|apparent|known|other intraoperative)] (complication|complications) [(at all|of note|today|whatsoever|encountered|noted|seen|occurred|to report|intraoperatively|during surgery|were encountered|were noted|were seen)]',
              '[(entirely|completely|wholly|totally|quite|thoroughly)] (uncomplicated|uneventful|uneventfully|complication free) [(procedure|surgery|operation|case|phaco|course)]',
              '(complications|complication|comps) [,] [$was] (none|nil|absent|zero|no)',
              '(no|nil) comps',
              'without (incident|event)',
              '(everything|all|it|procedure|surgery|operation|case) [went|$was] (uneventful|uncomplicated|without complication|without complications|uneventfully)',
            ],
            heard: [
              '(know|now|nor|new|note|knows|low|nope) (complication|complications|complications cations)',
              'no (complicated|compilation|compilations|completions|complex cations)',
              'on complicated',
              'an eventful',
              'uneven full',
              'unevent full',
              'on eventful',
            ],
          },
          {
            value: 'none',
            denies: true,
            implied: true,
            said: [
              '(no|without|without any) [(significant|intraoperative|particular|real|major)] (problem|problems|issue|issues|difficulty|difficulties|concerns|mishap|mishaps|drama|trouble|hiccups|adverse events) [(at all|encountered|whatsoever)]',
              'nothing untoward',
              'nothing went wrong',
              'all went well',
              'went (smoothly|very smoothly|well)',
            ],
          },
        ],
      },
      ...facts.map(factField),
      ...plainly.map(({ word }): SpokenField => ({
        path: `complications[${word}].what`,
        about: ['complications'],
        critical: true,
        deniedIn: 'complications-excluded',
        values: [{ value: word, denied: word, said: [word.toLowerCase().replace(/-/gu, ' ')] }],
      })),
      {
        path: 'complications[lens decentred].what',
        about: ['lens'],
        critical: true,
        deniedIn: 'complications-excluded',
        values: [
          {
            value: 'lens decentred',
            denied: 'lens decentred',
            said: [
              '(lens|iol|implant|optic) [$was] [slightly|a little] (decentred|off+centre|not centred|not well centred|decentration)',
              'decentred (lens|iol|implant)',
            ],
          },
        ],
      },
      {
        path: 'capsule-state.zonule',
        about: ['zonule'],
        values: [
          {
            value: 'weak',
            said: [
              '(weak|lax|loose|poor|floppy) (zonule|zonules|zonular support)',
              '(zonular|zonule) (weakness|laxity|instability)',
              '(zonule|zonules) [$was] (weak|lax|loose|poor|floppy)',
              'phacodonesis',
            ],
          },
        ],
      },
      {
        path: 'capsule-state.zonule-extent',
        about: ['zonule'],
        amounts: [{ unit: 'clock hours', bare: 'never', possible: [0.5, 12] }],
      },
      {
        path: 'vitrectomy.approach',
        about: ['vitrectomy'],
        critical: true,
        values: [
          {
            value: 'anterior',
            deniedAs: ['vitrectomy', 'not done'],
            said: [
              '[(bimanual|automated|limited|triamcinolone assisted|thorough|core|small|dry|two port|generous|careful|single port|limbal|cut and aspirate)] [(bimanual|automated)] anterior (vitrectomy|vitrector)',
              '(a vit|ant vit|a v|anterior vit)',
            ],
            heard: [
              '(anterior|interior|and terrier|ant ear ear) (vitrectomy|vit wrecked me|vit wreck to me|vit wreck me|victory me|vitreous to me|vit rectory|vi trek to me|fit rectomy|the trek to me)',
            ],
          },
          {
            value: 'anterior',
            deniedAs: ['vitrectomy', 'not done'],
            implied: true,
            said: ['vitrectomy', 'vitrector (used|cut)', '(bimanual|automated|limited) vitrectomy'],
          },
          { value: 'pars plana', said: ['pars plana [anterior] vitrectomy', 'ppv'] },
        ],
      },
      {
        path: 'vitrectomy.stain',
        about: ['vitrectomy'],
        values: [
          {
            value: 'triamcinolone',
            denied: 'none',
            said: [
              '[intracameral|diluted|dilute|preservative free] triamcinolone [acetonide] [(staining|stain|assisted|to stain|visualisation|to visualise|to stain the vitreous|to visualise the vitreous|suspension)]',
            ],
            heard: [
              '(try|tri|triam|trial) (am sin alone|amsinolone|am sinner loan|cinolone|sin alone|amp sin alone|sin a loan)',
              'tram sin alone',
              'triumph sinolone',
              'try i am sin alone',
            ],
          },
        ],
      },
    ],
  };
}
