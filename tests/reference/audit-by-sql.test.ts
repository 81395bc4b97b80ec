import { DuckDBInstance, type DuckDBConnection } from '@duckdb/node-api';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { nodeFiles } from '../../server/src/command-line/node-files.ts';
import type { Audit } from '../../server/src/note/audit/audit.ts';
import type { Figure } from '../../server/src/note/audit/figure.ts';
import { makeYear } from '../../tools/year/make-year.ts';
import { folderWith } from '../checking/built.ts';
import { run } from '../checking/memory-world.ts';

// The queries of docs/scale.md, run by DuckDB over the exported tables of the invented year, must give the figures of
// the audit: an engine that shares no code with it.
const page = readFileSync(new URL('../../docs/scale.md', import.meta.url), 'utf8');
const blocks = [...page.matchAll(/^```sql(?: name=(\S+))?\n([\s\S]*?)^```$/gm)].map(([, name, sql]) => ({
  name,
  sql: sql ?? '',
}));

let notes: string;
let tables: string;
let connection: DuckDBConnection;
let result: Audit;
let exported: number;

beforeAll(async () => {
  notes = folderWith(makeYear());
  tables = mkdtempSync(join(tmpdir(), 'sideport-tables-'));
  const world = { folder: notes };
  const audited = await run(
    ['audit', '.', '--as-of', '2026-12-31', '--suppress-below', '0', '--format', 'json'],
    nodeFiles,
    world,
  );
  result = JSON.parse(audited.out);
  exported = (await run(['export', '.', '--as', 'parquet', '--output', tables], nodeFiles, world)).code;
  connection = await (await DuckDBInstance.create(':memory:')).connect();
  await connection.run(`SET file_search_path = '${tables}'`);
  for (const { name, sql } of blocks) if (name === undefined) await connection.run(sql);
}, 600_000);

afterAll(() => {
  connection.closeSync();
  rmSync(notes, { recursive: true, force: true });
  rmSync(tables, { recursive: true, force: true });
});

const KEYS = ['surgeon', 'period', 'site', 'width_mm', 'n', 'missing', 'low', 'high'];

type Row = Readonly<Record<string, unknown>>;

function groupOf(row: Row): Readonly<Record<string, string>> {
  return {
    ...(typeof row['surgeon'] === 'string' ? { surgeon: row['surgeon'] } : {}),
    ...(typeof row['period'] === 'string' ? { period: row['period'] } : {}),
    ...(typeof row['site'] === 'string' ? { site: row['site'] } : {}),
    ...(row['width_mm'] === undefined ? {} : { width: `${Number(row['width_mm']).toFixed(1)} mm` }),
  };
}

function figureOf(name: string, row: Row): Figure | undefined {
  const group = JSON.stringify(groupOf(row));
  return result.figures.find((figure) => figure.name === name && JSON.stringify(figure.group) === group);
}

describe('the queries of docs/scale.md', () => {
  const named = blocks.flatMap(({ name, sql }) => (name === undefined ? [] : [{ name, sql }]));

  test('cover every chapter that the tables can answer', () => {
    // The year has final notes with gaps, but none that contradicts itself about eye, patient or lens.
    expect(exported).toBe(0);
    expect(named.map(({ name }) => name)).toEqual([
      'case-mix',
      'later-complications',
      'rupture',
      'refraction',
      'incisions',
      'acuity',
    ]);
  });

  test.each(named)('$name gives the figures of the audit', async ({ name, sql }) => {
    const rows: readonly Row[] = (await connection.runAndReadAll(sql)).getRowObjectsJson();
    expect(rows.length).toBe(name === 'incisions' ? 6 : 8);
    for (const row of rows) {
      for (const [column, value] of Object.entries(row)) {
        if (KEYS.includes(column)) continue;
        const figure = figureOf(column, row);
        expect(figure?.value, `${column} ${JSON.stringify(groupOf(row))}`).toBeCloseTo(Number(value), 9);
        if (row['n'] !== undefined && column !== 'refraction-followed' && column !== 'rupture-observed-expected') {
          expect(figure?.n).toBe(Number(row['n']));
        }
        if (row['missing'] !== undefined && /^(?:within|prediction|posterior)/.test(column)) {
          expect(figure?.missing).toBe(Number(row['missing']));
        }
        if (row['low'] !== undefined && figure?.interval?.method === 'Wilson') {
          expect(figure.interval.low).toBeCloseTo(Number(row['low']), 6);
          expect(figure.interval.high).toBeCloseTo(Number(row['high']), 6);
        }
      }
    }
  });

  test('tables exported folder by folder are read together to the same figures', async () => {
    const months = mkdtempSync(join(tmpdir(), 'sideport-months-'));
    try {
      for (const month of ['2024-01', '2024-02']) {
        await run(['export', month, '--as', 'parquet', '--output', join(months, month)], nodeFiles, { folder: notes });
      }
      const count = async (from: string): Promise<unknown> =>
        (
          await connection.runAndReadAll(`SELECT count(*) AS n, round(sum(axial_length_mm), 4) AS mm FROM ${from}`)
        ).getRowObjectsJson();
      expect(await count(`'${months}/*/operations.parquet'`)).toEqual(
        await count(`'operations.parquet' WHERE operation_date < DATE '2024-03-01'`),
      );
    } finally {
      rmSync(months, { recursive: true, force: true });
    }
  }, 60_000);
});
