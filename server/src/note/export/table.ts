/** What a column holds. Numbers stay text until a binary format needs them: 21.50 is not 21.5 in a signed record. */
export type ColumnType = 'string' | 'number' | 'integer' | 'boolean' | 'date';

/** A cell as it leaves: decimals as written, undefined for nothing. */
export type Cell = string | boolean | undefined;

/** One column of a table made from rows `R`; the name carries the unit. */
export interface Column<R> {
  readonly name: string;
  readonly type: ColumnType;
  readonly title: string;
  /** UCUM or trade unit, for the descriptor. */
  readonly unit?: string;
  readonly required?: boolean;
  readonly words?: readonly string[];
  readonly cell: (row: R) => Cell;
}

export interface Table<R> {
  readonly name: string;
  readonly title: string;
  readonly columns: readonly Column<R>[];
  readonly key: readonly string[];
  /** Where the first key column points, for a table of parts. */
  readonly partOf?: string;
}

/** One row as its cells in the order of the columns. */
export type Cells = readonly Cell[];

export function cellsOf<R>(table: Table<R>, row: R): Cells {
  return table.columns.map((column) => column.cell(row));
}
