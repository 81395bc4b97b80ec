import type { Operation } from '@sideport/schemas';
import { and, join, longDate } from '../english.ts';
import { Passage, type Tidy } from '../passage.ts';

type Safety = NonNullable<Operation['safety']>;

/** Consent, marking and the three pauses. */
export function safetyPassage(note: Operation, tidy: Tidy): Passage {
  const passage = new Passage();
  const safety = note.safety;
  if (safety) {
    passage.say(consent(safety));
    passage.say(safety['site-marked'] && `The ${safety['site-marked'].value} side was marked`);
    if (safety.$.said['site-marked']?.word === 'not done') passage.say('The side was not marked');
    const pauses = [
      pause('sign in', 'sign-in', safety, tidy),
      pause('time out', 'time-out', safety, tidy),
      pause('sign out', 'sign-out', safety, tidy),
    ];
    const held = pauses.filter((text) => text !== undefined);
    passage.say(held.length > 0 ? and(held) : undefined);
    passage.say(lensVerified(safety, tidy));
  }
  passage.need('consent', safety?.consent);
  passage.need('marking of the side', safety?.['site-marked'], safety?.$.said['site-marked']?.word);
  for (const [label, key] of [
    ['sign in', 'sign-in'],
    ['time out', 'time-out'],
    ['sign out', 'sign-out'],
    ['verification of the lens', 'lens-verified'],
  ] as const) {
    passage.need(label, safety?.[key], safety?.$.said[key]?.word);
  }
  return passage;
}

function consent({ consent: given }: Safety): string | undefined {
  if (!given) return undefined;
  const which = join([
    'the consent',
    given.date && `of ${longDate(given.date.value)}`,
    given.eye && `for the ${given.eye.value} eye`,
  ]);
  if (given.confirmed === undefined) return `${which} was seen`;
  return given.confirmed.value ? `the patient confirmed ${which}` : `the patient did not confirm ${which}`;
}

function pause(name: string, key: 'sign-in' | 'time-out' | 'sign-out', safety: Safety, tidy: Tidy): string | undefined {
  const held = safety[key];
  if (safety.$.said[key]?.word === 'not done') return `${name} was not done`;
  if (!held) return undefined;
  return join([`${name} was done`, held.time && `at ${tidy(held.time)}`, held.by && `(${tidy(held.by)})`]);
}

function lensVerified(safety: Safety, tidy: Tidy): string | undefined {
  const said = safety.$.said['lens-verified']?.word;
  if (said === 'not done') return 'The lens was not verified against plan and box';
  if (said === 'not applicable') return 'Verification of a lens did not apply';
  const verified = safety['lens-verified'];
  if (!verified) return undefined;
  const lens = join([tidy(verified.model), tidy(verified.power)], ', ');
  const by = verified.by?.items.map((person) => tidy(person)) ?? [];
  return join([
    'The lens',
    lens !== '' && `(${lens})`,
    'was verified',
    verified.eye && `for the ${verified.eye.value} eye`,
    verified.time && `at ${tidy(verified.time)}`,
    by.length > 0 && `by ${and(by)}`,
  ]);
}
