import type { Operation, ReadList } from '@sideport/schemas';
import { complicationKinds, drugPurposes, routes } from '@sideport/schemas/vocabulary/outcome.ts';
import {
  architectures,
  incisionKinds,
  incisionPlanes,
  phacoSteps,
  stages,
  ultrasoundModes,
} from '@sideport/schemas/vocabulary/theatre.ts';
import { amount, position, word, yesNo } from '../cell-values.ts';
import type { Cell } from '../table.ts';
import { typedOr } from '../written-value.ts';
import { columnsOf } from './column.ts';
import { partTable, type PartRow } from './part-table.ts';

type Item<K extends 'complications' | 'incisions' | 'drugs'> =
  NonNullable<Operation[K]> extends ReadList<infer E> ? E : never;
type Step = NonNullable<NonNullable<Operation['nucleus']>['steps']>['items'][number];

const complication = columnsOf<PartRow<Item<'complications'>>>();
const incision = columnsOf<PartRow<Item<'incisions'>>>();
const step = columnsOf<PartRow<Step>>();
const drug = columnsOf<PartRow<Item<'drugs'>>>();

function dosePart({ part: { dose } }: PartRow<Item<'drugs'>>, which: 'mass' | 'volume' | 'strength'): Cell {
  const value = dose?.value[which];
  return value === undefined ? undefined : typedOr(dose?.text, value);
}

export const complications = partTable(
  'operation',
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

export const incisions = partTable('operation', 'incisions', 'Incisions', ({ note }) => note.incisions?.items ?? [], [
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
]);

export const steps = partTable(
  'operation',
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

export const drugs = partTable('operation', 'drugs', 'Drugs given', ({ note }) => note.drugs?.items ?? [], [
  drug.text('drug', 'Drug', ({ part }) => word(part.drug)),
  drug.term('purpose', 'Purpose', drugPurposes, ({ part }) => word(part.purpose)),
  drug.term('route', 'Route', routes, ({ part }) => word(part.route)),
  drug.number('mass_mg', 'Dose: mass', 'mg', (row) => dosePart(row, 'mass')),
  drug.number('volume_ml', 'Dose: volume', 'mL', (row) => dosePart(row, 'volume')),
  drug.number('strength_percent', 'Dose: strength', '%', (row) => dosePart(row, 'strength')),
]);
