/**
 * Words after which a dictation tells of something else than this operation: of the other eye, of what was planned,
 * of the lens that was taken out. What is said there is kept out of the note.
 */
export interface Elsewhere {
  readonly said: readonly string[];
  /** Only what is said about these subjects belongs elsewhere; without it everything does. */
  readonly about?: readonly string[];
  /** Words that bring the dictation back; else the end of the sentence does. */
  readonly until?: readonly string[];
}

const back = ['but', 'instead', 'however', 'so', 'put', 'used', 'now', 'today', 'changed'];

export const elsewhere: readonly Elsewhere[] = [
  {
    said: [
      '(in|on|for|of|as for|at) (the|her|his|their|that) (fellow|other|contralateral|opposite) eye [(had|with|has)] [a]',
      '(the|her|his|their) (fellow|other|contralateral|opposite) eye [(had|has|was|is|got|needed)] [a]',
      '(fellow|other|contralateral) eye (had|has|was|is) [a]',
      '(last week|last month|last year|years ago|months ago|weeks ago) in the (fellow|other) eye',
    ],
    until: ['today', 'now', 'but'],
  },
  {
    said: [
      '(we|i) [had] [(originally|initially|first)] (planned|intended|meant) [(on|for|to use)] [(a|an|the)]',
      '(had been|was|were) [(originally|initially)] (planned|intended|meant|supposed) to be [(a|an|the)]',
      '(meant|intended) to',
      '[(review|follow up|first review)] (was|were) to (be|have been) [(at|in|after)]',
      'the plan [on paper] (was|had been) [(for|to use)] [(a|an|the)]',
      '(we|i) had (asked for|ordered|chosen|requested)',
    ],
    until: back,
  },
  {
    said: [
      '[(we|i)] [have|had] (removed|explanted|took out|taken out|extracted) the (old|existing|original|previous) $lens',
      'the (old|existing|original|previous) $lens (was|is|had been)',
    ],
    about: ['lens'],
    until: ['new', 'then'],
  },
];
