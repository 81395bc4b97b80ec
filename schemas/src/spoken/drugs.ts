import type { SpokenField, SpokenSection, SpokenSubject } from './phrase.ts';

interface Drug {
  readonly drug: string;
  readonly said: readonly string[];
  readonly heard?: readonly string[];
  /** Where it is meant to go when nothing says so. */
  readonly usually?: 'intracameral' | 'drops';
  readonly intracameral?: string;
  readonly subconjunctival?: string;
  readonly drops?: string;
}

const drugs: readonly Drug[] = [
  {
    drug: 'cefuroxime',
    said: ['(cefuroxime|cefuroxim|cephuroxime|cefuroxine)'],
    heard: [
      '(see|sea|c|cef|sef|seth|chef|kef|say|self) (few|for|fur|your|you|furrow|a|four|if you) (rocks|ox|rock|roxy|rox|oxy) (eem|seem|seen|ime|sim|zime|beam|scene|time|im|eam|me|i am)',
      '(kefuroxime|sefuroxime|sepharoxime|cefuroxamine)',
      '(cef|sef|see|sea|seth) (furoxime|uroxime|your oxime|a roxime|few roxime|for oxime)',
      'several oxime',
    ],
    usually: 'intracameral',
    intracameral: 'antibiotic',
    subconjunctival: 'antibiotic',
  },
  {
    drug: 'moxifloxacin',
    said: ['(moxifloxacin|moxi|moxifloxacine)'],
    heard: [
      '(moxie|moxy|mox|mocks|moksi|mock see|mocks e) (flocks|flux|if flocks|if locks|e flocks|floxa|flock) (a|as|has|of) (sin|sun|in|cin|sine)',
      '(moxie|moxy|mox e|mocks e) (floxacin|floxasin|flocksacin|flocks assin|flox asin)',
      'moxifloxasin',
    ],
    usually: 'intracameral',
    intracameral: 'antibiotic',
    subconjunctival: 'antibiotic',
    drops: 'antibiotic',
  },
  {
    drug: 'vancomycin',
    said: ['(vancomycin|vanc|vanco)'],
    heard: [
      '(van|vanker|vank a|vanco|bank a|ban co) (co mycin|mice in|my sin|mycin|co my sin|mysin)',
      '(bancomycin|vancomysin)',
    ],
    usually: 'intracameral',
    intracameral: 'antibiotic',
  },
  {
    drug: 'gentamicin',
    said: ['(gentamicin|gentamycin|genta|gent)'],
    heard: ['(gent a|jenta|gentle|gen to|jen to) (mice in|my sin|mycin|micin)'],
    subconjunctival: 'antibiotic',
  },
  {
    drug: 'dexamethasone',
    said: [
      '(dexamethasone|dexamethazone|dexa|dex) [(0.1|nought point one|point one|0.4) (percent|per cent)] [phosphate]',
    ],
    heard: [
      '(dexa|dexter|decks a|dex a|decks of|deck sir) (meth a zone|methadone|methasone|method zone|meth azone|metha zone|meth is own|math as own)',
      '(dexamethadone|dexamethasome)',
    ],
    usually: 'drops',
    intracameral: 'steroid',
    subconjunctival: 'steroid',
    drops: 'steroid',
  },
  {
    drug: 'betamethasone',
    said: ['(betamethasone|betamethazone)'],
    heard: ['(beta|better|bet a|beat a) (meth a zone|methasone|methadone|meth azone|metha zone)'],
    subconjunctival: 'steroid',
  },
  {
    drug: 'prednisolone',
    said: ['(prednisolone|pred|prednisalone) [acetate] [(1|one|0.5) (percent|per cent)]'],
    heard: [
      '(pred|predni|pretty|bread|pregnant|predniss) (nis alone|so lone|nisolone|niz alone|nice alone|zone alone|isolone|is alone|solone)',
      '(predniz|prednis) (alone|a loan|a lone)',
      'pregnant alone',
    ],
    usually: 'drops',
    drops: 'steroid',
  },
  {
    drug: 'chloramphenicol',
    said: ['(chloramphenicol|chloramphenical|chlor|chloro)'],
    heard: [
      '(chlor|clor|clear|clora|chloro|chlora|colour) (am|amp|and|m|an) (fennel|fen|phen|fenny|feni|phenny) [(a|i|e)] (call|col|kol|coal|cole|cal|ical)',
      '(chlor|clor|chlora) amphenicol',
      'colour amphenicol',
    ],
    usually: 'drops',
    drops: 'antibiotic',
  },
  {
    drug: 'ofloxacin',
    said: ['(ofloxacin|ofloxacine)'],
    heard: [
      '(o|oh|of|off|offl) (flocks|locks|flox|flux) (a|as|of) (sin|sun|cin|in)',
      '(oh|off|o) (floxacin|floxasin|loxacin)',
    ],
    usually: 'drops',
    drops: 'antibiotic',
  },
  { drug: 'ketorolac', said: ['ketorolac'], usually: 'drops', drops: 'non-steroidal' },
  { drug: 'nepafenac', said: ['nepafenac'], usually: 'drops', drops: 'non-steroidal' },
  { drug: 'bromfenac', said: ['bromfenac'], usually: 'drops', drops: 'non-steroidal' },
];

