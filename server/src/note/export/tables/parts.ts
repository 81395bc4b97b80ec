import type { Amendment, Operation, ReadList } from '@sideport/schemas';
import { complicationKinds, drugPurposes, routes } from '@sideport/schemas/vocabulary/outcome.ts';
import {
  architectures,
  incisionKinds,
  incisionPlanes,
  phacoSteps,
  stages,
  ultrasoundModes,
} from '@sideport/schemas/vocabulary/theatre.ts';
import type { CodeSuggestion } from '../../codes/suggestion.ts';
import type { ComputedValue } from '../../computing/computed.ts';
import { amount, position, word, yesNo } from '../cell-values.ts';
import type { LeavingOperation } from '../leaving.ts';
import type { Cell, Table } from '../table.ts';
import { columnsOf } from './column.ts';

/** One part of a record with the id of the record and its place in the list, from 1. */
export interface PartRow<P> {
  readonly id: string;
  readonly number: number;
  readonly part: P;
  readonly eye: 'right' | 'left' | undefined;
}

type Item<K extends 'complications' | 'incisions' | 'drugs'> =
  NonNullable<Operation[K]> extends ReadList<infer E> ? E : never;
type Step = NonNullable<NonNullable<Operation['nucleus']>['steps']>['items'][number];
type Change = NonNullable<Amendment['changes']>['items'][number];

/** A table of parts of operations: its columns, and how to find the parts in an operation. */
export interface PartTable<P> extends Table<PartRow<P>> {
  readonly partsOf: (leaving: LeavingOperation) => readonly P[];
}

function partTable<P>(
  name: string,
  title: string,
  partsOf: PartTable<P>['partsOf'],
  columns: Table<PartRow<P>>['columns'],
): PartTable<P> {
  const { key, integer } = columnsOf<PartRow<P>>();
  const first = [
    key('note_id', 'Note id', ({ id }) => id),
    integer('number', 'Place in the list, from 1', '1', (row) => String(row.number)),
  ];
  return { name, title, key: ['note_id', 'number'], partOf: 'operations', partsOf, columns: [...first, ...columns] };
}

/** The rows of a table of parts for one record. */
export function partRows<P>(table: PartTable<P>, leaving: LeavingOperation): readonly PartRow<P>[] {
  const id = leaving.note.id?.value ?? '';
  return table.partsOf(leaving).map((part, index) => ({ id, number: index + 1, part, eye: leaving.note.eye?.value }));
}

const complication = columnsOf<PartRow<Item<'complications'>>>();
const incision = columnsOf<PartRow<Item<'incisions'>>>();
const step = columnsOf<PartRow<Step>>();
const drug = columnsOf<PartRow<Item<'drugs'>>>();
const computed = columnsOf<PartRow<ComputedValue>>();
const code = columnsOf<PartRow<CodeSuggestion>>();
const change = columnsOf<PartRow<{ readonly amendment: Amendment; readonly change: Change | undefined }>>();

const dosePart = ({ part }: PartRow<Item<'drugs'>>, which: 'mass' | 'volume' | 'strength'): Cell => {
  const value = part.dose?.value[which];
  return value === undefined ? undefined : String(value);
};

export const complications = partTable<Item<'complications'>>(
  'complications',
  'Complications of operations',
  ({ note }) => note.complications?.items ?? [],
  [
    complication.term('what', 'What went wrong', complicationKinds, ({ part }) => word(part.what)),
    complication.term('stage', 'Stage of the operation', stages, ({ part }) => word(part.when)),
    complication.text('extent', 'Extent', ({ part }) => word(part.extent)),
    complication.text('action', 'What was done', ({ part }) => word(part.action)),
    complication.text('account', 'Account', ({ part }) => word(part.account)),
    complication.yesNo('patient_told', 'Patient told', ({ part }) => yesNo(part.told)),
  ],
);

export const incisions = partTable<Item<'incisions'>>(
  'incisions',
  'Incisions',
  ({ note }) => note.incisions?.items ?? [],
  [
    incision.term('kind', 'Kind', incisionKinds, ({ part }) => word(part.kind)),
    incision.text('site', 'Site as written', ({ part }) => part.at?.text),
    incision.number('position_deg', 'Position on the dial, 0 to 360 counter-clockwise', 'deg', ({ part, eye }) =>
      position(part.at, eye),
    ),
    incision.number('width_mm', 'Width', 'mm', ({ part }) => amount(part.width)),
    incision.number('tunnel_mm', 'Length of the tunnel', 'mm', ({ part }) => amount(part.tunnel)),
    incision.number('enlarged_to_mm', 'Enlarged to', 'mm', ({ part }) => amount(part['enlarged-to'])),
    incision.term('plane', 'Place of the wound', incisionPlanes, ({ part }) => word(part.plane)),
    incision.term('architecture', 'Architecture', architectures, ({ part }) => word(part.architecture)),
  ],
);

