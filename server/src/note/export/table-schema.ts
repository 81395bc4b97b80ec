import type { Column, Table } from './table.ts';

/** A descriptor of the tables, so that a program knows types, units and keys. */
export interface DataPackage {
  readonly profile: 'tabular-data-package';
  readonly name: string;
  readonly title: string;
  readonly description: string;
  readonly resources: readonly object[];
}

const DIALECT = { delimiter: ',', quoteChar: '"', doubleQuote: true, lineTerminator: '\r\n', header: true };

/**
 * Describes tables that were written to files of their own names.
 * Source: Frictionless Data Package and Table Schema, version 1.
 */
export function dataPackage(
  tables: readonly Table<never>[],
  options: { readonly format: 'csv' | 'parquet'; readonly guard: boolean; readonly remarks: readonly string[] },
): DataPackage {
  const guard =
    options.format === 'csv' && options.guard
      ? ' Text that a spreadsheet would run as a formula has an apostrophe before it; numbers never have.'
      : '';
  return {
    profile: 'tabular-data-package',
    name: 'operative-notes',
    title: 'Operative notes of cataract surgery',
    description: [
      `One row for each operation on one eye; parts stand in tables of their own, joined by note_id.${guard}`,
      ...options.remarks,
    ].join(' '),
    resources: tables.map((table) => resource(table, options.format)),
  };
}

function resource(table: Table<never>, format: 'csv' | 'parquet'): object {
  return {
    name: table.name,
    title: table.title,
    path: `${table.name}.${format}`,
    profile: 'tabular-data-resource',
    format,
    mediatype: format === 'csv' ? 'text/csv' : 'application/vnd.apache.parquet',
    ...(format === 'csv' ? { encoding: 'utf-8', dialect: DIALECT } : {}),
    schema: {
      fields: table.columns.map((column) => field(column)),
      missingValues: [''],
      primaryKey: table.key,
      ...(table.partOf === undefined
        ? {}
        : { foreignKeys: [{ fields: 'note_id', reference: { resource: table.partOf, fields: 'note_id' } }] }),
    },
  };
}

function field(column: Column<never>): object {
  const constraints = {
    ...(column.required ? { required: true } : {}),
    ...(column.words ? { enum: column.words } : {}),
  };
  return {
    name: column.name,
    title: column.title,
    type: column.type,
    ...(column.type === 'boolean' ? { trueValues: ['true'], falseValues: ['false'] } : {}),
    ...(column.unit === undefined ? {} : { unit: column.unit }),
    ...(Object.keys(constraints).length > 0 ? { constraints } : {}),
  };
}
