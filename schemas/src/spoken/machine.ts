import { ultrasoundModes } from '../vocabulary/theatre.ts';
import type { SpokenAmount, SpokenField, SpokenForm, SpokenSection, SpokenSubject } from './phrase.ts';

const mmhg: SpokenAmount = { unit: 'mmHg', bare: 'named', possible: [5, 750] };

/** A setting that each step of the operation has. */
interface Setting {
  readonly key: string;
  readonly called: readonly string[];
  readonly calledHeard?: readonly string[];
  readonly amount: SpokenAmount;
  readonly forms?: readonly SpokenForm[];
  /** The cortex has it as well. */
  readonly cortex: boolean;
}

const settings: readonly Setting[] = [
  {
    key: 'bottle-height',
    called: [
      'bottle height',
      '[the|with|with the] [infusion|irrigation] bottle [height] [(lowered|raised|dropped|reduced|kept|set|turned down|at|down|up|was|of|to|is|held)] [(to|at|low at)]',
      '(infusion|irrigation) height',
      'height of [the] bottle',
      '(bh|b h|bottle ht)',
    ],
    calledHeard: [
      'bottle (hide|hi|heights|high|hyde|hate|heist|hiked|tide|eight)',
      '(bottom|battle|bottled|boggle|bubble) (height|hide|hight)',
    ],
    amount: { unit: 'cm', bare: 'named', also: { mm: 0.1 }, possible: [10, 160] },
    cortex: true,
  },
  {
    key: 'set-pressure',
    called: [
      'target pressure',
      '(target|set|infusion|irrigation|active) [infusion] (pressure|iop|i o p|intraocular pressure) [(set|of|at|was|to)] [(at|to)]',
      'intraocular pressure [(set|setting|target)] [(at|to)]',
      '(iop|i o p) (set|setting|target|at|of) [at|to]',
      '(iop|i o p)',
    ],
    amount: { ...mmhg, possible: [10, 130], namedOnly: true },
    cortex: true,
  },
  {
    key: 'vacuum',
    called: [
      'vacuum',
      '[maximum|max|the|phaco] (vacuum|vac|vacuum limit) [(limit|level|setting|set|of|at|was|to|is|up to|limited)] [(at|to)]',
      '[the] (vacuum|vac)',
    ],
    calledHeard: ['(back you|vac you|vacume|back room|vacuums|vaccum|vaccine|vacu um|back um|vack you um|fact you)'],
    amount: mmhg,
    cortex: true,
  },
  {
    key: 'flow',
    called: [
      'flow',
      '[aspiration|the|maximum|max] (flow|flow rate|aspiration rate|aspiration flow|aspiration flow rate) [(rate|set|of|at|was|to|is)] [(at|to)]',
      'aspiration [(at|of|was|set at)]',
      '(afr|a f r)',
    ],
    calledHeard: ['(flo|flaw|floor|flown|flows) [rate]'],
    amount: { unit: 'mL/min', bare: 'named', possible: [2, 100], also: { mL: 1 } },
    cortex: true,
  },
  {
    key: 'power',
    called: [
      'ultrasound power',
      '[the|phaco|ultrasound|max|maximum|us|u s|u / s|torsional|longitudinal|phaco max] power [(limit|setting|set|of|at|was|to|is|limited|up to)] [(at|to)]',
      'phaco (energy|percent)',
      'pwr',
      '(amplitude|torsional amplitude)',
    ],
    calledHeard: ['(pour|pow her|powder|tower)'],
    amount: { unit: '%', bare: 'named', possible: [1, 100] },
    forms: [{ said: ['(ultrasound|us|u s) [(at|of|up to)] {number} (percent|per cent)'], write: '{} %' }],
    cortex: false,
  },
];

/** Steps with settings of their own; what is said without a step belongs to the only one. */
const steps: readonly { readonly step: string; readonly named: readonly string[] }[] = [
  { step: 'sculpt', named: ['sculpting', '[for|during] (sculpt|sculpting|grooving|groove) [settings]'] },
  { step: 'chop', named: ['chopping', '[for|during] (chopping|chop settings|first chop) [settings]'] },
  {
    step: 'quadrant removal',
    named: ['quadrant removal', '[for|during] (quadrant|segment|fragment) removal [settings]', '[for] quadrants'],
  },
  { step: 'epinucleus', named: ['epinucleus', '[for|during] epinucleus [removal] [settings]'] },
];

