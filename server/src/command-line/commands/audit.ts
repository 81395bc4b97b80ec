import { audit as auditSet } from '../../note/audit/audit.ts';
import { learn } from '../../note/audit/learn/learn.ts';
import { learnedText } from '../../note/audit/learn/text.ts';
import { auditHtml } from '../../note/audit/report/html.ts';
import { auditText } from '../../note/audit/report/text.ts';
import { SMALL_CELL } from '../../note/audit/suppression.ts';
import { gather, type Gathered } from '../auditing/gather.ts';
import { writePartial } from '../auditing/partial-file.ts';
import { readShard, type Shard } from '../checking/shard.ts';
import { defineCommand } from '../command.ts';
import { refuseOutputOverNotes } from '../output-target.ts';
import { writeOutput } from '../write-output.ts';
import { today, WrongUse, type World } from '../world.ts';

export const audit = defineCommand({
  operands: 'PATH...',
  about:
    'Turns a set of notes and follow-ups into figures: case mix, complications, ruptures observed against expected,\n' +
    'refractive outcome, induced astigmatism, acuity, completeness and overdue reviews, each with its number of cases,\n' +
    'what is missing, method and source. A path is a note, a folder, a pattern, or a partial result (.json) of a shard.\n' +
    'Figures are aids: check them against the notes, follow local policy and licensed practice.',
  options: {
    format: {
      kind: 'choice',
      value: 'FORMAT',
      choices: ['text', 'json', 'html', 'partial'],
      fallback: 'text',
      about: 'how the audit is written; partial is what a shard hands on and holds facts of single notes',
    },
    output: { kind: 'text', value: 'FILE', about: 'writes it to a file' },
    learn: { kind: 'flag', about: 'proposes incision effects and lens constants for the department file, writes none' },
    period: {
      kind: 'choice',
      value: 'LENGTH',
      choices: ['month', 'quarter', 'year'],
      fallback: 'quarter',
      about: 'how time is divided',
    },
    'as-of': {
      kind: 'text',
      value: 'DATE',
      about: 'the day of the audit, year-month-day: what is dated later is not counted (usual: today)',
    },
    'suppress-below': {
      kind: 'text',
      value: 'N',
      about: `hides groups with fewer events or eyes, and single notes (usual: ${SMALL_CELL}; 0 shows all, for the department itself)`,
    },
    department: { kind: 'text', value: 'FILE', about: 'uses this department file for every note' },
    shard: { kind: 'text', value: 'I/N', about: 'only this part of the notes, such as 2/4, with --format partial' },
  },
  run: async ({ values, paths }, world) => {
    if (paths.length === 0) throw new WrongUse('Say which notes to audit: sideport audit PATH...');
    refuseOutputOverNotes(values.output, [...paths, values.department], world);
    const shard = values.shard === undefined ? undefined : readShard(values.shard);
    if (shard !== undefined && values.format !== 'partial') {
      throw new WrongUse('A shard alone is no audit: write it with --format partial, then audit all partial results.');
    }
    const options = {
      asOf: readDate(values['as-of'], world),
      period: values.period,
      suppressBelow: readCount(values['suppress-below']),
    };
    const gathered = await gather(paths, { department: values.department, shard }, world);
    const written = write(gathered, { ...options, shard, format: values.format, learns: values.learn });
    writeOutput(written, values.output, world);
    for (const problem of gathered.problems) world.stderr.write(`${problem}\n`);
    return gathered.problems.length > 0 ? 2 : 0;
  },
});

interface WriteOptions {
  readonly asOf: string;
  readonly period: 'month' | 'quarter' | 'year';
  readonly suppressBelow: number;
  readonly format: 'text' | 'json' | 'html' | 'partial';
  readonly learns: boolean;
  readonly shard: Shard | undefined;
}

function write({ partial, present }: Gathered, { format, learns, shard, ...options }: WriteOptions): string {
  if (format === 'partial') return writePartial(partial, shard);
  if (learns) {
    const learned = learn(partial, present);
    if (format === 'html') throw new WrongUse('--learn writes text or json.');
    return format === 'json' ? `${JSON.stringify(learned, null, 2)}\n` : learnedText(learned);
  }
  const figures = auditSet(partial, options);
  if (format === 'json') return `${JSON.stringify(figures, null, 2)}\n`;
  return format === 'html' ? auditHtml(figures) : auditText(figures);
}

function readDate(text: string | undefined, world: World): string {
  if (text === undefined) return today(world.now());
  const isDate = /^\d{4}-\d{2}-\d{2}$/u.test(text) && Number.isFinite(Date.parse(`${text}T00:00:00Z`));
  if (!isDate) throw new WrongUse(`--as-of cannot be ${text}. Write a date such as 2031-12-31.`);
  return text;
}

function readCount(text: string | undefined): number {
  if (text === undefined) return SMALL_CELL;
  if (!/^\d{1,4}$/u.test(text)) throw new WrongUse(`--suppress-below cannot be ${text}. Write a number such as 5.`);
  return Number(text);
}
