import type { Observation } from 'fhir/r4';
import type { ComputedValue } from '../computing/computed.ts';
import { concept, documentDecimal, quantityOf, type Fhir } from './fhir.ts';
import type { Observations } from './observations.ts';

/** Computed values as observations that say that they were computed, how, and with which cautions. */
export function addComputed(computed: readonly ComputedValue[], observations: Observations): readonly string[] {
  return computed.map((value, index) =>
    (isOfBiometry(value) ? observations.ofBiometry : observations).add(
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

const isOfBiometry = ({ path }: ComputedValue): boolean => path[0] === 'preop' && path[1] === 'biometry';

function valueOf({ value, unit, display }: ComputedValue): Partial<Fhir<Observation>> {
  if (typeof value === 'boolean') return { valueBoolean: value };
  if (typeof value === 'number') return { valueQuantity: quantityOf(documentDecimal(value), unit) };
  if (typeof value === 'object' && value !== null && 'magnitude' in value && typeof value.magnitude === 'number') {
    const axis =
      'axis' in value && typeof value.axis === 'number'
        ? [{ code: concept('axis'), valueQuantity: quantityOf(documentDecimal(value.axis), '°') }]
        : [];
    return {
      component: [
        { code: concept('magnitude'), valueQuantity: quantityOf(documentDecimal(value.magnitude), unit) },
        ...axis,
      ],
    };
  }
  return { valueString: display };
}