const stepSubjects: readonly SpokenSubject[] = steps.map(({ step, named }) => ({ id: `step ${step}`, named }));

function settingField(
  path: string,
  about: string,
  { called, calledHeard, amount, forms }: Setting,
  own: boolean,
): SpokenField {
  return {
    path,
    about: [about],
    called,
    ...(calledHeard === undefined ? {} : { calledHeard }),
    amounts: [amount],
    ...(own ? { onlyAbout: true } : forms === undefined ? {} : { forms }),
  };
}

function modeField(path: string, about: string): SpokenField {
  return {
    path,
    about: [about],
    values: ultrasoundModes.words.map(({ word, synonyms }) => ({
      value: word,
      bound: true,
      said: [word, ...synonyms].flatMap((text) => [`${text} mode`, `${text} ultrasound`, text]),
    })),
  };
}

/** The settings of the machine, by step, and what it showed at the end. */
export function machineSpoken(): SpokenSection {
  return {
    subjects: [
      { id: 'machine', named: ['phaco settings', '(machine|phaco) (settings|parameters)', 'settings', 'parameters'] },
      ...stepSubjects,
    ],
    fields: [
      ...settings.map((setting) => settingField(`nucleus.steps[settings].${setting.key}`, 'machine', setting, false)),
      modeField('nucleus.steps[settings].ultrasound-mode', 'machine'),
      ...steps.flatMap(({ step }) => [
        ...settings.map((setting) =>
          settingField(`nucleus.steps[${step}].${setting.key}`, `step ${step}`, setting, true),
        ),
        modeField(`nucleus.steps[${step}].ultrasound-mode`, `step ${step}`),
      ]),
      ...settings
        .filter(({ cortex }) => cortex)
        .map((setting) => settingField(`cortex.${setting.key}`, 'cortex', setting, true)),
      {
        path: 'nucleus.mean-power',
        about: ['machine'],
        called: ['mean power', '(mean|average) [phaco|ultrasound] power [(of|was|is)]'],
        amounts: [{ unit: '%', bare: 'named', namedOnly: true, possible: [0, 100] }],
      },
      {
        path: 'nucleus.ultrasound-time',
        about: ['machine'],
        called: [
          'ultrasound time',
          '[total|the|effective|elapsed|absolute] (phaco|ultrasound|us|u s|u / s|phacoemulsification) time [(of|was|at|is)]',
          '(ept|e p t|upt|ust|apt)',
          '(phaco|ultrasound) (for|lasted|took)',
          'time',
        ],
        calledHeard: ['(fake oh|faco|fako|faker|fake o) time'],
        amounts: [{ unit: 's', bare: 'named', namedOnly: true, possible: [1, 900], also: { min: 60 } }],
        forms: [
          { said: ['[total|effective] (phaco|ultrasound|us|u s|u / s) time [(of|was|is)] {minutes}'], write: '{} s' },
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
          'cumulative dissipated energy',
          '(cde|c d e|cumulative dissipated energy|cumulated dissipated energy|dissipated energy|cumulative energy) [(of|was|at|is)]',
        ],
        calledHeard: [
          '(see d e|c d|see dee e|see the e|cede e|seedy e|sea dee e|cd e|cdee|cumulative decimated energy)',
        ],
        amounts: [{ unit: '', bare: 'named', namedOnly: true, possible: [0, 300] }],
      },
      {
        path: 'nucleus.fluid-used',
        about: ['machine'],
        called: ['fluid used', '[total] (fluid|fluid volume|volume of fluid) used'],
        amounts: [{ unit: 'mL', bare: 'named', namedOnly: true, possible: [5, 2000] }],
      },
    ],
    entries: Object.fromEntries(steps.map(({ step }) => [`nucleus.steps[${step}]`, { step }])),
  };
}
