import { allChecks } from './checks/all-checks.ts';
import { severityOf, type AmendedNote, type Check, type CheckContext, type Say, type Saying } from './checks/check.ts';
import { watchedContext } from './checks/watched-context.ts';
import { applyAllowances } from './checks/allowances.ts';
import { departmentSeverity } from './checks/department-severity.ts';
import { withoutEchoes } from './checks/echoes.ts';
import { withGuardedFixes } from './checks/guarded-fixes.ts';
import { knownChecks } from './checks/known-checks.ts';
import { computeNote, type ComputedNote } from './computing/compute-note.ts';
import type { Dictation } from './dictation/dictation.ts';
import type { Department, Operation } from '@sideport/schemas';
import type { NoteReading } from './reading/note-reading.ts';
import { readNote } from './reading/read-note.ts';
import { widen } from './reading/widen.ts';
import type { Remark } from './remark.ts';
import { notesWithId, type NoteFacts, type NoteSet } from './set/note-set.ts';

/** What stands around a note. Everything may be missing. */
export interface Surroundings {
  readonly department?: Department | null;
  /** The department file, under a name that the set can open; without it no related place points there. */
  readonly departmentFile?: string | null;
  readonly set?: NoteSet | null;
  /** The note's own file, as the set names it. */
  readonly file?: string | null;
  /** Today, year-month-day. */
  readonly today?: string | null;
  /** Where the note holds a dictation; without it nothing is said of one. */
  readonly dictation?: Dictation | null;
}

/** Everything that can be said of one note. */
export interface Review {
  readonly reading: NoteReading;
  readonly remarks: readonly Remark[];
  readonly computed: ComputedNote;
}

/** Reads, checks and computes one note. Never throws. */
export function reviewNote(text: string, surroundings: Surroundings = {}, kind?: 'department'): Review {
  return reviewReading(readNote(text, kind), surroundings);
}

/** Checks and computes a note that was read before. Never throws. */
export function reviewReading(
  reading: NoteReading,
  surroundings: Surroundings = {},
  checks: readonly Check[] = allChecks,
): Review {
  const context = contextOf(reading, surroundings);
  return { reading, remarks: remarksIn(context, checks), computed: computeNote(context) };
}

/** The remarks alone, for those who check many notes and show no computed values. Never throws. */
export function remarksOf(
  reading: NoteReading,
  surroundings: Surroundings = {},
  checks: readonly Check[] = allChecks,
): readonly Remark[] {
  return remarksIn(contextOf(reading, surroundings), checks);
}

function remarksIn(context: CheckContext, checks: readonly Check[]): readonly Remark[] {
  const said = [...context.reading.remarks];
  const silent = new Set<string>();
  let speaking: Check | undefined;
  const say: Say = (saying) => {
    if (speaking !== undefined) said.push(remarkOf(speaking, saying, context));
  };
  const watched = watchedContext(context, () => void (speaking !== undefined && silent.add(speaking.id)));
  // Lines that stand in no place are lost to the reader: what they say would be called missing, a section at a time.
  const isPartlyRead = context.reading.tree.faults.some(({ check }) => check === 'text-not-readable');
  for (const check of checks) {
    if (isPartlyRead && check.group === 'completeness') {
      silent.add(check.id);
      continue;
    }
    speaking = check;
    try {
      check.run(watched, say);
    } catch {
      said.push(failed(check, context));
      silent.add(check.id);
    }
  }
  const kept = departmentSeverity(withoutEchoes(said), context.department);
  const remarks = applyAllowances(context.reading, kept, { said, silent });
  return withGuardedFixes(remarks, context.reading.kind).toSorted(byPlace);
}

/** What every check and computation is told. */
export function contextOf(reading: NoteReading, surroundings: Surroundings): CheckContext {
  const partner = operationOf(reading, surroundings.set ?? null);
  return {
    status: reading.status,
    reading,
    department: surroundings.department ?? null,
    departmentFile: surroundings.departmentFile ?? null,
    operation: partner?.operation ?? null,
    operationFile: partner?.file ?? null,
    amended: amendedBy(reading, surroundings.set ?? null),
    set: surroundings.set ?? null,
    file: surroundings.file ?? null,
    today: surroundings.today ?? null,
    dictation: surroundings.dictation ?? null,
    knownChecks,
  };
}

function operationOf(reading: NoteReading, set: NoteSet | null): { operation: Operation; file: string } | undefined {
  if (set === null) return undefined;
  const id =
    reading.kind === 'follow-up'
      ? reading.note.operation?.value
      : reading.kind === 'amendment'
        ? reading.note.amends?.value
        : undefined;
  if (id === undefined) return undefined;
  const facts = notesWithId(set, id).find((candidate) => candidate.record === 'operation');
  const partner = facts === undefined ? undefined : set.open(facts.file);
  return facts !== undefined && partner?.kind === 'operation'
    ? { operation: partner.note, file: facts.file }
    : undefined;
}

function amendedBy(reading: NoteReading, set: NoteSet | null): AmendedNote | null {
  const id = reading.kind === 'amendment' ? reading.note.amends?.value : undefined;
  const facts = id === undefined || set === null ? undefined : notesWithId(set, id).find(isAmendable);
  const amended = facts === undefined ? undefined : set?.open(facts.file);
  if (facts === undefined || (amended?.kind !== 'operation' && amended?.kind !== 'follow-up')) return null;
  return amended.kind === 'operation'
    ? { kind: amended.kind, note: amended.note, file: facts.file }
    : { kind: amended.kind, note: amended.note, file: facts.file };
}

const isAmendable = ({ record }: NoteFacts): boolean => record !== 'amendment';

function remarkOf(check: Check, saying: Saying, { reading, status }: CheckContext): Remark {
  const place = 'path' in saying.at ? saying.at : { span: saying.at, path: [] };
  return {
    check: check.id,
    severity: saying.severity ?? severityOf(check, status),
    message: saying.message,
    span: widen(reading.text, place.span),
    path: place.path,
    related: saying.related ?? [],
    fixes: saying.fixes ?? [],
  };
}

/** A check that crashed must not look like a clean note; what it read stays out of the message. */
function failed({ id }: Check, { reading }: CheckContext): Remark {
  return {
    check: 'note-not-fully-checked',
    severity: 'error',
    message: `This note could not be fully checked: the check “${id}” failed. The fault is in the program, not in the note; please report it.`,
    span: widen(reading.text, { start: 0, end: 1 }),
    path: [],
    related: [],
    fixes: [],
  };
}

function byPlace(a: Remark, b: Remark): number {
  return a.span.start - b.span.start || a.span.end - b.span.end || (a.check < b.check ? -1 : a.check > b.check ? 1 : 0);
}
