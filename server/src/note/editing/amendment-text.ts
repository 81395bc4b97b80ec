import { planAt, recordPlan, type FollowUp, type Operation, type Plan } from '@sideport/schemas';
import { stepsOf } from '../checks/support/field-path.ts';
import { sameWords } from '../checks/support/words.ts';
import { yamlQuoted } from '../edits/yaml-text.ts';
import { absenceIn } from '../reading/absence.ts';
import { isField, isGroup, isList } from '../export/members.ts';

/** A note that can be amended. */
export type Amendable =
  { readonly kind: 'operation'; readonly note: Operation } | { readonly kind: 'follow-up'; readonly note: FollowUp };

export interface AmendmentRequest {
  readonly amended: Amendable;
  readonly id: string;
  readonly kind: 'addendum' | 'correction' | 'late entry';
  /** ISO 8601 with the offset. */
  readonly at: string;
  readonly by: string;
  readonly reason: string;
  /** The field to put right and what it should say. */
  readonly change?: { readonly field: string; readonly now: string };
  /** New information in words. */
  readonly text?: string;
}

/** The text of an amendment to a note, or why there can be none; the note itself is never touched. */
export function amendmentText(request: AmendmentRequest): { readonly text: string } | { readonly because: string } {
  const { amended, change, text } = request;
  const { note } = amended;
  const was = change && valueAt(amended, change.field);
  if (was !== undefined && 'because' in was) return was;
  if (change) {
    const fault = newValueFault(planOf(amended, change.field), change.now);
    if (fault !== undefined) return { because: fault };
    if (was?.text !== undefined && sameWords(was.text, change.now))
      return { because: `the note says “${was.text}” already, so that nothing would change` };
  }
  const lines = [
    'opnote: 1',
    'record: amendment',
    'status: final',
    `id: ${yamlQuoted(request.id)}`,
    `amends: ${yamlQuoted(note.id?.text ?? '')}`,
    `kind: ${request.kind}`,
    `at: ${request.at}`,
    `by: ${yamlQuoted(request.by)}`,
    ...(note.patient?.ref ? ['patient:', `  ref: ${yamlQuoted(note.patient.ref.text)}`] : []),
    ...(note.eye ? [`eye: ${note.eye.value}`] : []),
    ...(change
      ? [
          'changes:',
          `  - field: ${yamlQuoted(change.field)}`,
          `    was: ${was?.text === undefined ? 'not recorded' : yamlQuoted(was.text)}`,
          `    now: ${yamlQuoted(change.now)}`,
          `    reason: ${yamlQuoted(request.reason)}`,
        ]
      : []),
    `reason: ${yamlQuoted(request.reason)}`,
    ...(text === undefined ? [] : [`text: ${yamlQuoted(text)}`]),
    'signed:',
    `  - by: ${yamlQuoted(request.by)}`,
    '    meaning: author',
    `    at: ${request.at}`,
  ];
  return { text: `${lines.join('\n')}\n` };
}

const planOf = ({ kind }: Amendable, path: string): Plan | undefined => planAt(recordPlan(kind), stepsOf(path));

/** What the note says at a path: a text, or nothing recorded. */
function valueAt(amended: Amendable, path: string): { readonly text?: string } | { readonly because: string } {
  const plan = planOf(amended, path);
  if (plan === undefined)
    return { because: `there is no field ${path}. Fields are named by their path, such as lens.serial` };
  if (plan.kind !== 'value')
    return { because: `${path} is a group of fields. Name the one to be put right, such as ${path}.text` };
  let member: unknown = amended.note;
  for (const step of stepsOf(path)) {
    if (typeof step === 'number') member = isList(member) ? member.items[step] : undefined;
    else member = isGroup(member) ? (member[step] ?? said(member, step)) : undefined;
  }
  if (typeof member === 'string') return { text: member };
  return isField(member) ? { text: member.text } : {};
}

const said = (
  group: { readonly $: { readonly said: Readonly<Record<string, { readonly word: string }>> } },
  key: string,
): string | undefined => group.$.said[key]?.word;

/** What is wrong with the new value by the notation of its field. */
function newValueFault(plan: Plan | undefined, now: string): string | undefined {
  if (plan?.kind !== 'value' || absenceIn(now, plan.guide) !== undefined) return undefined;
  const reading = plan.notation.read(now);
  return reading.ok ? undefined : reading.fault.message.replace(/\.$/u, '');
}
