import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { DuckDBInstance } from '@duckdb/node-api';
import { parse } from 'csv-parse/sync';
import { asyncBufferFromFile, parquetReadObjects } from 'hyparquet';
import { beforeAll, describe, expect, test } from 'vitest';
import { emptyFolder, exported, samples, SOUND } from './run.ts';
import { at, expectedColumns, operations, typedNotes } from './typed-note.ts';

type Row = Readonly<Record<string, string>>;
const csv = (folder: string, table: string): readonly Row[] =>
  parse(readFileSync(join(folder, `${table}.csv`)), { columns: true, bom: true });
/** Operations by their ids, each followed by what points to it. */
const ids = operations
  .map((note) => String(note['id']))
  .toSorted()
  .flatMap((id) => [
    id,
    ...typedNotes
      .filter((note) => (note['record'] === 'follow-up' ? note['operation'] : note['amends']) === id)
      .map((note) => String(note['id']))
      .toSorted(),
  ]);
const operationIds = operations.map((note) => String(note['id'])).toSorted();

describe('tables', () => {
  const folder = emptyFolder();
  let rows: readonly Row[] = [];
  beforeAll(async () => {
    await exported(SOUND, '--as', 'csv', '--output', folder, '--codes', 'icd10-opcs4');
    rows = csv(folder, 'operations');
  });
  test('one row for each operation, in the order of the ids', () =>
    expect(rows.map((row) => row['note_id'])).toEqual(operationIds));

  test.each(Object.entries(expectedColumns))('%s is what was typed', (column, expected) => {
    const found = Object.fromEntries(rows.map((row) => [row['note_id'], row[column]]));
    const typed = Object.fromEntries(operations.map((note) => [note['id'], expected(note) ?? '']));
    expect(found).toEqual(typed);
  });

  test.each([
    ['complications', 'none'],
    ['vitrectomy', 'not done'],
    ['dye', 'none'],
  ])('%s: %s is said, and not taken for not recorded', (field, word) => {
    const saying = rows
      .filter((row) => row['said']?.split('; ').includes(`${field}: ${word}`))
      .map((row) => row['note_id']);
    expect(saying).toEqual(
      operations
        .filter((note) => note[field] === word)
        .map((note) => String(note['id']))
        .toSorted(),
    );
    expect(saying.length).toBeGreaterThan(0);
  });

  test('the descriptor fits the files', () => {
    interface Resource {
      readonly name: string;
      readonly path: string;
      readonly schema: {
        readonly fields: readonly {
          readonly name: string;
          readonly type: string;
          readonly constraints?: { readonly required?: boolean; readonly enum?: readonly string[] };
        }[];
        readonly primaryKey: readonly string[];
        readonly foreignKeys?: readonly { readonly reference: { readonly resource: string } }[];
      };
    }
    const { resources } = JSON.parse(readFileSync(join(folder, 'datapackage.json'), 'utf8')) as {
      readonly resources: readonly Resource[];
    };
    const patterns: Readonly<Record<string, RegExp>> = {
      number: /^-?\d+(?:\.\d+)?$/u,
      integer: /^-?\d+$/u,
      boolean: /^(?:true|false)$/u,
      date: /^\d{4}-\d{2}-\d{2}$/u,
      string: /^[\s\S]*$/u,
    };
    for (const { name, path, schema } of resources) {
      const [heading, ...body] = parse(readFileSync(join(folder, path))) as readonly (readonly string[])[];
      expect(heading).toEqual(schema.fields.map((field) => field.name));
      const keys = body.map((cells) => schema.primaryKey.map((key) => cells[heading?.indexOf(key) ?? -1]).join('\n'));
      expect(new Set(keys).size, `keys of ${name}`).toBe(keys.length);
      for (const cells of body) {
        for (const [index, field] of schema.fields.entries()) {
          const cell = cells[index] ?? '';
          if (cell === '') expect(field.constraints?.required ?? false, `${name}.${field.name}`).toBe(false);
          else {
            expect(cell, `${name}.${field.name}`).toMatch(patterns[field.type] ?? /^$/u);
            expect(field.constraints?.enum ?? [cell], `${name}.${field.name}`).toContain(cell);
          }
        }
      }
      for (const { reference } of schema.foreignKeys ?? []) {
        const there = csv(folder, reference.resource).map((row) => row['note_id']);
        expect(body.filter(([id]) => !there.includes(id))).toEqual([]);
      }
    }
  });

  test('complications and steps have rows of their own', () => {
    expect(csv(folder, 'complications')).toHaveLength(inNotes('complications'));
    expect(csv(folder, 'steps')).toHaveLength(inNotes('nucleus.steps'));
    expect(csv(folder, 'incisions')).toHaveLength(inNotes('incisions'));
    expect(csv(folder, 'drugs')).toHaveLength(inNotes('drugs'));
    expect(csv(folder, 'follow-ups')).toHaveLength(typedNotes.filter((note) => note['record'] === 'follow-up').length);
  });
});

