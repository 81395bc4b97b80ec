import type { Operation } from '@sideport/schemas';
import type { ComputedNote } from '../computing/computed.ts';

export interface Prediction {
  readonly valueD: number;
  readonly by: string;
}

/**
 * The refraction predicted for the lens that was implanted. The recorded prediction counts when the planned lens went
 * into the bag; for another power or model the formula of the plan must say it. A lens elsewhere than in the bag has
 * none: the constants do not hold there.
 */
export function impliedPrediction(note: Operation, computed: ComputedNote): Prediction | null {
  const { plan, lens } = note;
  if (lens?.placed?.value !== 'capsular bag' || lens.power === undefined) return null;
  const isPlanned =
    lens.power.value.amount === plan?.lens?.power?.value.amount && lens.model?.value === plan.lens.model?.value;
  const by = plan?.['predicted-by']?.value ?? plan?.formula?.items[0]?.value ?? 'not said by which formula';
  if (isPlanned && plan?.predicted !== undefined) return { valueD: plan.predicted.value.amount, by };
  const computedFor = computed.values.find(
    ({ name, path }) => name === `predicted-refraction-${slugOf(by)}` && path[0] === 'lens',
  );
  return typeof computedFor?.value === 'number' ? { valueD: computedFor.value, by: `${by}, computed` } : null;
}

/** The formula as names of computed values write it. */
function slugOf(title: string): string {
  return title.toLowerCase().replaceAll(/[/ ]+/gu, '-');
}
