import type { SchemaElement } from 'hyparquet-writer';
import type { Cell, ColumnType, Table } from './table.ts';

/** A value as a Parquet file holds it. */
export type ParquetValue = string | number | boolean | Date | null;

const ELEMENTS: Readonly<Record<ColumnType, Partial<SchemaElement>>> = {
  string: { type: 'BYTE_ARRAY', converted_type: 'UTF8' },
  number: { type: 'DOUBLE' },
  integer: { type: 'INT32' },
  boolean: { type: 'BOOLEAN' },
  date: { type: 'INT32', converted_type: 'DATE' },
};

/** The schema of a table; every column may be empty but those the table requires. */
export function parquetSchema(table: Table<never>): SchemaElement[] {
  return [
    { name: 'root', num_children: table.columns.length },
    ...table.columns.map((column): SchemaElement => ({
      ...ELEMENTS[column.type],
      name: column.name,
      repetition_type: column.required ? 'REQUIRED' : 'OPTIONAL',
    })),
  ];
}

/** A cell in the type of its column. */
export function parquetValue(cell: Cell, type: ColumnType): ParquetValue {
  if (cell === undefined) return null;
  if (type === 'number' || type === 'integer') return Number(cell);
  // A calendar date is a count of days; midnight UTC keeps it the same day everywhere.
  if (type === 'date') return new Date(`${String(cell)}T00:00:00Z`);
  return type === 'boolean' ? cell === true : String(cell);
}
