import { planAt, recordPlan, type GroupPlace, type Operation, type Place } from '@sideport/schemas';
import { operationCheck, type Check, type CheckContext, type CheckInfo, type Say } from '../check.ts';
import type { Severity } from '../../remark.ts';
import type { Status } from '../../reading/note-reading.ts';
import { placeOfMissing } from './place.ts';
import { wasAbandoned } from './course.ts';
import { listed } from './words.ts';
import { isWritten } from './written.ts';

/** Who asks for what; the words are read in messages. */
export const rcs = 'RCS Good Surgical Practice 2014, 1.3';
export const cms = '42 CFR 482.51(b)(6)';
export const jointCommission = 'Joint Commission RC.02.01.03';
export const who = 'the WHO Surgical Safety Checklist';
export const lensStandard = 'the lens quality standard of RCOphth and UKOA 2018';
export const outcomeSet = 'the ICHOM cataract set';
export const registry = 'the European cataract registry (Lundström et al. 2021)';
export const nationalAudit = 'the UK national cataract audit';
export const practice = 'common practice';

/** How grave the gap is in a final note. */
type Grade = Severity;

/** One field that is wanted: its path from the top, who asks for it. */
export interface Wanted {
  readonly path: string;
  readonly by: readonly string[];
  readonly grade?: Grade;
  /** How the message calls it: the end of “the note does not record …”. */
  readonly name: string;
  /** Wanted only where this section is there; the section itself is another gap. */
  readonly within?: string;
}

/** What a section should say, as data: one check for each, so that one gap makes one remark. */
export interface Completeness extends Pick<CheckInfo, 'id' | 'summary'> {
  /** The section, or nothing for fields at the top. */
  readonly section?: string;
  readonly title: string;
  readonly wanted: readonly Wanted[];
  /** Whether a plan is asked for it already. */
  readonly planned?: true;
  /** Whether it is due in this note at all. */
  readonly due?: (note: Operation, context: CheckContext) => boolean;
}

export function completenessCheck({ section, title, wanted, planned, due, ...info }: Completeness): Check {
  const fields = wanted.map((field) => ({ ...field, keys: field.path.split('.'), around: field.within?.split('.') }));
  return operationCheck({
    ...info,
    group: 'completeness',
    severity: 'unfinished',
    allowable: true,
    run: (note, say, context) => {
      if (context.status === 'planned' && planned !== true) return;
      if (planned !== true && wasAbandoned(note)) return;
      if (due !== undefined && !due(note, context)) return;
      remarkMissing(note, say, context, { section, title, fields });
    },
  });
}

interface WantedField extends Wanted {
  readonly keys: readonly string[];
  readonly around: readonly string[] | undefined;
}

/** The sources of a page: everybody who asks for one of the fields. */
export function sourcesOf(wanted: readonly Wanted[]): string {
  const all = [...new Set(wanted.flatMap(({ by }) => by))];
  return all.map((by) => (by === practice ? `${by}, no source` : by)).join('; ');
}

function remarkMissing(
  note: Operation,
  say: Say,
  context: CheckContext,
  { section, title, fields }: { section: string | undefined; title: string; fields: readonly WantedField[] },
): void {
  const missing = fields.filter(
    ({ keys, around }) =>
      isMissing(note, keys, context) && (around === undefined || groupAt(note, around) !== undefined),
  );
  if (missing.length === 0) return;
  const severity = gravest(missing, context.status);
  if (severity === undefined) return;
  const group = section === undefined ? undefined : groupAt(note, section.split('.'));
  const plan = section === undefined ? undefined : planAt(recordPlan('operation'), section.split('.'));
  const instead =
    group === undefined && plan?.guide.says !== undefined
      ? ` If there was none of it, write ${plan.guide.says.map((word) => `“${word}”`).join(' or ')}.`
      : '';
  const recorded = listed(missing.map(({ name }) => name));
  say({
    at: placeOfMissing(context, group),
    severity,
    message: `${title}: the note does not record ${recorded}.${instead} ${askedForBy(missing)}`,
  });
}

/** Who asks for it, so that nobody takes a habit for a rule. */
export function askedForBy(wanted: readonly Pick<Wanted, 'by'>[]): string {
  const named = [...new Set(wanted.flatMap(({ by }) => by))].filter((by) => by !== practice);
  return named.length === 0 ? 'Usually recorded, though no rule asks for it.' : `Asked for by ${listed(named)}.`;
}

function gravest(missing: readonly Wanted[], status: Status): Severity | undefined {
  const grades = missing.map(({ grade }) => gradeIn(grade ?? 'error', status));
  return (['error', 'warning', 'info'] as const).find((severity) => grades.includes(severity));
}

/** A gap weighs less the less finished the note is; small ones are not spoken of before the note is final. */
function gradeIn(grade: Grade, status: Status): Severity | undefined {
  if (status === 'final') return grade;
  if (grade === 'info') return undefined;
  return status === 'draft' && grade === 'error' ? 'warning' : 'info';
}

interface Group {
  readonly $: GroupPlace;
  readonly [key: string]: unknown;
}

function groupAt(note: Operation, path: readonly string[]): { readonly $: Place } | undefined {
  let group: unknown = note;
  for (const key of path) group = (group as Group | undefined)?.[key];
  return group as { readonly $: Place } | undefined;
}

function isMissing(note: Operation, keys: readonly string[], { reading }: CheckContext): boolean {
  let group = note as unknown as Group;
  for (const key of keys) {
    const found = group[key];
    if (found === undefined) return group.$.said[key] === undefined && !isWritten(reading, keys);
    group = found as Group;
  }
  return isList(group) && group.items.length === 0 ? !isWritten(reading, keys) : false;
}

function isList(value: unknown): value is { readonly items: readonly unknown[] } {
  return Array.isArray((value as { items?: unknown }).items);
}
