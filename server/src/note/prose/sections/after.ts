import type { Operation } from '@sideport/schemas';
import { and, join, longDate } from '../english.ts';
import { Passage, type Tidy } from '../passage.ts';

/** Drops, shield, instructions and what is to be looked at. */
export function afterPassage(note: Operation, tidy: Tidy): Passage {
  const passage = new Passage();
  const care = note['after-care'];
  const drops = care?.drops?.items.map((one) => join([tidy(one.drug) ?? one.kind?.value, tidy(one.regimen)])) ?? [];
  passage.say(drops.length > 0 ? `Drops: ${drops.join('; ')}` : undefined);
  if (care?.$.said['drops']?.word === 'none') passage.say('No drops were prescribed');
  const covered = [care?.shield?.value && 'a shield', care?.pad?.value && 'a pad'].filter(
    (part) => typeof part === 'string',
  );
  passage.say(covered.length > 0 ? `The eye was covered with ${and(covered)}` : undefined);
  passage.say(care?.instructions && `Instructions: ${tidy(care.instructions)}`);
  passage.say(reviewWords(note, tidy));
  if (note.$.said['reviews']?.word === 'none') passage.say('No review is planned');
  passage.need('drops', care?.drops, care?.$.said['drops']?.word);
  passage.need('instructions to the patient', care?.instructions);
  passage.need('reviews', note.reviews, note.$.said['reviews']?.word);
  return passage;
}

function reviewWords({ reviews }: Pick<Operation, 'reviews'>, tidy: Tidy): string | undefined {
  const planned = reviews?.items.map((review) => {
    const due = review.due?.value;
    const when =
      due === undefined ? undefined : due.kind === 'date' ? `on ${longDate(due.date)}` : `after ${tidy(review.due)}`;
    return join([tidy(review.what) ?? 'review', when, review.by && `(${tidy(review.by)})`]);
  });
  return planned && planned.length > 0 ? `Reviews: ${planned.join('; ')}` : undefined;
}
