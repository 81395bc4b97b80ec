import { complicationKinds } from '../vocabulary/outcome.ts';
import { complicationFacts, type ComplicationFact } from './complication-facts.ts';
import type { SpokenField, SpokenSection, SpokenValue } from './phrase.ts';

function factField(fact: ComplicationFact): SpokenField {
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

const told = new Set(complicationFacts.map(({ what }) => what));
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
      ...complicationFacts.map(factField),
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