export const steps = partTable<Step>(
  'steps',
  'Steps of removing the nucleus, with the settings of the machine',
  ({ note }) => note.nucleus?.steps?.items ?? [],
  [
    step.term('step', 'Step', phacoSteps, ({ part }) => word(part.step)),
    step.number('bottle_height_cm', 'Bottle height', 'cm', ({ part }) => amount(part['bottle-height'])),
    step.number('set_pressure_mmhg', 'Set infusion pressure', 'mmHg', ({ part }) => amount(part['set-pressure'])),
    step.number('vacuum_mmhg', 'Vacuum', 'mmHg', ({ part }) => amount(part.vacuum)),
    step.number('flow_ml_per_min', 'Aspiration flow', 'mL/min', ({ part }) => amount(part.flow)),
    step.term('ultrasound_mode', 'Ultrasound mode', ultrasoundModes, ({ part }) => word(part['ultrasound-mode'])),
    step.number('power_percent', 'Ultrasound power', '%', ({ part }) => amount(part.power)),
  ],
);

export const drugs = partTable<Item<'drugs'>>('drugs', 'Drugs given', ({ note }) => note.drugs?.items ?? [], [
  drug.text('drug', 'Drug', ({ part }) => word(part.drug)),
  drug.term('purpose', 'Purpose', drugPurposes, ({ part }) => word(part.purpose)),
  drug.term('route', 'Route', routes, ({ part }) => word(part.route)),
  drug.number('mass_mg', 'Dose: mass', 'mg', (row) => dosePart(row, 'mass')),
  drug.number('volume_ml', 'Dose: volume', 'mL', (row) => dosePart(row, 'volume')),
  drug.number('strength_percent', 'Dose: strength', '%', (row) => dosePart(row, 'strength')),
]);

export const computedValues = partTable<ComputedValue>(
  'computed',
  'Computed values, with their method, source and cautions',
  ({ computed: values }) => values,
  [
    computed.text('name', 'Name of the value', ({ part }) => part.name),
    computed.number('value', 'The value, where it is one number or a magnitude', 'see unit', ({ part }) =>
      numberOf(part.value),
    ),
    computed.number('axis_deg', 'Axis of the value', 'deg', ({ part }) => axisOf(part.value)),
    computed.text('unit', 'Unit', ({ part }) => part.unit || undefined),
    computed.text('in_words', 'The value as it is shown', ({ part }) => part.display),
    computed.text('method', 'Method', ({ part }) => part.method),
    computed.text('source', 'Source', ({ part }) => part.source),
    computed.text('cautions', 'Cautions', ({ part }) => part.cautions.join(' ') || undefined),
  ],
);

export const suggestedCodes = partTable<CodeSuggestion>(
  'codes',
  'Suggested codes; a coder confirms them',
  ({ codes }) => codes?.suggestions ?? [],
  [
    code.text('system', 'Code system', ({ part }) => part.system),
    code.text('code', 'Code', ({ part }) => part.code),
    code.text('title', 'Title', ({ part }) => part.title),
    code.text('kind', 'Diagnosis or procedure', ({ part }) => part.kind),
    code.integer('sequence', 'Place in the sequence of its kind', '1', ({ part }) => String(part.order)),
    code.text('because', 'Fields that led to it', ({ part }) =>
      part.because.map(({ field, value }) => `${field}: ${value}`).join('; '),
    ),
    code.text('rule', 'Rule', ({ part }) => part.rule.says),
    code.text('rule_source', 'Source of the rule', ({ part }) => part.rule.source),
    code.text('edition', 'Edition', ({ part }) => part.edition),
    code.text('code_known', 'How well the code is known', ({ part }) => part.status),
    code.text('would_change', 'What would lead to another code', ({ part }) => part.wouldChange),
  ],
);

export const amendments = partTable<{ readonly amendment: Amendment; readonly change: Change | undefined }>(
  'amendments',
  'Amendments, one row for each change; the note itself stands as it was signed',
  ({ amendments: all }) =>
    all.flatMap((amendment) => {
      const changes: readonly (Change | undefined)[] = amendment.changes?.items ?? [];
      return (changes.length === 0 ? [undefined] : changes).map((one) => ({ amendment, change: one }));
    }),
  [
    change.text('amendment_id', 'Id of the amendment', ({ part }) => word(part.amendment.id)),
    change.text('kind', 'Kind', ({ part }) => word(part.amendment.kind)),
    change.text('at', 'Written at', ({ part }) => word(part.amendment.at)),
    change.text('by', 'Author', ({ part }) => word(part.amendment.by)),
    change.text('field', 'Field', ({ part }) => word(part.change?.field)),
    change.text('was', 'Was', ({ part }) => word(part.change?.was)),
    change.text('now', 'Now', ({ part }) => word(part.change?.now)),
    change.text('reason', 'Reason', ({ part }) => word(part.change?.reason) ?? word(part.amendment.reason)),
    change.text('text', 'Text', ({ part }) => word(part.amendment.text)),
  ],
);

const numberOf = (value: ComputedValue['value']): Cell => {
  if (typeof value === 'number') return String(value);
  return isVector(value) ? String(value.magnitude) : undefined;
};
const axisOf = (value: ComputedValue['value']): Cell =>
  isVector(value) && value.axis !== null ? String(value.axis) : undefined;

function isVector(
  value: ComputedValue['value'],
): value is { readonly magnitude: number; readonly axis: number | null } {
  return typeof value === 'object' && value !== null && 'magnitude' in value && typeof value.magnitude === 'number';
}
