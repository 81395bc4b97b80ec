import type { Leaving, LeavingDates, LeavingOperation } from '../leaving.ts';
import { cellsOf, type Cells, type Column, type Table } from '../table.ts';
import { amendmentRows, amendmentTable } from './amendments.ts';
import { comparedCodes, notCodedFacts, suggestedCodes } from './code-tables.ts';
import { computedAtVisits, computedValues } from './computed-tables.ts';
import { followUpTable } from './follow-ups.ts';
import { columnsBefore } from './operations-before.ts';
import { columnsDuring } from './operations-during.ts';
import { partRows, type PartTable } from './part-table.ts';
import { complications, drugs, incisions, steps } from './parts.ts';

/** A table together with the rows that one record adds to it. */
export interface FilledTable {
  readonly table: Table<never>;
  readonly rowsOf: (leaving: Leaving) => readonly Cells[];
}

/**
 * Every table of an export, the operations first.
 * @param withCodes whether codes were asked for
 */
export function tablesFor(dates: LeavingDates, withCodes: boolean): readonly FilledTable[] {
  const operations: Table<LeavingOperation> = {
    name: 'operations',
    title: 'One row for each operation on one eye',
    key: ['note_id'],
    columns: withoutWhatNeverLeaves([...columnsBefore(dates), ...columnsDuring], dates),
  };
  const followUps = followUpTable(dates);
  return [
    { table: operations, rowsOf: (leaving) => (leaving.kind === 'operation' ? [cellsOf(operations, leaving)] : []) },
    filled(incisions),
    filled(steps),
    filled(drugs),
    filled(complications),
    filled(computedValues),
    ...(withCodes ? [filled(suggestedCodes), filled(notCodedFacts), filled(comparedCodes)] : []),
    {
      table: amendmentTable,
      rowsOf: (leaving) => amendmentRows(leaving).map((row) => cellsOf(amendmentTable, row)),
    },
    { table: followUps, rowsOf: (leaving) => (leaving.kind === 'follow-up' ? [cellsOf(followUps, leaving)] : []) },
    filled(computedAtVisits),
  ];
}

function filled<P>(table: PartTable<P>): FilledTable {
  return {
    table,
    rowsOf: (leaving) => partRows(table, leaving).map((row) => cellsOf(table, row)),
  };
}

const NEVER_WITHOUT_IDENTIFIERS = [
  'start_time',
  'finish_time',
  'place',
  'ring_serial',
  'lens_serial',
  'lens_lot',
  'lens_expiry',
  'lens_udi',
];

/** A column that is always empty would only suggest that something is missing. */
function withoutWhatNeverLeaves(
  columns: readonly Column<LeavingOperation>[],
  dates: LeavingDates,
): readonly Column<LeavingOperation>[] {
  return dates === 'as recorded'
    ? columns
    : columns.filter((column) => !NEVER_WITHOUT_IDENTIFIERS.includes(column.name));
}
