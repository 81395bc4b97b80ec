import type { Operation } from '@sideport/schemas';
import { term } from '../as-typed.ts';
import { join, withArticle } from '../english.ts';
import type { Passage, Tidy } from '../passage.ts';

/** The lens that was taken out, as the record tells of anything removed from the body. */
export function explantedSentences({ 'explanted-lens': lens }: Operation, tidy: Tidy, passage: Passage): void {
  if (!lens) return;
  const named = join([
    withArticle(join([tidy(lens.maker), tidy(lens.model), lens.kind?.value, 'lens'])),
    lens.power && `of ${tidy(lens.power)}`,
    lens.cylinder && `with a cylinder of ${tidy(lens.cylinder)}`,
    lens.serial && `(serial number ${tidy(lens.serial)})`,
  ]);
  passage.say(join([`${named} was taken out of the eye`, lens.reason && `reason: ${tidy(lens.reason)}`], '; '));
  passage.say(tidy(lens.text));
}

/** What else was done in the same sitting, each with its reason. */
export function extraSentences(note: Operation, tidy: Tidy, passage: Passage): void {
  for (const one of note['extra-procedures']?.items ?? []) {
    const what =
      one.what === undefined || one.what.value === 'other' ? 'a procedure that is not named here' : term(one.what);
    passage.say(join([`Also done: ${what}`, one.reason && `reason: ${tidy(one.reason)}`], '; '));
    passage.say(tidy(one.text));
  }
  if (note.$.said['extra-procedures']?.word === 'none') passage.say('Nothing else was done in the same sitting');
}
