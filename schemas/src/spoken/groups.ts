/** Groups of words that many phrases share, used in patterns as $name. */
export const groups: Readonly<Record<string, string>> = {
  no: '(no|without|without any|nil|wasnt any|was not any|werent any|isnt any|not any|no sign of|no evidence of|no sign of any)',
  was: '(was|were|is|are|has|have|had|has been|have been|had been|being)',
  not: '(not|wasnt|werent|isnt|arent|hasnt|havent|didnt|did not|was not|were not|is not|are not|has not|have not|had not|never|was never|were never)',
  lens: '(lens|lenses|iol|posterior chamber (lens|implant|iol|intraocular lens|lens implant)|pciol|pc iol|pcl|intraocular lens|intra ocular lens|implant|lens implant|i o l)',
  ring: '(capsular tension ring|tension ring|capsule tension ring|ctr|c t r|capsular ring)',
  incision: '(incision|wound|section|cut)',
  pc: '(posterior capsule|posterior capsular|pc|p c)',
  ac: '(anterior capsule|anterior capsular)',
  centred:
    '[(and|and was|and is|lovely and|well|nicely|perfectly|properly|accurately|beautifully|good|stable and|is|was|very well|sitting|sat|lying|sits|stable and well|and well|and nicely)] [well] (centred|central|centrally)',
  phaco: '(phaco|phacoemulsification|phaco+emulsification)',
};
