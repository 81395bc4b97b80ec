/** Words that withdraw what was just said. `strong` ones correct by themselves; `weak` ones only between two values of one kind. */
export interface Cue {
  readonly said: readonly string[];
  readonly strength: 'strong' | 'weak';
  /** Takes the last value back even when no other follows. */
  readonly withdraws?: boolean;
  /** Takes back what was said of the thing that is named next: "forget the ring". */
  readonly names?: boolean;
  /** Corrects backwards when it ends a part of the sentence: "three eighty, three ninety rather". */
  readonly after?: boolean;
  /** Comes back to something said before: "earlier I said two point two, it was two point four". */
  readonly recalls?: boolean;
}

export const cues: readonly Cue[] = [
  {
    strength: 'strong',
    withdraws: true,
    said: [
      '(scratch|scrub|delete|strike|scrap|cancel|ignore|forget|erase|disregard|undo|remove) (that|this|the last|last|it)',
      '(not|cancel|forget|delete|scrap) {number}',
      '(scratch|delete|strike|cancel|ignore|disregard) (the last|that last) (bit|word|number|sentence|part|one|value|figure|statement)',
      'strike out',
    ],
  },
  {
    strength: 'strong',
    names: true,
    said: [
      '(scratch|scrub|delete|strike|scrap|cancel|ignore|forget|disregard|erase) [about] the [bit about] [the]',
      '(scratch|scrub|delete|strike|scrap|cancel|ignore|forget|disregard|erase) what i [have] said about [the]',
      '(let me|i will|i should|id like to|i want to|please) (change|correct|amend|alter) the',
    ],
  },
  {
    strength: 'strong',
    recalls: true,
    said: [
      '[(earlier|before|previously|above|at the (start|beginning)|one thing|in the preoperative part)] (i|we) [(have|had)] [(earlier|before|previously)] (said|dictated|told you|called it|mentioned|gave) [(a|an|the)]',
    ],
  },
  { strength: 'strong', after: true, said: ['[no] i (meant|mean) [to say]', '[or] rather'] },
  {
    strength: 'strong',
    said: [
      'correction',
      '(no wait|wait no|no hang on|hang on no|no hold on|hold on no|oh no|no no wait)',
      '[no] i am told [(it|that it) (is|was)]',
      '[no] (make|change) (that|it) [(to|a|an)]',
      '(i|let me|ill|i should) correct (that|myself)',
      '(correct|amend|change) [(that|it|this)] to',
      '(correct|amend) that',
      'i stand corrected',
      '(on|having) second (thought|thoughts)',
      'what am i saying',
      '(reading|looking at|checking) (it|that|the screen|the display) again',
      'that should (be|have been|read)',
      'should (read|have been)',
      'i beg your pardon',
      'beg [your] pardon',
      '[no] i tell a lie',
      'that is wrong',
      '(thats|that) wrong',
      'my mistake',
      'oops',
      'excuse me',
      'or [i] should [i] say',
      'i misspoke',
      'let me (rephrase|restate|reword) [that|it]',
      'let me start again',
    ],
  },
  {
    strength: 'weak',
    said: [
      'no',
      'sorry',
      'actually',
      'wait',
      'hang on',
      'hold on',
      'er no',
      'well',
      'apologies',
      'pardon',
      'nope',
      'or actually',
      'no no',
      'in fact',
      'instead',
      '(let us|lets|let me) say',
      '(wrong|better|say|read|or better)',
      'hmm no',
    ],
  },
];

/** Words before a fact that deny it. */
export const denialsBefore: readonly string[] = [
  '(not|never) (quite|entirely|perfectly|fully|really)',
  '(no|without|nil|not|never|neither|nor|zero)',
  'no (evidence|sign|signs|suggestion|indication|question|hint) of [any]',
  'without (any|evidence of|the need for|need for|using|use of)',
  'no need (for|of|to use) [any|a]',
  '(did not|didnt|do not|not|never) (need|require|use|have|see|do|perform|implant|insert|place|notice|encounter|have to use) [to use|to do|to perform] [any|a|the]',
  'there (was|were) no',
  '[there] (wasnt|werent|isnt|arent|was not|were not) any',
  '(free|clear|absence) of [any]',
  '(was|were) no',
  '(avoided|avoiding) [any|a|the]',
  '(at no (point|time|stage)) [(was|were) there] [any|a]',
  'neither [a]',
  'nor (did|was|were|had|has) [(the|any)]',
  'not (a|any)',
  '[(deliberately|intentionally)] (left out|omitted|skipped|dispensed with) [the|any]',
];

