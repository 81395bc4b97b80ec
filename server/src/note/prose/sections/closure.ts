import type { Operation } from '@sideport/schemas';
import { counted, join, longDate } from '../english.ts';
import type { Passage, Tidy } from '../passage.ts';

type Closure = NonNullable<Operation['closure']>;
type Incisions = NonNullable<Operation['incisions']>['items'];
type Sutures = NonNullable<Closure['sutures']>;

/** `two 10-0 nylon sutures were placed`; a wound without sutures is told with the closure. */
export function suturesWords(sutures: Sutures | undefined): string | undefined {
  if (!sutures) return undefined;
  const thing = join([sutures.gauge?.value, sutures.material?.value, 'suture']);
  const count = sutures.count?.value;
  const placed =
    count === undefined ? `${thing}s were placed` : `${counted(count, thing)} ${count === 1 ? 'was' : 'were'} placed`;
  return join([placed, sutures['remove-by'] && `to be removed by ${longDate(sutures['remove-by'].value)}`], ', ');
}

/** The sutures of the closure as a whole are not to be read as further ones beside those of the wounds. */
function closureSutures(sutures: Closure['sutures'], incisions: Incisions): string | undefined {
  const words = suturesWords(sutures);
  const ofWounds = incisions.reduce((sum, incision) => sum + (incision.sutures?.count?.value ?? 0), 0);
  const isTotal = ofWounds > 0 && (sutures?.count?.value ?? ofWounds) >= ofWounds;
  return join([words && isTotal && 'In all,', words]) || undefined;
}

/** Hydration, sutures, the test for a leak and the pressure at the end. */
export function closureSentences({ closure, incisions }: Operation, tidy: Tidy, passage: Passage): void {
  if (!closure) return;
  if (closure.hydration)
    passage.say(closure.hydration.value ? 'The wounds were hydrated' : 'The wounds were not hydrated');
  passage.say(closureSutures(closure.sutures, incisions?.items ?? []));
  if (closure.$.said['sutures']?.word === 'none') passage.say('No sutures were placed');
  passage.say(
    closure['leak-test'] &&
      `The test of the wounds showed ${closure['leak-test'].value === 'leak' ? 'a leak' : closure['leak-test'].value}`,
  );
  if (closure.$.said['leak-test']?.word === 'not done') passage.say('The wounds were not tested for a leak');
  passage.say(closure.pressure && `The pressure at the end was ${tidy(closure.pressure)}`);
  passage.say(
    closure['pressure-by-touch'] && `The pressure at the end was ${closure['pressure-by-touch'].value} by touch`,
  );
}
