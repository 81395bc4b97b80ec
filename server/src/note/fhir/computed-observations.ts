import type { Observation } from 'fhir/r4';
import type { ComputedValue } from '../computing/computed.ts';
import { concept, quantityOf, type Fhir } from './fhir.ts';
import type { Observations } from './observations.ts';

/** Computed values as observations that say that they were computed, how, and with which cautions. */
export function addComputed(computed: readonly ComputedValue[], observations: Observations): readonly string[] {
  return computed.map((value, index) =>
    observations.add(
      `${value.name} of ${value.path.join('.')} (computed)`,
      {
        ...valueOf(value),
        ...(value.cautions.length > 0 ? { note: value.cautions.map((text) => ({ text })) } : {}),
      },
      // One name can be computed several times, even beside one field.
      { method: `${value.method} (${value.source})`, key: `computed ${index}` },
    ),
  );
}

function valueOf({ value, unit, display }: ComputedValue): Partial<Fhir<Observation>> {
  if (typeof value === 'boolean') return { valueBoolean: value };
  if (typeof value === 'number') return { valueQuantity: quantityOf(decimal(value), unit) };
  if (typeof value === 'object' && value !== null && 'magnitude' in value && typeof value.magnitude === 'number') {
    const axis =
      'axis' in value && typeof value.axis === 'number'
        ? [{ code: concept('axis'), valueQuantity: quantityOf(decimal(value.axis), '°') }]
        : [];
    return {
      component: [{ code: concept('magnitude'), valueQuantity: quantityOf(decimal(value.magnitude), unit) }, ...axis],
    };
  }
  return { valueString: display };
}

/** Six significant digits, never in exponent form; more would pretend to an exactness that no measurement has. */
function decimal(value: number): string {
  const text = String(Number(value.toPrecision(6)));
  return text.includes('e') ? value.toFixed(10) : text;
}
