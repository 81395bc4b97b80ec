/** Generic names of drugs given around a cataract operation: each a word that names no person. */
const NAMES = `
acetazolamide acetylcholine acetylcysteine adrenaline apixaban apraclonidine aspirin atropine azithromycin betamethasone
bimatoprost
brimonidine brinzolamide bromfenac bupivacaine carbachol cefazolin ceftazidime cefuroxime chloramphenicol ciprofloxacin
clopidogrel cyclopentolate dabigatran dalteparin dexamethasone diclofenac dipyridamole dorzolamide edoxaban
enoxaparin epinephrine fentanyl fluorometholone gatifloxacin gentamicin heparin hyaluronate hyaluronidase
indometacin ketamine ketorolac latanoprost levobupivacaine levofloxacin lidocaine loteprednol mannitol mepivacaine
midazolam moxifloxacin neomycin nepafenac ofloxacin oxybuprocaine phenylephrine pilocarpine polymyxin
povidone-iodine prasugrel prednisolone prilocaine propofol proxymetacaine remifentanil rimexolone rivaroxaban ropivacaine
tafluprost tetracaine ticagrelor timolol tobramycin travoprost triamcinolone tropicamide vancomycin warfarin
`;

/** Words that stand between them. */
const BETWEEN = 'and at bag chamber continued drops in intracameral no none not of paused plus stopped the then with';

const KNOWN = new Set(`${NAMES} ${BETWEEN}`.split(/\s+/u).filter(Boolean));
/** A strength or an amount; a number alone could be a code. */
const AMOUNT = /\d+(?:[.,]\d+)?\s*(?:%|(?:mg|g|µg|mcg|ml|units)(?:\s*\/\s*\d*(?:\.\d+)?\s*ml)?(?![\p{L}\p{N}]))/giu;

/** Whether a text says nothing but generic names of drugs, their strengths and the words between them. */
export function isOnlyDrugs(text: string): boolean {
  const words = text.replace(AMOUNT, ' ').split(/[\s,;+/()]+/u);
  return words.every((word) => word === '' || KNOWN.has(word.toLowerCase()));
}
