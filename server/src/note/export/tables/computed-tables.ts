import type { ComputedValue } from '../../computing/computed.ts';
import type { Cell } from '../table.ts';
import { computedDecimal } from '../written-value.ts';
import { columnsOf } from './column.ts';
import { partTable, type PartRow } from './part-table.ts';

const { text, number } = columnsOf<PartRow<ComputedValue>>();

const columns = [
  text('name', 'Name of the value', ({ part }) => part.name),
  number('value', 'The value, where it is one number or a magnitude', 'see unit', ({ part }) => numberOf(part.value)),
  number('axis_deg', 'Axis of the value', 'deg', ({ part }) => axisOf(part.value)),
  text('unit', 'Unit', ({ part }) => part.unit || undefined),
  text('in_words', 'The value as it is shown', ({ part }) => part.display),
  text('method', 'Method', ({ part }) => part.method),
  text('source', 'Source', ({ part }) => part.source),
  text('cautions', 'Cautions', ({ part }) => part.cautions.join(' ') || undefined),
];

export const computedValues = partTable(
  'operation',
  'computed',
  'Values computed from operations, with their method, source and cautions',
  ({ computed }) => computed,
  columns,
);

export const computedAtVisits = partTable(
  'follow-up',
  'computed-at-visits',
  'Values computed from later visits together with their operation, with their method, source and cautions',
  ({ computed }) => computed,
  columns,
);

const numberOf = (value: ComputedValue['value']): Cell => {
  if (typeof value === 'number') return computedDecimal(value);
  return isVector(value) ? computedDecimal(value.magnitude) : undefined;
};
const axisOf = (value: ComputedValue['value']): Cell =>
  isVector(value) && value.axis !== null ? computedDecimal(value.axis) : undefined;

function isVector(
  value: ComputedValue['value'],
): value is { readonly magnitude: number; readonly axis: number | null } {
  return typeof value === 'object' && value !== null && 'magnitude' in value && typeof value.magnitude === 'number';
}
