import type { ReportedNote, ReportOptions } from '../note/reports/report-input.ts';
import { buildReport } from './checking/build-reports.ts';
import type { Shard } from './checking/shard.ts';
import { summaryOf } from './summary.ts';
import { textReport } from './text-report.ts';

export interface CheckFormat {
  readonly name: string;
  write(notes: readonly ReportedNote[], options: FormatOptions): Promise<string>;
}

export interface FormatOptions {
  readonly failOn: ReportOptions['failOn'];
  readonly colour: boolean;
  /** Which part of the notes was checked, where not all were. */
  readonly shard?: Shard | undefined;
}

/** Every way to write the remarks of a run. One that needs much code loads it when it is used. */
export const checkFormats = [
  { name: 'text', write: async (notes, options) => textReport(notes, options) },
  {
    name: 'json',
    write: async (notes, { shard }) =>
      `${JSON.stringify({ version: 1, ...(shard && { shard }), notes, summary: summaryOf(notes) }, null, 2)}\n`,
  },
  { name: 'sarif', write: (notes, { failOn }) => buildReport('sarif', notes, failOn) },
  { name: 'junit', write: (notes, { failOn }) => buildReport('junit', notes, failOn) },
  { name: 'github', write: (notes, { failOn }) => buildReport('github', notes, failOn) },
  { name: 'gitlab', write: (notes, { failOn }) => buildReport('gitlab', notes, failOn) },
  { name: 'checkstyle', write: (notes, { failOn }) => buildReport('checkstyle', notes, failOn) },
] as const satisfies readonly CheckFormat[];
