import type { Operation, Place } from '@sideport/schemas';
import { operationCheck, type About } from '../check.ts';
import { suturesOf } from '../support/sutures.ts';
import type { Wording } from '../support/joined-text.ts';
import { mention, narrativeOf } from '../support/prose.ts';
import { related } from '../support/place.ts';

const adjuncts: readonly {
  readonly what: string;
  readonly wording: Wording;
  /** Where the note says that there was none of it; undefined when it does not say so. */
  readonly denied: (note: Operation) => Place | undefined;
}[] = [
  {
    what: 'that no tension ring was used',
    wording: {
      hints: ['ring', 'ctr'],
      pattern:
        /\b(?:tension ring|CTR) (?:was )?(?:inserted|placed|implanted|injected|used)\b|\b(?:inserted|placed|implanted) a (?:capsular )?tension ring\b/giu,
    },
    denied: ({ ring }) => (ring?.used?.value === false ? ring.used : undefined),
  },
  {
    what: 'that no vitrectomy was done',
    wording: { hints: ['vitrect'], pattern: /\b(?:anterior vitrectomy|vitrectomy was done|vitrector used)\b/giu },
    denied: ({ $ }) => $.said['vitrectomy'],
  },
  {
    what: 'that there were no sutures',
    wording: {
      hints: ['sutur', 'nylon', '0'],
      pattern:
        /\b(?:\d{1,2}[-/]0 (?:nylon|suture\w*)|(?:one|two|three|single|interrupted) sutures?|wound (?:was )?sutured|sutured the wound)\b/giu,
    },
    denied: (note) => (suturesOf(note).length === 0 ? note.closure?.$.said['sutures'] : undefined),
  },
  {
    what: 'that no dye was used',
    wording: {
      hints: ['trypan', 'stain', 'dye'],
      pattern: /\b(?:trypan blue|capsule (?:was )?stained|stained the capsule|under dye)\b/giu,
    },
    denied: ({ $ }) => $.said['dye'],
  },
  {
    what: 'that no pupil aid was used',
    wording: { hints: ['hook', 'ring'], pattern: /\b(?:iris hooks|pupil (?:expansion )?ring|expansion ring)\b/giu },
    denied: ({ $ }) => $.said['pupil-aid'],
  },
];

export const proseTellsOfAdjunct = operationCheck({
  id: 'prose-tells-of-adjunct',
  group: 'writing',
  summary: 'The text tells of a ring, a vitrectomy, sutures, a dye or a pupil aid that the fields deny.',
  severity: 'warning',
  allowable: true,
  run: (note, say, { reading }) => {
    const narrative = narrativeOf(reading);
    for (const { what, wording, denied } of adjuncts) {
      const place = denied(note);
      const found = place === undefined ? undefined : mention(narrative, wording);
      if (found === undefined || place === undefined) continue;
      say({
        at: found.place,
        message: `The text says “${found.text}”, but the fields say ${what}. Which is right?`,
        related: [related(`the fields: ${what.replace(/^that /u, '')}`, place)],
      });
    }
  },
});

export const aboutProseTellsOfAdjunct: About = () => ({
  why: 'Extra procedures and implants are coded and counted from the fields.',
  whatToDo: 'Read the sentence, and correct the field or the text.',
  source: 'RCS Good Surgical Practice 2014, 1.3 (extra procedure and the reason)',
  since: '1.0',
  faulty: { note: 'free-text: one suture at the end for safety' },
  sound: { note: 'free-text: no suture needed' },
});
