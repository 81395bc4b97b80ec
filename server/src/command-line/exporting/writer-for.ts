import { resolve } from 'node:path';
import type { LeavingDates } from '../../note/export/leaving.ts';
import { tablesFor } from '../../note/export/tables/all-tables.ts';
import { WrongUse, type World } from '../world.ts';
import { csvFolderWriter, csvOperationsWriter } from './csv-writer.ts';
import { fhirFolderWriter, fhirLinesWriter } from './fhir-writer.ts';
import { jsonWriter, ndjsonWriter } from './json-writer.ts';
import { namedFiles } from './named-files.ts';
import { standardOutput, type RecordWriter } from './record-writer.ts';

export interface WriterSettings {
  readonly form: 'json' | 'ndjson' | 'csv' | 'parquet' | 'fhir';
  /** A file, or a folder for tables and documents; standard output where none is named. */
  readonly output: string | undefined;
  readonly dates: LeavingDates;
  readonly withCodes: boolean;
  /** csv: whether formulas are kept from running. */
  readonly guard: boolean;
  /** csv: whether a byte order mark is written. */
  readonly mark: boolean;
  /** fhir: the moment that documents are made; now where none is given. */
  readonly made: string | undefined;
}

const DATES_REMARK = {
  year: 'Of dates only the year is left.',
  shifted:
    'Dates are moved by a secret number of days, the same for all of a patient; this is less than Safe Harbor asks for.',
  days: 'Dates are counted in days since the operation.',
};

/** The writer of a form. Throws WrongUse for a form that cannot go where it should. */
export async function writerFor(settings: WriterSettings, world: World): Promise<RecordWriter> {
  const { form, dates } = settings;
  const files = namedFiles(world);
  const output = settings.output === undefined ? undefined : resolve(world.folder, settings.output);
  const toFile = () => (output === undefined ? standardOutput(world) : files.create(output));
  if (form === 'json') return jsonWriter(toFile());
  if (form === 'ndjson') return ndjsonWriter(toFile());
  if (form === 'fhir') {
    const made = settings.made ?? world.now().toISOString();
    if (output === undefined) return fhirLinesWriter(standardOutput(world), made);
    if (/\.(?:nd)?json$/u.test(output)) return fhirLinesWriter(files.create(output), made);
    return fhirFolderWriter(output, files, made);
  }
  const tables = tablesFor(dates, settings.withCodes);
  const remarks = dates === 'as recorded' ? [] : ['What could name a person was taken out.', DATES_REMARK[dates]];
  if (form === 'csv') {
    const csv = { guard: settings.guard, mark: settings.mark, remarks };
    if (output === undefined) return csvOperationsWriter(tables, standardOutput(world), csv);
    return csvFolderWriter(tables, output, files, csv);
  }
  if (output === undefined) throw new WrongUse('Parquet files go into a folder: --output FOLDER.');
  const { parquetWriter } = await import('./parquet-writer.ts');
  return parquetWriter(tables, output, files, remarks);
}
