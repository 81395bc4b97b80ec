import type { Operation } from '@sideport/schemas';
import { reviewsWords } from '../due.ts';
import { and, join } from '../english.ts';
import { Passage, type Tidy } from '../passage.ts';

/** Drops, shield, instructions and what is to be looked at. */
export function afterPassage(note: Operation, tidy: Tidy): Passage {
  const passage = new Passage();
  const care = note['after-care'];
  const drops =
    care?.drops?.items.map((one) => join([tidy(one.drug) ?? unnamedDrops(one.kind?.value), tidy(one.regimen)])) ?? [];
  passage.say(drops.length > 0 ? `Drops: ${drops.join('; ')}` : undefined);
  if (care?.$.said['drops']?.word === 'none') passage.say('No drops were prescribed');
  const covered = [care?.shield?.value && 'a shield', care?.pad?.value && 'a pad'].filter(
    (part) => typeof part === 'string',
  );
  passage.say(covered.length > 0 ? `The eye was covered with ${and(covered)}` : undefined);
  if (covered.length === 0 && care?.shield) passage.say('The eye was not covered with a shield');
  passage.say(care?.instructions && `Instructions: ${tidy(care.instructions)}`);
  passage.say(reviewsWords(note.reviews?.items, tidy));
  if (note.$.said['reviews']?.word === 'none') passage.say('No review is planned');
  passage.need('drops', care?.drops, care?.$.said['drops']?.word);
  passage.need('instructions to the patient', care?.instructions);
  passage.need('reviews', note.reviews, note.$.said['reviews']?.word);
  return passage;
}

const unnamedDrops = (kind: string | undefined): string =>
  kind === undefined || kind === 'other' ? 'drops that are not named' : `${kind} drops`;
