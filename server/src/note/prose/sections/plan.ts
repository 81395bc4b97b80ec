import type { Field, Operation } from '@sideport/schemas';
import { and, join, where } from '../english.ts';
import { Passage, type Tidy } from '../passage.ts';
import { placePhrase } from '../places.ts';

type Plan = NonNullable<Operation['plan']>;

/** What was intended. */
export function planPassage(note: Operation, tidy: Tidy): Passage {
  const passage = new Passage();
  const plan = note.plan;
  const is = note.status?.value === 'planned' ? 'is' : 'was';
  if (plan) {
    const listed = plan.eye?.value;
    passage.say(
      listed !== undefined && listed !== note.eye?.value ? `The side on the operating list ${is} ${listed}` : undefined,
    );
    passage.say(plan.target && `The target refraction ${is} ${tidy(plan.target)}`);
    passage.say(choice(plan, tidy, is));
    passage.say(plan.lens && `Planned lens: ${lensWords(plan.lens, tidy)}`);
    if (plan['spare-lens']) {
      const spare = plan['spare-lens'];
      const place = placePhrase(spare.placed);
      passage.say(join([`Spare lens: ${lensWords(spare, tidy)}`, place && `to be placed ${place}`], ', '));
    }
    if (plan.$.said['spare-lens']?.word === 'none') passage.say(`No spare lens ${is} planned`);
    passage.say(incision(plan, tidy, is));
    const anaesthesia = plan.anaesthesia?.items.map((kind) => kind.value) ?? [];
    passage.say(anaesthesia.length > 0 ? `Planned anaesthesia: ${and(anaesthesia)}` : undefined);
    passage.say(plan.seat && `The surgeon ${is} to sit ${plan.seat.value}ly`);
    passage.say(ring(plan.ring?.value, is));
    const precautions = plan.precautions?.items.map(({ value }) => PRECAUTIONS[value] ?? value) ?? [];
    passage.say(precautions.length > 0 ? `Precautions: ${precautions.join('; ')}` : undefined);
    if (plan.$.said['precautions']?.word === 'none') passage.say('Precautions: none');
    for (const step of plan['what-if']?.items ?? []) {
      passage.say(join([step.if && `If ${tidy(step.if)}`, step.then && `${tidy(step.then)}`], ': '));
    }
    passage.say(tidy(plan.text));
  }
  passage.need('target refraction', plan?.target);
  passage.need('formula', plan?.formula);
  passage.need('planned lens', plan?.lens);
  return passage;
}

/** Precautions whose term names what they guard against. */
const PRECAUTIONS: Readonly<Record<string, string>> = {
  'floppy iris': 'for a floppy iris',
  'reverse pupillary block': 'against reverse pupillary block',
  'weak zonule': 'for a weak zonule',
  'small pupil': 'for a small pupil',
};

function choice(plan: Plan, tidy: Tidy, is: 'is' | 'was'): string | undefined {
  const formulas = plan.formula?.items ?? [];
  const adjustment = plan['length-adjustment']?.value;
  const by = plan['predicted-by'];
  const predicted =
    plan.predicted && `the predicted refraction ${is} ${tidy(plan.predicted)}${by ? ` by ${formulaWords(by)}` : ''}`;
  if (formulas.length === 0) return predicted;
  const adjusted =
    adjustment === undefined
      ? undefined
      : adjustment === 'none'
        ? 'without adjustment of the axial length'
        : `with the axial length adjusted by ${adjustment}`;
  const chosen = `the lens ${is} chosen with ${and(formulas.map(formulaWords))}`;
  return join([join([chosen, adjusted], formulas.some(isOther) ? ', ' : ' '), predicted], '; ');
}

const isOther = ({ value }: Field<string>): boolean => value === 'other';

function formulaWords(formula: Field<string>): string {
  if (!isOther(formula)) return formula.value;
  return /biometer/iu.test(formula.text) ? "the biometer's own formula" : 'a formula that is not named here';
}

/** `Halden Optics HX-1, monofocal, +5.5 D`. */
export function lensWords(lens: NonNullable<Plan['lens']> | NonNullable<Plan['spare-lens']>, tidy: Tidy): string {
  const axis = 'axis' in lens && lens.axis ? `at ${tidy(lens.axis)}` : undefined;
  const cylinder = lens.cylinder && join([`cylinder ${tidy(lens.cylinder)}`, axis]);
  return join([join([tidy(lens.maker), tidy(lens.model)]), lens.kind?.value, tidy(lens.power), cylinder ?? axis], ', ');
}

function incision({ incision: planned }: Plan, tidy: Tidy, is: 'is' | 'was'): string | undefined {
  if (!planned?.at && !planned?.width) return undefined;
  const steep = planned['on-steep-meridian']?.value;
  const meridian =
    steep === undefined ? undefined : steep ? 'on the steep meridian' : 'not meant to lie on the steep meridian';
  return join(
    [
      join([
        `The main incision ${is} planned`,
        where(planned.at),
        planned.width && `with a width of ${tidy(planned.width)}`,
      ]),
      meridian,
    ],
    ', ',
  );
}

function ring(plan: string | undefined, is: 'is' | 'was'): string | undefined {
  if (plan === 'planned') return `A tension ring ${is} planned`;
  if (plan === 'ready') return `A tension ring ${is} to be ready`;
  return plan === undefined ? undefined : `No tension ring ${is} planned`;
}
