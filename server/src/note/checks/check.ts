import type { Amendment, Department, FollowUp, Operation, Place, Span } from '@sideport/schemas';
import type { Dictation } from '../dictation/dictation.ts';
import type { NoteReading, Status } from '../reading/note-reading.ts';
import { severityOfUnfinished, type Fix, type Related, type Severity } from '../remark.ts';
import type { NoteSet } from '../set/note-set.ts';

/** The groups in which `explain` and the pages list the checks. */
export const checkGroups = [
  'writing',
  'side and identity',
  'completeness',
  'agreement',
  'plausibility',
  'sequence and consequence',
  'traceability',
  'arithmetic',
  'privacy',
  'across notes',
  'department file',
] as const;
export type CheckGroup = (typeof checkGroups)[number];

/** What a check says of itself wherever it runs. */
export interface CheckInfo {
  /** Kebab-case; names the fault. */
  readonly id: string;
  readonly group: CheckGroup;
  /** One sentence. */
  readonly summary: string;
  /** “unfinished”: info in a plan, warning in a draft, error in a final note. */
  readonly severity: Severity | 'unfinished';
  /** Whether a remark may be allowed in the note, with a reason. Never for side, identity and wrong lens. */
  readonly allowable: boolean;
}

/** What the page of a check says besides; its examples are executed. */
export interface AboutCheck {
  readonly why: string;
  readonly whatToDo: string;
  /** A named publication, or "common practice, no source". */
  readonly source: string;
  readonly since: string;
  readonly faulty: Example;
  readonly sound: Example;
  /** Why no note can show the check at work, where none can. */
  readonly noExample?: string;
}

/** A function, so that what runs while a note is written need not carry the pages along. */
export type About = () => AboutCheck;

/**
 * An example: lines laid over a complete sound note (see examples/compose.ts: a field takes the place of the same
 * field, a first line `without: lens.serial, ring` takes fields away). The faulty one yields exactly one remark, of its
 * own check, and the sound one none.
 */
export interface Example {
  readonly note: string;
  /** Other notes of the set, laid over a sound note of their kind; `sideport.yaml` over a sound department file. */
  readonly files?: Readonly<Record<string, string>>;
  /** The name of the example's own file. */
  readonly file?: string;
  /** What the lines are laid over: the operation unless said. */
  readonly base?: 'operation' | 'follow-up' | 'amendment' | 'department' | 'nothing';
  /** With the base “nothing”: how often the text is repeated. */
  readonly times?: number;
}

/** A note that an amendment can amend, and its file. */
export type AmendedNote = { readonly file: string } & (
  { readonly kind: 'operation'; readonly note: Operation } | { readonly kind: 'follow-up'; readonly note: FollowUp }
);

/** What a check is told besides the note. */
export interface CheckContext {
  readonly status: Status;
  readonly reading: NoteReading;
  readonly department: Department | null;
  /** Where the department file can be opened from the set, when it can. */
  readonly departmentFile: string | null;
  /** The operation that a follow-up or amendment points to, when it is in the set and readable. */
  readonly operation: Operation | null;
  /** The file of that operation. */
  readonly operationFile: string | null;
  /** The note that an amendment amends, when it is in the set and readable. */
  readonly amended: AmendedNote | null;
  readonly set: NoteSet | null;
  readonly file: string | null;
  /** Today as year-month-day, when the caller says. */
  readonly today: string | null;
  /** What dictations say; null where that was not loaded. */
  readonly dictation: Dictation | null;
  /** Every check there is, for those that look at settings of checks. */
  readonly knownChecks: readonly CheckInfo[];
}

export interface Saying {
  /** The field or section that is marked. */
  readonly at: Place | Span;
  readonly message: string;
  readonly related?: readonly Related[];
  readonly fixes?: readonly Fix[];
  /** Only where the check has two grades. */
  readonly severity?: Severity;
}

export type Say = (saying: Saying) => void;

export interface Check extends CheckInfo {
  run(context: CheckContext, say: Say): void;
}

export interface CheckOf<N> extends CheckInfo {
  run(note: N, say: Say, context: CheckContext): void;
}

export function operationCheck(check: CheckOf<Operation>): Check {
  return {
    ...check,
    run: (context, say) => void (context.reading.kind === 'operation' && check.run(context.reading.note, say, context)),
  };
}

export function followUpCheck(check: CheckOf<FollowUp>): Check {
  return {
    ...check,
    run: (context, say) => void (context.reading.kind === 'follow-up' && check.run(context.reading.note, say, context)),
  };
}

export function amendmentCheck(check: CheckOf<Amendment>): Check {
  return {
    ...check,
    run: (context, say) => void (context.reading.kind === 'amendment' && check.run(context.reading.note, say, context)),
  };
}

export function departmentCheck(check: CheckOf<Department>): Check {
  return {
    ...check,
    run: (context, say) =>
      void (context.reading.kind === 'department' && check.run(context.reading.note, say, context)),
  };
}

/** A check of every kind of record, department files included. */
export function textCheck(check: CheckOf<NoteReading>): Check {
  return { ...check, run: (context, say) => check.run(context.reading, say, context) };
}

export function severityOf(check: CheckInfo, status: Status): Severity {
  return check.severity === 'unfinished' ? severityOfUnfinished(status) : check.severity;
}
