import { spokenDrugs, type Drug } from './drug-names.ts';
import type { SpokenField, SpokenSection, SpokenSubject, SpokenValue } from './phrase.ts';

/** Classes of drops named without a drug. */
const classes: readonly { readonly kind: string; readonly said: readonly string[] }[] = [
  { kind: 'steroid', said: ['steroid drops', '[topical] steroid [(drops|drop|eye drops)]', '[topical] steroids'] },
  { kind: 'antibiotic', said: ['[topical] antibiotic (drops|drop|eye drops)', 'topical antibiotic'] },
  {
    kind: 'non-steroidal',
    said: ['[topical] (nsaid|n s a i d|non steroidal|nonsteroidal) [(drops|drop|eye drops|anti inflammatory)]'],
  },
];

/** How a drug is given. */
const routes: readonly SpokenSubject[] = [
  {
    id: 'intracameral',
    named: [
      '[(was|were)] [(injected|given)] (intra+cameral|intra+camerally) [antibiotic|antibiotics]',
      '(into|in) the [anterior] chamber',
      'antibiotic',
      'antibiotics',
      'intra cameral antibiotic [prophylaxis]',
      'intracameral injection of',
      '(ic|i c)',
    ],
  },
  {
    id: 'subconjunctival',
    named: [
      '[a] (sub+conjunctival|sub+conjunctivally|subconj|sub conj|s / c|sub conjunctival injection|sub conjunctival injections) [(injection|injections|injection of|injections of|of)]',
    ],
    heard: ['(sub|some|sob) (conjunctive|conjunct of all|conjunctiva|congenital|conjunctive all|con junctival)'],
  },
  {
    id: 'drops',
    named: [
      '[eye] drops',
      'drop',
      '(postoperative|post operative|postop|post op|topical) (drops|medication|medications|regime|regimen|treatment)',
      '(discharged|sent home) (on|with)',
      '(guttae|gutt|g)',
      'to (use|instil|take|start|continue)',
      '(started|start|continue|use|instil|using) [on]',
      '(postoperatively|post operatively|postop|post op)',
      'eyedrops',
    ],
  },
];

function nameOf({ drug, said, heard, usually }: Drug, way: 'intracameral' | 'subconjunctival' | 'drops'): SpokenValue {
  return {
    value: drug,
    bound: true,
    said,
    ...(heard === undefined ? {} : { heard }),
    ...(usually === way ? { byDefault: true } : {}),
  };
}

/** The way it was given, told behind its name. */
function underConjunctiva({ drug, said }: Drug, route: 'intracameral' | 'subconjunctival'): readonly SpokenValue[] {
  if (route !== 'subconjunctival') return [];
  const way = '(under the conjunctiva|sub+conjunctivally|sub+conjunctival)';
  return [{ value: drug, said: said.map((name) => `${name} [$was] [(given|injected)] ${way}`) }];
}

/** One entry of a list, with the subject that it opens. */
interface Entry {
  readonly path: string;
  readonly base: Readonly<Record<string, string>>;
  readonly subject: SpokenSubject;
  readonly fields: readonly SpokenField[];
}

function given(drug: Drug, route: 'intracameral' | 'subconjunctival'): Entry | undefined {
  const purpose = drug[route];
  if (purpose === undefined) return undefined;
  const path = `drugs[${route} ${drug.drug}]`;
  const id = `${route} ${drug.drug}`;
  return {
    path,
    base: { purpose, route },
    subject: { id, within: route },
    fields: [
      {
        path: `${path}.drug`,
        about: [route],
        opens: id,
        values: [nameOf(drug, route), ...underConjunctiva(drug, route)],
      },
      {
        path: `${path}.dose`,
        about: [id],
        amounts: [
          { unit: 'mg', bare: 'never', also: { µg: 0.001 }, possible: [0.01, 200] },
          { unit: 'mL', bare: 'never', possible: [0.01, 5] },
        ],
      },
    ],
  };
}

function drops(name: string, kind: string, key: 'drug' | 'kind', value: SpokenValue): Entry {
  const path = `after-care.drops[${name}]`;
  const id = `drops ${name}`;
  return {
    path,
    base: key === 'kind' ? {} : { kind },
    subject: { id, within: 'drops' },
    fields: [
      { path: `${path}.${key}`, about: ['drops'], opens: id, values: [value] },
      {
        path: `${path}.regimen`,
        about: [id],
        forms: [
          {
            said: ['{frequency}', '(used|given|taken|drops) {frequency}'],
            bound: true,
            write: '{} times a day',
            part: 'frequency',
          },
          {
            said: ['for {duration}', '{duration}', 'for [the] [next|first] {duration}', 'over {duration}'],
            bound: true,
            write: 'for {}',
            part: 'duration',
          },
        ],
      },
    ],
  };
}

function dropsOf(drug: Drug): Entry | undefined {
  return drug.drops === undefined ? undefined : drops(drug.drug, drug.drops, 'drug', nameOf(drug, 'drops'));
}

function allEntries(): readonly Entry[] {
  return [
    ...spokenDrugs.flatMap((drug) => [given(drug, 'intracameral'), given(drug, 'subconjunctival'), dropsOf(drug)]),
    ...classes.map(({ kind, said }) => drops(kind, kind, 'kind', { value: kind, said })),
  ].filter((entry) => entry !== undefined);
}

/** Drugs given during the operation, miotics, and drops afterwards. */
export function drugsSpoken(): SpokenSection {
  const all = allEntries();
  return {
    subjects: [...routes, ...all.map(({ subject }) => subject), { id: 'miotic', named: ['miotic', 'miotics'] }],
    fields: [
      ...all.flatMap(({ fields }) => fields),
      {
        path: 'after-care.drops[drops].regimen',
        about: ['drops'],
        exactly: true,
        forms: [
          {
            said: ['{frequency}', '(used|given|taken) {frequency}'],
            bound: true,
            write: '{} times a day',
            part: 'frequency',
          },
          { said: ['for {duration}', 'over {duration}'], bound: true, write: 'for {}', part: 'duration' },
        ],
      },
      {
        path: 'drugs[miotic].drug',
        about: ['miotic'],
        values: [
          {
            value: 'acetylcholine',
            denied: 'none',
            said: ['[intracameral] acetyl+choline [chloride]'],
            heard: [
              '(a seat ill|a settle|asset ill|acid till|asset till|a set all|assettle|a cetyl|a seal|a seedle) (co lean|choline|coal in|co line|colleen|cole in|coal een)',
              'a settle colin',
              'acetyl (colin|colleen|co lean|coaling)',
            ],
          },
          {
            value: 'carbachol',
            denied: 'none',
            said: ['[intracameral] (carbachol|carbacol)'],
            heard: ['(carb|car|carbo|cover) (a call|back all|a col|a coal|back hall|a chol)', 'car bacall'],
          },
          {
            value: 'none',
            as: ['free-text[miotic]', 'No miotic was given.'],
            denies: true,
            said: [
              '(no|without) [(a|any)] (miotic|miotics) [(was|were)] [(used|needed|given|required|instilled|necessary)]',
              'miotic (none|not used|not needed|nil|not given|not required)',
              '(miotic|miotics) (was not|were not) (used|needed|given|required)',
            ],
          },
        ],
      },
    ],
    entries: {
      ...Object.fromEntries(all.map(({ path, base }) => [path, base])),
      'drugs[miotic]': { purpose: 'miotic', route: 'intracameral' },
    },
  };
}
