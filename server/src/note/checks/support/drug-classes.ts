/** What a drug is, by its generic name; from memory of the pharmacopoeia, no source. */
const classes = [
  {
    of: /\b(?:cefuroxime|cefazolin|ceftazidime|moxifloxacin|levofloxacin|ofloxacin|ciprofloxacin|gatifloxacin|chloramphenicol|vancomycin|gentamicin|tobramycin|neomycin|azithromycin)\b/iu,
    kind: 'antibiotic',
  },
  {
    of: /\b(?:dexamethasone|prednisolone|betamethasone|fluorometholone|loteprednol|rimexolone|difluprednate|methylprednisolone)\b/iu,
    kind: 'steroid',
  },
  { of: /\b(?:ketorolac|diclofenac|nepafenac|bromfenac|flurbiprofen|indometacin)\b/iu, kind: 'non-steroidal' },
  { of: /\b(?:acetylcholine|carbachol|pilocarpine)\b/iu, kind: 'miotic' },
  { of: /\b(?:tropicamide|cyclopentolate|phenylephrine|atropine|homatropine)\b/iu, kind: 'mydriatic' },
  {
    of: /\b(?:acetazolamide|timolol|brimonidine|dorzolamide|brinzolamide|latanoprost|apraclonidine|mannitol)\b/iu,
    kind: 'pressure lowering',
  },
  {
    of: /\b(?:li[dg]n?ocaine|bupivacaine|levobupivacaine|ropivacaine|mepivacaine|tetracaine|amethocaine|oxybuprocaine|proxymetacaine|proparacaine)\b/iu,
    kind: 'anaesthetic',
  },
] as const;

export type DrugClass = (typeof classes)[number]['kind'];

/** The classes of the drugs that a text names: a mixture has several, an unknown drug none. */
export function drugClassesOf(text: string): DrugClass[] {
  return classes.filter(({ of }) => of.test(text)).map(({ kind }) => kind);
}
