/** How the operated side is spoken, and where "right" and "left" mean something else. */

/** Words that name the eye with the side. */
export const sidePhrases: Readonly<Record<'right' | 'left', readonly string[]>> = {
  right: [
    '[the|patient|patients] right (eye|sided|eyes)',
    'r [/] (eye|e)',
    'right [sided] eye',
    'eye [is|was] [the] right',
    '(laterality|side) [is|was] [the] right',
    '(today|now|this time) [(it is|its|it was|we did|i did)] the right [one]',
    '(operated|operating|operative|affected|correct) (eye|side) [is|was] [the] right',
  ],
  left: [
    '[the|patient|patients] left (eye|sided|eyes)',
    'l [/] (eye|e)',
    'left [sided] eye',
    'eye [is|was] [the] left',
    '(laterality|side) [is|was] [the] left',
    '(today|now|this time) [(it is|its|it was|we did|i did)] the left [one]',
    '(operated|operating|operative|affected|correct) (eye|side) [is|was] [the] left',
  ],
};

/** Abbreviations that name the eye when written in capitals. */
export const sideLetters: Readonly<Record<string, 'right' | 'left'>> = {
  OD: 'right',
  RE: 'right',
  OS: 'left',
  LE: 'left',
};

/** Words after a side word that make it the operated side: "right phaco". */
export const operatedThings: ReadonlySet<string> = new Set(
  'phaco phacoemulsification cataract cataracts manual msics sics ecce extracapsular intracapsular iol lens secondary surgery phakic pseudophakic aphakic vitrectomy combined toric peripheral'.split(
    ' ',
  ),
);

/** Words that may stand between the side and the thing operated: "left posterior polar cataract". */
export const operatedAdjectives: ReadonlySet<string> = new Set(
  'posterior polar dense white mature brunescent nuclear cortical subcapsular routine uncomplicated uneventful toric sided standard combined small incision hard soft traumatic congenital advanced very visually significant anterior complicated'.split(
    ' ',
  ),
);

/** Where a side word names no eye. */
export const sideTraps: readonly string[] = [
  '[(in|with|using|by|held in)] [(my|the|his|her|surgeon|surgeons|patient|patients|the patient|a)] (right|left) [-] (hand|handed|handedly|hander|foot|arm|pedal|hands)',
  '(right|left) hand side',
  '(to|from|on|towards|toward) [(the|my|his|her|its)] [patient|patients] (right|left)',
  '(to|from|on|towards|at) (my|the|his|her|patient|patients|the patient|the patients) (right|left) [hand] side',
  '(right|left) side of the (patient|table|chair|bed|head|microscope|screen|room|drape)',
  '(upper|lower|top|bottom|far) (right|left)',
  'all right',
  'alright',
  '(just|quite|exactly|about|not quite|looks|looked|seems|seemed|is|thats|that|was|sat|sitting|be|felt|feels) right',
  'right (angle|angled|angles|away|now|through|down|across|size|place|position|spot|amount|depth|direction|time|way|moment|then|so|okay|well|instrument|power|track|people|patient|from|up|at|after|before|in the|on the|over|into|behind|under|next)',
  'at right angles',
  '(right|left) (shoulder|ear|temple|cheek|leg|side of)',
  'from (left|right) to (left|right)',
  '(was|were|is|are|be|been|being|and|it|nothing|none|cortex|fragment|fragments|anything|little|bit|matter|viscoelastic|ovd|has|had|i|we|then|capsule|wound|wounds|lens) left',
  'left (in|behind|over|alone|open|unsutured|aphakic|as|at|with|to|for|on|out|untouched|intact|undisturbed|dry|deep|formed|long|until|empty|well|a|without|the|it|them|this|some|in situ|in place|there|inside|after|dilated|small|sutureless|overnight)',
  'nothing left [behind]',
];

/** What a recogniser makes of the side: only a question, never a side. */
export const sideHeard: readonly string[] = [
  '(write|rite|wright|light|bright|ride|rightly|riot) (eye|i|high|aye|phaco)',
  '(lift|let|leapt|laughed|lefty|loft|lest|deft|reft) (eye|i|high|aye|phaco)',
  '(right|left) (aye|high|ie)',
];