/** Classes of drops named without a drug. */
const classes: readonly { readonly kind: string; readonly said: readonly string[] }[] = [
  { kind: 'steroid', said: ['steroid drops', '[topical] steroid [(drops|drop|eye drops)]', '[topical] steroids'] },
  { kind: 'antibiotic', said: ['[topical] antibiotic (drops|drop|eye drops)', 'topical antibiotic'] },
  {
    kind: 'non-steroidal',
    said: ['[topical] (nsaid|n s a i d|non steroidal|nonsteroidal) [(drops|drop|eye drops|anti inflammatory)]'],
  },
];

const subjects: SpokenSubject[] = [
  {
    id: 'intracameral',
    named: [
      '[(was|were)] [(injected|given)] (intra+cameral|intra+camerally) [antibiotic|antibiotics]',
      'into the anterior chamber',
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
const fields: SpokenField[] = [];
const entries: Record<string, Record<string, string>> = {};

for (const { drug, said, heard, usually, intracameral, subconjunctival, drops } of drugs) {
  const named = { value: drug, bound: true, said, ...(heard === undefined ? {} : { heard }) };
  if (intracameral !== undefined)
    addGiven(drug, 'intracameral', intracameral, {
      ...named,
      ...(usually === 'intracameral' ? { byDefault: true } : {}),
    });
  if (subconjunctival !== undefined) addGiven(drug, 'subconjunctival', subconjunctival, named);
  if (drops !== undefined)
    addDrops(drug, drops, { path: 'drug', value: { ...named, ...(usually === 'drops' ? { byDefault: true } : {}) } });
}
for (const { kind, said } of classes) addDrops(kind, kind, { path: 'kind', value: { value: kind, said } });

function addGiven(
  drug: string,
  route: string,
  purpose: string,
  value: NonNullable<SpokenField['values']>[number],
): void {
  const entry = `drugs[${route} ${drug}]`;
  const subject = `${route} ${drug}`;
  subjects.push({ id: subject, within: route });
  entries[entry] = { purpose, route };
  const list = ['dexamethasone', 'cefuroxime', 'gentamicin', 'betamethasone'].includes(drug);
  fields.push({
    path: `${entry}.drug`,
    about: [route],
    opens: subject,
    values: [value],
    ...(list ? { shared: true } : {}),
  });
  fields.push({
    path: `${entry}.dose`,
    about: [subject],
    amounts: [
      { unit: 'mg', bare: 'never', also: { µg: 0.001 }, possible: [0.01, 200] },
      { unit: 'mL', bare: 'never', possible: [0.01, 5] },
    ],
  });
}

function addDrops(
  name: string,
  kind: string,
  field: { readonly path: string; readonly value: NonNullable<SpokenField['values']>[number] },
): void {
  const entry = `after-care.drops[${name}]`;
  const subject = `drops ${name}`;
  subjects.push({ id: subject, within: 'drops' });
  entries[entry] = { kind };
  fields.push({ path: `${entry}.${field.path}`, about: ['drops'], opens: subject, values: [field.value] });
  fields.push({
    path: `${entry}.regimen`,
    about: [subject],
    shared: true,
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
  });
}

/** Drugs given during the operation, miotics, and drops afterwards. */
export const drugsSpoken: SpokenSection = {
  subjects: [...subjects, { id: 'miotic', named: ['miotic', 'miotics'] }],
  fields: [
    ...fields,
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
  entries: { ...entries, 'drugs[miotic]': { purpose: 'miotic', route: 'intracameral' } },
};
