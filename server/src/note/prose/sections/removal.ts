import type { Operation } from '@sideport/schemas';
import { whyNoExtraction } from '../../computing/natural-lens.ts';
import { and, join } from '../english.ts';
import { Passage, type Tidy } from '../passage.ts';
import { capsuleWords } from './capsule.ts';

type Step = NonNullable<NonNullable<Operation['nucleus']>['steps']>['items'][number];
type Settings = Pick<Step, 'bottle-height' | 'set-pressure' | 'vacuum' | 'flow'>;

/** The nucleus, the cortex, and what capsule, zonule and vitreous were like behind them. */
export function removalPassage(note: Operation, tidy: Tidy): Passage {
  const passage = new Passage();
  const said = note.$.said;
  const { nucleus, cortex } = note;
  // Where no natural lens is to be removed, that it was not removed says nothing, and misleads.
  const isDue = whyNoExtraction(note) === undefined;
  if (isDue && said['nucleus']?.word === 'not done') passage.say('The nucleus was not removed');
  passage.say(nucleus?.technique && `The nucleus was removed by ${nucleus.technique.value}`);
  for (const step of nucleus?.steps?.items ?? []) passage.say(stepWords(step, tidy));
  passage.say(energy(note, tidy));
  passage.say(tidy(nucleus?.text));
  if (isDue && said['cortex']?.word === 'not done') passage.say('No cortex was removed');
  passage.say(cortexWords(note, tidy));
  passage.say(cortex && polishing(cortex));
  capsuleWords(note, tidy, passage, isDue || nucleus !== undefined || cortex !== undefined);
  passage.say(vitrectomyWords(note, tidy));
  if (isDue) {
    passage.need('removal of the nucleus', nucleus, said['nucleus']?.word);
    passage.need('removal of the cortex', cortex, said['cortex']?.word);
  }
  const state = note['capsule-state'];
  passage.need('anterior capsule', state?.anterior);
  passage.need('posterior capsule', state?.posterior);
  passage.need('zonule', state?.zonule);
  passage.need('vitreous', state?.vitreous);
  return passage;
}

/** What is removed in the operation gives the section its name. */
export function removalHeading(note: Operation): string {
  return whyNoExtraction(note) === undefined ? 'Removal of the cataract' : 'Capsule and vitreous';
}

const STEP_NAMES: Readonly<Record<string, string>> = {
  sculpt: 'sculpting',
  chop: 'chopping',
  epinucleus: 'removal of the epinucleus',
};

function settings(step: Settings, tidy: Tidy): readonly (string | undefined)[] {
  return [
    step['bottle-height'] && `bottle ${tidy(step['bottle-height'])}`,
    step['set-pressure'] && `set pressure ${tidy(step['set-pressure'])}`,
    step.vacuum && `vacuum ${tidy(step.vacuum)}`,
    step.flow && `flow ${tidy(step.flow)}`,
  ];
}

function stepWords(step: Step, tidy: Tidy): string {
  const ultrasound = join([step['ultrasound-mode']?.value, 'ultrasound', step.power && `at ${tidy(step.power)}`]);
  const used = (step['ultrasound-mode'] ?? step.power) ? ultrasound : undefined;
  return `${step.step ? (STEP_NAMES[step.step.value] ?? step.step.value) : 'step not recorded'}: ${join([...settings(step, tidy), used], ', ')}`;
}

function energy({ nucleus }: Operation, tidy: Tidy): string | undefined {
  const parts = [
    nucleus?.['ultrasound-time'] &&
      join([
        `${tidy(nucleus['ultrasound-time'])} of ultrasound`,
        nucleus['mean-power'] && `at a mean power of ${tidy(nucleus['mean-power'])}`,
      ]),
    nucleus?.['ultrasound-time'] === undefined && nucleus?.['mean-power']
      ? `a mean power of ${tidy(nucleus['mean-power'])}`
      : undefined,
    nucleus?.['torsional-time'] &&
      join([
        `${tidy(nucleus['torsional-time'])} of torsional ultrasound`,
        nucleus['torsional-power'] && `at an amplitude of ${tidy(nucleus['torsional-power'])}`,
      ]),
    nucleus?.['fluid-used'] && `${tidy(nucleus['fluid-used'])} of fluid`,
  ].filter((part) => part !== undefined);
  const shown =
    nucleus?.['dissipated-energy'] &&
    `the machine showed a dissipated energy of ${tidy(nucleus['dissipated-energy'])}, a figure bound to the machine`;
  return join([parts.length > 0 && `it took ${and(parts)}`, shown], '; ') || undefined;
}

function cortexWords({ cortex }: Operation, tidy: Tidy): string | undefined {
  if (!cortex) return undefined;
  const method =
    cortex.method &&
    { bimanual: 'bimanually', coaxial: 'coaxially', manual: 'by hand', 'irrigation-aspiration': 'by machine' }[
      cortex.method.value
    ];
  const used = settings(cortex, tidy).filter((part) => part !== undefined);
  const how = used.length > 0 ? ` (${used.join(', ')})` : '';
  if (cortex.complete?.value === false)
    return join([`the cortex was not completely removed${how}`, method && `it was removed ${method}`], '; ');
  return join(['the cortex was removed', and([method, cortex.complete && 'completely'])]) + how;
}

function polishing(cortex: NonNullable<Operation['cortex']>): string | undefined {
  const polished = [
    cortex['polished-anterior']?.value && 'anterior',
    cortex['polished-posterior']?.value && 'posterior',
  ].filter((part) => typeof part === 'string');
  if (polished.length > 0) return `the ${and(polished)} capsule ${polished.length > 1 ? 'were' : 'was'} polished`;
  const stated = cortex['polished-anterior'] ?? cortex['polished-posterior'];
  return stated ? 'the capsule was not polished' : undefined;
}

function vitrectomyWords({ vitrectomy, $ }: Operation, tidy: Tidy): string | undefined {
  const said = $.said['vitrectomy']?.word;
  if (said === 'none' || said === 'not done') return 'No vitrectomy was done';
  if (!vitrectomy) return undefined;
  const approach =
    vitrectomy.approach === undefined
      ? 'A vitrectomy was done'
      : vitrectomy.approach.value === 'anterior'
        ? 'An anterior vitrectomy was done'
        : 'A vitrectomy through the pars plana was done';
  const stain = vitrectomy.stain
    ? `with ${tidy(vitrectomy.stain)} to stain the vitreous`
    : vitrectomy.$.said['stain']?.word === 'none'
      ? 'without a stain'
      : undefined;
  const clear =
    vitrectomy.complete &&
    (vitrectomy.complete.value ? 'the chamber was free of vitreous' : 'the chamber was not free of vitreous');
  return join([join([approach, stain]), clear, tidy(vitrectomy.text)], '; ');
}
