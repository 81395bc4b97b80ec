import type { Operation } from '@sideport/schemas';
import { term } from '../as-typed.ts';
import { and, join, where } from '../english.ts';
import type { Passage, Tidy } from '../passage.ts';

type State = NonNullable<Operation['capsule-state']>;

const VITREOUS = {
  'not prolapsed': 'The vitreous did not prolapse',
  prolapsed: 'The vitreous prolapsed',
  'absent after vitrectomy': 'The vitreous was absent after an earlier vitrectomy',
  'silicone oil': 'Silicone oil filled the vitreous cavity',
};

/**
 * Capsule, zonule and vitreous as facts.
 * @param after whether lens matter was removed before, so that the state is one after it
 */
export function capsuleWords(note: Operation, tidy: Tidy, passage: Passage, after: boolean): void {
  const state = note['capsule-state'];
  if (!state) return;
  const capsules = bothCapsules(state);
  passage.say(capsules === '' ? undefined : join([after && 'After this', capsules]));
  passage.say(zonuleWords(state, tidy));
  passage.say(state.vitreous && VITREOUS[state.vitreous.value]);
  if (state['vitreous-in-wound'])
    passage.say(
      state['vitreous-in-wound'].value ? 'Vitreous was left in a wound at the end' : 'No vitreous was left in a wound',
    );
  const before = state.before?.items.map(({ value }) => `the ${value}`) ?? [];
  passage.say(before.length > 0 ? `Already so before the operation: ${and(before)}` : undefined);
  passage.say(tidy(state.text));
}

function bothCapsules({ anterior, posterior }: State): string {
  if (anterior && anterior.value === posterior?.value)
    return `the anterior and the posterior capsule were ${anterior.value}`;
  return and([
    anterior && `the anterior capsule was ${bracketed(term(anterior))}`,
    posterior && `the posterior capsule was ${bracketed(term(posterior))}`,
  ]);
}

/** `torn, contained` reads as part of the next phrase; `torn (contained)` does not. */
const bracketed = (state: string): string => state.replace(/, (.+)$/u, ' ($1)');

/** `ruptured over 3 clock hours, the middle at 315°`. */
function zonuleWords(state: State, tidy: Tidy): string | undefined {
  const { zonule, 'zonule-extent': extent, 'zonule-at': middle } = state;
  if (!zonule && !extent && !middle) return undefined;
  const hours = extent && `over ${extent.value.amount === 1 ? '1 clock hour' : tidy(extent)}`;
  const place = where(middle);
  const was = join([zonule ? `The zonule was ${zonule.value}` : 'A defect of the zonule lay', hours]);
  if (place === undefined) return was;
  return extent !== undefined && middle?.value.kind !== 'word' ? `${was}, the middle ${place}` : `${was} ${place}`;
}
