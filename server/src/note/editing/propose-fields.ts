import type { GroupPlan, ListPlan, Plan, Span } from '@sideport/schemas';
import { STEP } from '../edits/lines.ts';
import type { Level } from './levels.ts';
import type { Proposal } from './proposal.ts';
import { wholeSection } from './section-snippet.ts';

/** The line being written: blank, or with the beginning of a field. */
export interface FieldLine {
  /** From the start of the line. */
  readonly start: number;
  /** Where the word begins. */
  readonly word: Span;
  /** What stands before the word: blanks, and perhaps the dash of an entry. */
  readonly before: string;
}

/** The fields that are still missing at a level, those next in the order of an operation first. */
export function proposeFields(level: Level, line: FieldLine): readonly Proposal[] {
  return level.plan.kind === 'group'
    ? missingFields(level, level.plan).flatMap(([key, plan]) => fieldProposals(level, line, key, plan))
    : nextEntry(level, level.plan, line);
}

/** The fields of a new entry of a list whose dash is already written; `lead` is its dash where it belongs. */
export function proposeEntry(level: Level, line: FieldLine, lead: string): readonly Proposal[] {
  const item = level.plan.kind === 'list' ? level.plan.item : level.plan;
  if (item.kind !== 'group') return [];
  return proposeFields({ ...level, plan: item, column: lead.length, lead, present: [], above: undefined }, line);
}

function missingFields(level: Level, plan: GroupPlan): readonly (readonly [string, Plan])[] {
  const all = [...plan.fields];
  const next = level.above === undefined ? 0 : all.findIndex(([key]) => key === level.above) + 1;
  return [...all.slice(next), ...all.slice(0, next)].filter(([key]) => !level.present.includes(key));
}

function fieldProposals(level: Level, line: FieldLine, key: string, plan: Plan): readonly Proposal[] {
  const path = [...level.path, key];
  const shared = { ...placed(level, line), filter: compared(level, line, key), explanation: plan.guide.meaning };
  const detail = plan.guide.label;
  if (plan.kind === 'value') {
    return [{ ...shared, label: key, kind: 'field', detail, insert: indented(level, line, `${key}: `), more: true }];
  }
  const proposals: Proposal[] = [
    {
      ...shared,
      label: key,
      kind: 'section',
      detail,
      insert: indented(level, line, `${key}:${opening(plan, level.column)}`),
      more: true,
    },
    {
      ...shared,
      label: `${key} …`,
      kind: 'whole section',
      detail: `${detail}, whole section`,
      insert: indented(level, line, wholeSection(key, path, plan, level.column)),
      snippet: true,
      more: false,
    },
  ];
  // “None” is written far more often than the section; it still has to be chosen.
  const none = plan.guide.says?.[0];
  if (none === undefined) return proposals;
  return [
    ...proposals,
    {
      ...shared,
      label: `${key}: ${none}`,
      kind: 'absence',
      detail,
      insert: indented(level, line, `${key}: ${none}`),
      more: false,
    },
  ];
}

/** What follows the colon of a section that is begun by hand. */
function opening(plan: GroupPlan | ListPlan, column: number): string {
  const indent = `\n${' '.repeat(column + STEP)}`;
  if (plan.kind === 'group') return indent;
  return plan.item.kind === 'value' ? ' ' : `${indent}- `;
}

function nextEntry(level: Level, plan: ListPlan, line: FieldLine): readonly Proposal[] {
  const label = plan.item.kind === 'value' ? plan.item.guide.label : (plan.item.guide.label ?? plan.guide.label);
  return [
    {
      ...placed(level, line),
      label: `- ${label.toLowerCase()}`,
      kind: 'section',
      detail: `next entry of ${plan.guide.label}`,
      explanation: plan.item.guide.meaning,
      insert: indented(level, line, '- '),
      filter: `- ${label.toLowerCase()}`,
      more: true,
    },
  ];
}

/** The line's own indentation is kept where it is right, and put right where it is not. */
function placed({ lead }: Level, line: FieldLine): { readonly replace: Span } {
  const start = line.before === lead ? line.word.start : line.start;
  return { replace: { start, end: line.word.end } };
}

/** What is replaced is what is compared: where the blanks are put right too, they count. */
function compared({ lead }: Level, line: FieldLine, key: string): string {
  return line.before === lead ? key : line.before + key;
}

function indented({ lead }: Level, line: FieldLine, text: string): string {
  return line.before === lead ? text : lead + text;
}