/** What was not done or seen. */
const undone =
  '(used|needed|required|necessary|done|performed|made|given|placed|inserted|implanted|applied|attempted|indicated|instilled|injected|seen|noted|encountered|observed|present|put in|carried out|undertaken|polished|possible|achieved|achievable|feasible|occur|occurred|happen|detected|stained|hydrated|called for|warranted|felt necessary|thought necessary|found)';

/** Words after a fact that deny it. */
export const denialsAfter: readonly string[] = [
  '[that] (i|we) [(deliberately|intentionally|purposely)] (did not|didnt) (do|use|perform|make|place|put in|need)',
  '(i|we) did without',
  'there (was|were) none',
  '[,] none (given|used|needed|required|placed|seen|done|made)',
  `(was|were|is) (therefore|thus|also|certainly|fortunately|luckily|happily|however|so) not ${undone}`,
  '[$was] looked for [(and|but)] [$was] not (found|seen|there)',
  'there (was|were) no (sign|signs|evidence|trace|hint)',
  'there (was|were) (not|none)',
  '(not|never) a (trace|sign|hint) [of it]',
  'at no (time|point|stage)',
  'i (did not|didnt) (place|use|need|put in|insert|give|make|see)',
  `[$was] (opened|ready|available|loaded|on the table|standing by|kept ready) [(but|and|though)] [(then|$was)] not ${undone}`,
  `$not [(actually|at any point)] ${undone}`,
  '[$was] [(deliberately|intentionally|purposely|specifically|therefore|both|all|also)] (unnecessary|omitted|withheld|avoided|absent|nil|none|left out)',
  '(did not|didnt) (occur|happen|develop|result)',
];

/** Words after a fact that leave open whether it happened. */
export const doubtsAfter: readonly string[] = [
  '(was|were) [(from|of)] (the|another) (patient before|previous patient|last patient|other patient|case before|previous case)',
  '$was (drawn up|prepared|opened|got ready|made ready)',
  '(only if|provided that|as long as)',
  '[$was] [(initially|at first|briefly)] (suspected|queried|feared|considered|discussed|possible|questioned|threatened|thought likely|planned|ruled out|excluded)',
  '(cannot|could not) be excluded',
  // What a recogniser makes of “not”: never a denial, but no statement either.
  '(knot|nought|note) (done|used|needed|required|seen|performed)',
];

/** Words before a fact that leave open whether it happened. */
export const doubtsBefore: readonly string[] = [
  '(risk|risks|danger|chance|possibility|fear|threat) of [a|any]',
  '(possible|possibly|suspected|potential|query|questionable|presumed|near|almost|nearly|impending|threatened|threatening)',
  '(in case|if|should|unless) [(of|there (is|was)|we have|a|any)] [a|any]',
  '(to (avoid|prevent|minimise)|avoiding|preventing|prevention of|warned of|counselled about|consented for|discussed|warned about|careful about|watch for|watching for|look for|looking for|prone to|at risk of|concern about|concerned about|worried about) [a|any|the]',
  // What a recogniser makes of “no”.
  '(know|gnaw)',
  '(previous|history of|past history of|known|earlier|old|past) [a|the]',
  '(planned|plan|plan for|planning|plans|scheduled) [a|an]',
  '(booked|listed|consented|began|begun|started|scheduled|planned) [out] as [(a|an|the)]',
  '[had] (thought (about|of)|considered|toyed with|hoped for) [(a|an|the|putting in|using)]',
  '[(my|the|our)] (first|initial|original) (idea|plan|thought|intention|choice) (was|had been) [(a|an|the|to use|to put in|to place it in)]',
  '(might|may|could) (be|have|have been)',
  '(fellow eye|other eye|contralateral eye) [(had|with|has)] [a]',
];
