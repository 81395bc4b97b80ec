import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { emptyFolder, run } from './run.ts';

export type Row = Readonly<Record<string, string>>;

/** A folder with these notes, by their names without the ending. */
export function folderOf(notes: Readonly<Record<string, string>>): string {
  const folder = emptyFolder();
  for (const [name, text] of Object.entries(notes)) {
    const file = join(folder, name === 'sideport' ? 'sideport.yaml' : `${name}.opnote.yaml`);
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, text);
  }
  return folder;
}

export const department = 'sideport: 1\ndepartment: Eye unit, invented hospital\n';

/** An operation with some more lines; a line of its own takes the place of the usual one. */
export function operation(lines = '', head: Readonly<Record<string, string>> = {}): string {
  const fields = {
    opnote: '1',
    record: 'operation',
    status: 'draft',
    id: 'OP-1',
    date: '2031-03-14',
    eye: 'right',
    ...head,
  };
  const written = Object.entries(fields).filter(([, value]) => value !== '');
  return `${written.map(([key, value]) => `${key}: ${value}`).join('\n')}\n${lines}`;
}

export const followUp = (lines = '', head: Readonly<Record<string, string>> = {}): string =>
  operation(lines, { record: 'follow-up', status: '', id: 'FU-1', date: '2031-04-14', operation: 'OP-1', ...head });

export const amendment = (lines = '', head: Readonly<Record<string, string>> = {}): string =>
  operation(lines, {
    record: 'amendment',
    status: '',
    date: '',
    id: 'AM-1',
    amends: 'OP-1',
    kind: 'correction',
    at: '2031-03-16T08:30+01:00',
    by: 'S-05',
    ...head,
  });

/** The tables of a folder of notes, and what was said. */
export async function tablesOf(paths: string | readonly string[], ...words: readonly string[]) {
  const output = emptyFolder();
  const said = await run('export', ...[paths].flat(), '--as', 'csv', '--output', output, ...words);
  const table = (name: string): readonly Row[] =>
    parse(readFileSync(join(output, `${name}.csv`)), { columns: true, bom: true });
  return { ...said, output, table };
}

/** The one row of the operations of one note. */
export async function rowOf(note: string, ...words: readonly string[]): Promise<Row> {
  const { table } = await tablesOf(folderOf({ note }), ...words);
  return table('operations')[0] ?? {};
}

/** The one record of a note as JSON. */
export async function recordOf(note: string, ...words: readonly string[]): Promise<Readonly<Record<string, unknown>>> {
  const { out } = await run('export', folderOf({ note }), '--as', 'ndjson', ...words);
  return JSON.parse(out) as Record<string, unknown>;
}
