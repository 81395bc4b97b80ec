/**
 * Words that carry no fact of their own: they may stand beside a value without casting doubt on it, and none of
 * them is reported as lost.
 */
export const plainWords: ReadonlySet<string> = new Set(
  `a an the this that these those there it its i we he she they me us my our his her their you your who which what
  is was were are be been being am has have had having do did does done doing will would shall should
  but and or of in on at to from with by for as into onto over under through via per upon up down out off then so also
  after before during until while when where once again both each all any some more most very quite too just only well
  used using use made making make performed perform performing carried achieved given give put placed place placing inserted insert
  implanted implant inserting created created fashioned applied apply injected inject instilled instil administered obtained
  undertaken taken took went got getting filled fill formed started start begin began followed proceeded
  noted found seen measured measuring set here now today first second next finally still about around approximately roughly
  x - / under patient patients mrs mr eye case via further routinely usual routine standard
  position positions mark level side end okay yes thank thanks please right-hand let lets well sir um uh er erm umm uhm hmm ah eh
  total size power technique procedure operation surgery theatre surgical underwent operating room brought draped drape
  plus interrupted sited done good nice nicely  please note new foldable injectable preloaded`.split(/\s+/u),
);

/** Phrases that carry no fact of their own. */
export const plainPhrases: readonly string[] = [
  'let me (think|see)',
  'lets see',
  'you know',
  'kind of',
  'sort of',
  'as usual',
  'in the usual (way|manner|fashion)',
  'in the end',
  'at the end [of the (case|operation|procedure|surgery)]',
  'thank you',
  'of course',
  'no complications (apart from|except for|except|other than|besides|save for) [a|an|the]',
  'no (other|further) (complications|complication|problems|issues)',
  'i think',
  '(let us|lets|let me) call it',
  'as planned',
  'none of it [$was] (left|remained|remaining) [(in|behind)] [at the end]',
  '[(for|about)] (a|one) (days|weeks|months) worth',
  '[the] (skin|conjunctiva|lids|skin and conjunctiva|periocular skin|conjunctival sac|ocular surface) [$was] [(prepared|prepped|cleaned|painted)]',
  '[the] anterior chamber [$was] [(filled|formed|maintained|deepened|reformed|inflated|entered)]',
  '(fellow|trainee|registrar|resident|colleague|nurse) (assisting|assisted|scrubbed|scrubbing|as assistant)',
  'assisted by [(the|a|our)] (fellow|trainee|registrar|resident|nurse)',
  '[(a|the|this|that|another)] (brief|small|tiny|little|new|old|other|previous|same|bigger|smaller|larger|tight|easy|difficult|straightforward) one',
  'lid speculum',
  'speculum',
  '[the] limbus',
];

/**
 * Phrases with a number, a side or a name in them that is none of the note's: they are kept out of every field and
 * reported as they were said.
 */
export const opaquePhrases: readonly string[] = [
  '(hydrodissection|rhexis|capsulorhexis|lens|hydro dissection|viscoelastic|vitrectomy|iris) (cannula|forceps|needle|hook|injector|cartridge|spatula|manipulator|cutter|probe|set)',
  '(old|existing|previous|original) {number} dioptre $lens',
  '(old|existing|previous|dislocated|subluxed|subluxated|opacified|original) [anterior chamber|posterior chamber|iris claw|one piece|three piece] $lens [$was] [(explanted|removed|cut out|extracted|bisected|taken out|cut|cut and removed)]',
  '[anterior chamber] $lens [$was] (explanted|removed|cut out|extracted|bisected|taken out|cut and removed)',
  '(at|during|before|while) [the] [end of] (hydro+dissection|capsulorhexis|rhexis|sculpting|chopping|irrigation and aspiration|lens insertion|cortex removal|phaco|phacoemulsification|nucleus removal|quadrant removal|lens implantation|insertion of the lens|implantation of the lens|removal of [the] [last] (nucleus|quadrant|quadrants|fragment))',
  '[a] {number} (degree|gauge|g) [(slit|stab|angled|keratome)] (blade|knife|needle|cannula|keratome|lancet)',
  '(from|between) {number} (to|and|through) {number} [oclock|degrees|percent]',
  '{number} (to|through) {number} [oclock]',
  '{duration} ago',
  '(found|lying|lay|sitting) [today|now] at {number} degrees',
  '(had|has) [since] (swung|rotated|turned|spun) [round|around] to {number} degrees',
  'ought to (be|lie) at {number} [degrees]',
  '{number} [-] year [-] old',
  'aged {number}',
  '(theatre|room|list|case|bed) [number] {number}',
  '{number} (quadrants|quadrant|fragments|pieces|grooves)',
];