describe('Parquet', () => {
  const folder = emptyFolder();
  const tables = emptyFolder();
  beforeAll(async () => {
    const codes = ['--codes', 'icd10cm'];
    await exported(SOUND, '--as', 'parquet', '--output', folder, ...codes);
    await exported(SOUND, '--as', 'csv', '--unguarded', '--output', tables, ...codes);
  });
  const file = (table: string) => join(folder, `${table}.parquet`);

  const TABLES =
    'operations incisions steps drugs complications computed follow-ups computed-at-visits amendments codes not-coded codes-compared';
  test.each(TABLES.split(' '))('%s: a second reader finds what the comma-separated table holds', async (table) => {
    const rows = await parquetReadObjects({ file: await asyncBufferFromFile(file(table)) });
    const plain = rows.map((row) =>
      Object.fromEntries(Object.entries(row as object).map(([name, value]) => [name, asText(value)])),
    );
    const expected = csv(tables, table).map((row) =>
      Object.fromEntries(Object.entries(row).map(([name, cell]) => [name, asNumberText(cell)])),
    );
    expect(
      plain.map((row) => Object.fromEntries(Object.entries(row).map(([name, cell]) => [name, asNumberText(cell)]))),
    ).toEqual(expected);
  });

  test('a SQL engine reads types and values', async () => {
    const connection = await (await DuckDBInstance.create(':memory:')).connect();
    const types = await connection.runAndReadAll(`describe select * from '${file('operations')}'`);
    const byName = Object.fromEntries(types.getRows().map(([name, type]) => [String(name), String(type)]));
    expect(byName).toMatchObject({
      note_id: 'VARCHAR',
      axial_length_mm: 'DOUBLE',
      age_years: 'INTEGER',
      ring_used: 'BOOLEAN',
      operation_date: 'DATE',
    });
    const sum = await connection.runAndReadAll(
      `select count(*)::int, round(sum(axial_length_mm), 4), min(operation_date)::varchar, count(*) filter (where ring_used)::int from '${file('operations')}'`,
    );
    const lengths = operations.map((note) => Number(expectedColumns['axial_length_mm']?.(note) ?? 0));
    expect(sum.getRows()[0]).toEqual([
      operations.length,
      Number(lengths.reduce((a, b) => a + b, 0).toFixed(4)),
      operations.map((note) => String(note['date'])).toSorted()[0],
      operations.filter((note) => at(note, 'ring.used') === 'yes').length,
    ]);
  });
});

describe('JSON', () => {
  test.each(['json', 'ndjson'])('%s: every field of every sample', async (form) => {
    const { out } = await exported(SOUND, '--as', form);
    const records =
      form === 'json'
        ? (JSON.parse(out) as { records: readonly { note: object }[] }).records
        : out
            .trimEnd()
            .split('\n')
            .map((line) => JSON.parse(line) as { note: object });
    expect(records).toHaveLength(typedNotes.length);
    expect(records.map(({ note }) => at(note, 'id'))).toEqual(ids);
    for (const typed of typedNotes) {
      const record = records.find(({ note }) => at(note, 'id') === typed['id']);
      expect(leaves(record?.note ?? {}).toSorted()).toEqual(leaves(typed).toSorted());
    }
  });
  test('the same notes give the same bytes', async () => {
    const [first, second] = [
      await exported(SOUND, '--as', 'ndjson'),
      await exported(...samples.toReversed().map((name) => join(SOUND, name)), '--as', 'ndjson'),
    ];
    expect(second.out).toBe(first.out);
  });
});

/** How many parts with fields of their own stand at a path of all operations. */
function inNotes(path: string): number {
  const parts = operations.flatMap((note) => at(note, path) ?? []);
  return parts.filter((part) => typeof part === 'object').length;
}

/** Paths of all values: what stands at each must have been typed, and nothing typed may be missing. */
function leaves(value: unknown, path = ''): readonly string[] {
  if (Array.isArray(value))
    return value.length === 0 ? [] : value.flatMap((item, index) => leaves(item, `${path}[${index}]`));
  if (typeof value !== 'object' || value === null) return [path];
  if ('said' in value || 'written' in value || ('value' in value && !('code' in value))) return [path];
  return Object.entries(value).flatMap(([key, member]) => leaves(member, path === '' ? key : `${path}.${key}`));
}

function asText(value: unknown): string {
  if (value === null || value === undefined) return '';
  if (value instanceof Date) return value.toISOString().slice(0, 10);
  return typeof value === 'string' ? value : JSON.stringify(value);
}

/** 21.50 in a table and 21.5 in a binary column are the same number. */
const asNumberText = (cell: string): string => (/^-?\d+\.\d+$/u.test(cell) ? String(Number(cell)) : cell);
