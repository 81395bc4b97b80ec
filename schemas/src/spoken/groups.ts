/** Groups of words that many phrases share, used in patterns as $name. */
export const groups: Readonly<Record<string, string>> = {
  was: '(was|were|is|are|has been|have been|had been)',
  not: '(not|wasnt|werent|isnt|arent|hasnt|havent|didnt|did not|was not|were not|is not|are not|has not|have not|never|was never|were never)',
  used: '(used|needed|required|necessary|done|performed|made|given|placed|inserted|implanted|applied|carried out|attempted|indicated|instilled|injected|put in|fitted)',
  lens: '(lens|iol|intraocular lens|intra ocular lens|implant|lens implant|i o l)',
  capsule: '(capsule|capsular bag)',
  side: '(right|left)',
};
