import { resolve } from 'node:path';
import * as z from 'zod';
import type { ReportedNote } from '../../note/reports/report-input.ts';
import { FileProblem, WrongUse, type World } from '../world.ts';
import { mustBeWhole, shardMark, type Part } from './whole-set.ts';

const place = z.object({ line: z.int().positive(), column: z.int().positive() });
const range = z.object({ start: place, end: place });
const note = z.object({
  file: z.string(),
  id: z.nullable(z.string()),
  remarks: z.array(
    z.object({
      check: z.string(),
      severity: z.enum(['error', 'warning', 'info']),
      message: z.string(),
      path: z.array(z.union([z.string(), z.number()])),
      range,
      related: z.array(z.object({ message: z.string(), file: z.optional(z.string()), range })),
    }),
  ),
});
const report = z.object({ version: z.literal(1), shard: shardMark, notes: z.array(note) });

interface Report extends Part {
  readonly notes: readonly ReportedNote[];
}

function readReport(file: string, world: World): Report {
  const fail = (reason: string) => new FileProblem(`${file}: ${reason}.`);
  let text: string;
  try {
    text = world.files.read(resolve(world.folder, file));
  } catch (error) {
    throw error instanceof FileProblem ? fail(error.message) : error;
  }
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    throw fail('this is not a report of check --format json');
  }
  const read = report.safeParse(data);
  if (!read.success) throw fail('this is not a report of check --format json');
  // An optional key that is absent stays absent.
  return { file, shard: read.data.shard, notes: read.data.notes as readonly ReportedNote[] };
}

/**
 * The notes of several JSON reports, such as those of all shards; a note that stands in two of them is a mistake, and so
 * is a shard that is missing. Throws WrongUse, and FileProblem for what is no such report.
 */
export function mergeReports(files: readonly string[], world: World): readonly ReportedNote[] {
  if (files.length === 0)
    throw new WrongUse('Say which reports to put together: sideport check --merge part-1.json part-2.json ...');
  const reports = files.map((file) => readReport(file, world));
  mustBeWhole(reports);
  const seen = new Map<string, string>();
  return reports.flatMap(({ file, notes }) => {
    for (const { file: name } of notes) {
      const first = seen.get(name);
      if (first !== undefined) throw new WrongUse(`${name} stands in ${first} and in ${file}: give each note once.`);
      seen.set(name, file);
    }
    return notes;
  });
}
