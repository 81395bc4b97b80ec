import { join } from 'node:path';
import { ByteWriter, ParquetWriter, type Writer } from 'hyparquet-writer';
import { parquetSchema, parquetValue, type ParquetValue } from '../../note/export/parquet-shape.ts';
import { dataPackage } from '../../note/export/table-schema.ts';
import type { FilledTable } from '../../note/export/tables/all-tables.ts';
import type { FileWriter, Files } from '../world.ts';
import type { RecordWriter } from './record-writer.ts';

/**
 * Rows held before they are written as one group, more of a narrow table; the memory needed grows with this and not
 * with the notes.
 */
const LEAST_ROWS = 1000;
const CELLS = 50_000;

/** Each table as a Parquet file of its own in a folder, with a descriptor of all. */
export function parquetWriter(
  tables: readonly FilledTable[],
  folder: string,
  files: Files,
  remarks: readonly string[],
): RecordWriter {
  const writers = tables.map((filled) => oneTable(filled, files.create(join(folder, `${filled.table.name}.parquet`))));
  return {
    form: 'tables',
    add: (record) => {
      for (const writer of writers) writer.add(record);
    },
    finish: () => {
      for (const writer of writers) writer.finish();
      const described = dataPackage(
        tables.map(({ table }) => table),
        { format: 'parquet', guard: false, remarks },
      );
      files.write(join(folder, 'datapackage.json'), `${JSON.stringify(described, null, 2)}\n`);
    },
    remarks: [],
  };
}

function oneTable({ table, rowsOf }: FilledTable, file: FileWriter): RecordWriter {
  const parquet = new ParquetWriter({ writer: bytesInto(file), schema: parquetSchema(table), createdBy: 'Sideport' });
  const { columns } = table;
  const most = Math.max(LEAST_ROWS, Math.floor(CELLS / columns.length));
  const empty = (): ParquetValue[][] => columns.map(() => []);
  let data = empty();
  const rows = (): number => data[0]?.length ?? 0;
  const flush = (): void => {
    if (rows() === 0) return;
    const group = data;
    data = empty();
    // Writing into memory is done at once; the promise is only for writers that wait for a network.
    void parquet.write({
      columnData: columns.map(({ name }, index) => ({ name, data: group[index] ?? [] })),
      rowGroupSize: group[0]?.length ?? 0,
    });
  };
  return {
    form: 'tables',
    add: ({ leaving }) => {
      for (const cells of rowsOf(leaving)) {
        columns.forEach(({ type }, index) => data[index]?.push(parquetValue(cells[index], type)));
      }
      if (rows() >= most) flush();
    },
    finish: () => {
      flush();
      void parquet.finish();
      file.close();
    },
    remarks: [],
  };
}

/** A writer of bytes that hands them on after each group instead of keeping them. */
function bytesInto(file: FileWriter): Writer {
  const bytes = new ByteWriter();
  const handOn = (): void => {
    file.write(new Uint8Array(bytes.buffer.slice(0, bytes.index)));
    bytes.index = 0;
  };
  return Object.assign(bytes, { flush: handOn, finish: handOn });
}
