import { join } from 'node:path';
import { csvRecord, type CsvOptions } from '../../note/export/csv.ts';
import { dataPackage } from '../../note/export/table-schema.ts';
import type { FilledTable } from '../../note/export/tables/all-tables.ts';
import type { FileWriter, Files } from '../world.ts';
import type { RecordWriter } from './record-writer.ts';

export interface CsvSettings extends CsvOptions {
  /** A byte order mark, for spreadsheets that take a file without one for another encoding. */
  readonly mark: boolean;
  /** Sentences for the descriptor: what was done to the data. */
  readonly remarks: readonly string[];
}

/** Each table as a file of its own in a folder, with a descriptor of all. */
export function csvFolderWriter(
  tables: readonly FilledTable[],
  folder: string,
  files: Files,
  settings: CsvSettings,
): RecordWriter {
  const writers = tables.map((filled) =>
    oneTable(filled, files.create(join(folder, `${filled.table.name}.csv`)), settings),
  );
  return {
    form: 'tables',
    add: (record) => {
      for (const writer of writers) writer.add(record);
    },
    finish: () => {
      for (const writer of writers) writer.finish();
      const described = dataPackage(
        tables.map(({ table }) => table),
        { format: 'csv', guard: settings.guard ?? true, remarks: settings.remarks },
      );
      files.write(join(folder, 'datapackage.json'), `${JSON.stringify(described, null, 2)}\n`);
    },
    remarks: [],
  };
}

/** The operations alone, where there is room for one table only. */
export function csvOperationsWriter(
  tables: readonly FilledTable[],
  file: FileWriter,
  settings: CsvSettings,
): RecordWriter {
  const [operations] = tables;
  const others = tables.slice(1).map(({ table }) => table.name);
  const remarks = [
    `Only the table of operations was written. Name a folder for the others (${others.join(', ')}): --output FOLDER.`,
  ];
  return operations
    ? { ...oneTable(operations, file, settings), leavesOut: (kind) => kind !== 'operation', remarks }
    : { form: 'tables', add: () => undefined, finish: () => file.close(), remarks };
}

function oneTable({ table, rowsOf }: FilledTable, file: FileWriter, settings: CsvSettings): RecordWriter {
  const heading = csvRecord(
    table.columns.map(({ name }) => name),
    settings,
  );
  const isNumber = (index: number): boolean => ['number', 'integer'].includes(table.columns[index]?.type ?? 'string');
  file.write(settings.mark ? `\ufeff${heading}` : heading);
  return {
    form: 'tables',
    add: ({ leaving }) => {
      for (const cells of rowsOf(leaving)) file.write(csvRecord(cells, { ...settings, isNumber }));
    },
    finish: () => file.close(),
    remarks: [],
  };
}
