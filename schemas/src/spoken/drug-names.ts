/** A drug as it is spoken, and where it is given. */
export interface Drug {
  readonly drug: string;
  readonly said: readonly string[];
  readonly heard?: readonly string[];
  /** Where it is meant to go when nothing says so. */
  readonly usually?: 'intracameral' | 'drops';
  readonly intracameral?: string;
  readonly subconjunctival?: string;
  readonly drops?: string;
}

/** Drugs of a cataract operation and of the drops after it. */
export const spokenDrugs: readonly Drug[] = [
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
