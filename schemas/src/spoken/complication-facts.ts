const intact =
  '[$was] [(found|seen|noted|left|remained|stayed|still|kept|remains|confirmed|all|fully|to be)] [(to be|completely|quite|entirely|fully)] (intact|preserved|whole) [(throughout|from start to finish|to the end|at the end|from beginning to end|all the way through)]';

/** A complication, and how it is said to have happened or not. */
export interface ComplicationFact {
  readonly what: string;
  readonly said: readonly string[];
  readonly heard?: readonly string[];
  readonly denied?: readonly string[];
  /** Field of the capsule's state, its value when the complication happened and when it did not. */
  readonly state?: readonly [path: string, yes: string, no: string];
  /** The subject that the complication opens. */
  readonly opens?: string;
  /** Said of the subject while it is spoken about. */
  readonly bound?: { readonly subject: string; readonly said: readonly string[]; readonly denied: readonly string[] };
}

/** The complications that are told in words of their own. */
export const complicationFacts: readonly ComplicationFact[] = [
  {
    what: 'posterior capsule rupture',
    state: ['capsule-state.posterior', 'torn', 'intact'],
    said: [
      '[the] $pc [$was] (rupture|ruptured|tear|torn|tore|broke|broken|hole|break|dehiscence|defect|rent|gave way|breached|breach|opened up|split|ruptures)',
      '(pcr|p c r|pc rent|pc break)',
      '(rupture|tear|hole|rent|break|breach|defect|split|opening) (in|of|through) [the] $pc',
      '[the] (capsule|capsular) (ruptured|rupture|gave way|broke)',
      'posterior (tear|rupture|rent)',
      '(tore|ruptured|broke|breached) the posterior capsule',
    ],
    heard: [
      '(posterior|posture|post area) (capsule|capsular|captial) (rapture|raptured|raptor|rupper|wrapped chair)',
      'peace see are',
      'pc rapture',
      'post here your capsule rupture',
    ],
    denied: [
      `[the] $pc ${intact}`,
      '[the] (posterior capsule|pc|capsule|bag) (came (through|out)|stayed|remained|survived|is|was) [all] in one piece',
      '(intact|preserved) (posterior capsule|pc|posterior capsular bag|bag|capsular bag|capsule)',
      `[the] (capsule|capsular bag|bag) ${intact}`,
      '[the] $pc $not (ruptured|torn|breached|broken|rupture|tear|break|damaged)',
      '[the] capsule $not (ruptured|breached|broken|rupture|damaged)',
      '(no (damage|breach|problem|problems) (to|of|with) [the] (posterior capsule|pc|capsule))',
      '(kept|left|preserved) the posterior capsule intact',
    ],
  },
  {
    what: 'vitreous loss',
    state: ['capsule-state.vitreous', 'prolapsed', 'not prolapsed'],
    said: [
      '[the] vitreous [$was] (loss|prolapse|prolapsed|lost|presented|presentation|encountered|prolapsing|disturbance|came forward|came through|came|present|seen|strand|strands|knuckle) [(in|into|to|through|at|within) [the] (anterior chamber|wound|ac|a c|incision|main wound|bag|rhexis)]',
      'vitreous (in|into|to) [the] (anterior chamber|wound|ac|a c|incision|main wound)',
      '(loss|prolapse|strand|strands|knuckle) of vitreous [(in|into|to) [the] (anterior chamber|wound)]',
      '(lost|losing) [some] vitreous',
      '(vit|vitreous) (loss|lost)',
    ],
    heard: [
      '(vitreous|vitrious|bit reus|victorious|vitriol|vitrius) (lost|laws|los)',
      '(vitrious|bit reus|victorious|vitriol|vitrius) loss',
      'vit re us loss',
    ],
    denied: [
      '$no vitreous [(seen|lost|at all)]',
      '[the] vitreous [face] [$was] (intact|undisturbed|not disturbed|behind the capsule|not lost|not seen|not prolapsed)',
      '[the] vitreous [face] $not (lost|seen|prolapse|prolapsed|disturbed|presented|present)',
      '[anterior] hyaloid [face] [$was] [(remained|left)] (intact|undisturbed)',
      'vitreous [face] (stayed|remained) (back|intact|behind|undisturbed|in place)',
    ],
  },
  {
    what: 'zonular dialysis',
    state: ['capsule-state.zonule', 'ruptured', 'intact'],
    opens: 'zonule',
    said: [
      '(zonular|zonule|zonules) [$was] (dialysis|dehiscence|rupture|ruptured|disinsertion|loss|break|defect|separation|disruption|dialysed|broken|tear|torn)',
      'dialysis [of the (zonule|zonules)]',
      '(zonulodialysis|zonulo dialysis)',
      '(loss|rupture|dehiscence|disinsertion|break) of (zonules|zonule|the zonule|the zonules|zonular support)',
    ],
    heard: [
      '(zonular|zone euler|zoning your|zonal|zona lar|sonular|zone you la|zone ular|zone uler|so new lar|zoneular) (dialysis|die alysis|di alysis|dial assist|analysis|diagnosis|dialects is)',
    ],
    denied: [
      '[the] (zonule|zonules|zonular support|zonular apparatus) [$was] [(all|remained|appeared|looked|seemed|found to be|still|felt)] (intact|sound|normal|stable|strong|good|secure|healthy|firm)',
      '(intact|good|normal|stable|sound) (zonules|zonule|zonular support)',
      '[the] (zonule|zonules) $not (ruptured|torn|broken|damaged|weak|dialysed)',
    ],
  },
  {
    what: 'lens fragment into vitreous',
    said: [
      '(dropped|drop|dropping|lost|dislocated|sunken) [of] [the] [lens] (nucleus|nuclear fragment|nuclear fragments|lens fragment|lens fragments|fragment|fragments|quadrant|lens matter|nuclear piece|nuclear material|lens material)',
      '[the] [(a|one|last|lens|nuclear|entire|whole|part of the|some|any)] (nucleus|nuclear fragment|nuclear fragments|lens fragment|lens fragments|fragment|fragments|quadrant|nuclear material|lens material|lens matter) [$was] (dropped|fell|lost|sank|dislocated|went south|gone|went|drop|loss|fallen|fall) [(posteriorly|into the vitreous|back|to the back|into the vitreous cavity|backwards|to the retina|into the posterior segment|onto the retina|in the vitreous|to the posterior segment)]',
      '(loss|drop|dislocation) of [the] (nucleus|lens fragment|lens fragments|nuclear fragments|nuclear fragment|lens matter|nuclear material) [(posteriorly|into the vitreous|to the posterior segment)]',
      '(nuclear|nucleus) (loss|drop)',
    ],
    denied: [
      '[the] [(nothing|no fragment|no fragments|none)] (nucleus|nuclear fragments|fragments|lens|lens fragments|nothing) (did not|didnt|has not|hasnt|never) (drop|dropped|fall|fell|go|sink)',
      'nothing [(of it|at all|else|of the nucleus)] [$was] (dropped|drop|fell|lost|fell back|lost posteriorly|went posteriorly|dropped posteriorly|went down|went back)',
      '(not|no) [a|any|single] (fragment|piece|part|bit|fragments|pieces) [of [the] (nucleus|lens)] [$was] (dropped|lost|fell|fallen|went down|went back)',
      '(nucleus|nuclear fragments|fragments|lens fragments) $not (dropped|lost|dislocated|drop|fall)',
    ],
    heard: ['drop to nucleus', 'drop nuclear us', 'dropped new clear us', 'dropped nuclears'],
  },
  {
    what: 'iris prolapse',
    bound: {
      subject: 'iris',
      said: ['prolapsed', 'prolapsing', 'did [(however|indeed)] prolapse'],
      denied: ['(did not|didnt|never) prolapse'],
    },
    said: [
      '[the] iris [$was] (prolapse|prolapsed|prolapsing|prolapses|kept prolapsing|came out) [(through|from|out of|into|at) [the] (wound|main wound|incision|side port|main incision|wounds)]',
      'prolapse of [the] iris [(through|from|out of) [the] (wound|main wound|incision|main incision)]',
      'prolapsed iris',
      '[the] iris did [(however|indeed|then)] prolapse',
    ],
    heard: [
      '(iris|virus|i wrist|eye wrist|eye rest) (pro laps|pro lapse|prolapsed it|pro lap|collapse|relapse)',
      '(virus|i wrist|eye rest) prolapse',
    ],
    denied: [
      '[the] iris (did not|didnt|never|does not) prolapse',
      '[the] iris $not (prolapsed|prolapse|prolapsing)',
      'iris (stayed|remained) (in place|in the eye|put|in position)',
    ],
  },
  {
    what: 'Descemet detachment',
    said: [
      '(descemets|descemet|descement|descements|descemetic) [membrane] [$was] (detachment|detached|detach|tear|stripped|strip|separation|separated|stripping|came off|tore|torn|partially detached)',
      '(detachment|stripping|separation|tear) of [the] (descemets|descemet) [membrane]',
    ],
    heard: [
      '(desk mets|decimates|dessa mets|does a mets|death a mets|the summits|desert mets|dis mets|dece mets|des mets|dece meets|desmet|desmets|december|decimets|desk mits|this mets|deaths a mets) [membrane] (detachment|detached|tear|attachment)',
    ],
    denied: [
      '(descemets|descemet) [membrane] $not (detached|torn|stripped|detach|disturbed)',
      '(descemets|descemet) [membrane] $was nowhere (detached|torn|stripped|disturbed)',
      '(descemets|descemet) [membrane] [$was] [(all|remained|still)] (intact|attached|flat|in place|fully attached)',
    ],
  },
  {
    what: 'wound burn',
    said: [
      '(wound|phaco|corneal|thermal|incision|incisional|phacoemulsification) [$was] (burn|burns|burnt|burned)',
      '(burn|burns|thermal injury|thermal burn) (at|of|to|in) [the] [main] (wound|incision|cornea)',
      '(burned|burnt) [the] (wound|incision|cornea)',
      'thermal (injury|damage) [(to|of|at) the (wound|incision)]',
    ],
    heard: ['(wound|wind|room|womb) (born|bern|bun)', '(wind|womb) burn'],
    denied: ['(wound|incision) $not (burnt|burned)'],
  },
  {
    what: 'suprachoroidal haemorrhage',
    said: [
      '(supra+choroidal|choroidal|expulsive|supra+choroidal expulsive) (haemorrhage|bleed|bleeding|haematoma)',
      '(haemorrhage|bleed) (in|into) the supra+choroidal space',
      'expulsive',
    ],
    heard: [
      '(supra coral|super choroidal|super coral|supra chloride all|supra choroid all|super core oidal|supra corroidal) (haemorrhage|hammer age|hemorrhoid)',
      'supra choroidal hammer age',
    ],
  },
  {
    what: 'anterior capsule tear',
    state: ['capsule-state.anterior', 'torn, uncontained', 'intact'],
    said: [
      '[the] $ac [$was] (tear|torn|tore|rupture|ruptured|split|radial tear|break|rent)',
      '(tear|rupture|split|rent|radial tear|break) (in|of) [the] $ac',
      '(tore|torn) [the] anterior capsule',
    ],
    denied: [
      `[the] $ac ${intact}`,
      '[the] $ac $not (torn|tear|tore|damaged|split|rupture)',
      'intact anterior capsule',
      '[the] $ac [$was] (free of|without) [(a|any)] (tear|tears|split|splits)',
    ],
    heard: ['(interior|and terrier|ant ear ear) capsule (tear|tare)', 'anterior capsule (tare|tier|terror)'],
  },
];
