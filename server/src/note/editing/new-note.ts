import type { Department } from '@sideport/schemas';
import { formatVersion } from '@sideport/schemas/sections/head.ts';
import { yamlText } from '../edits/yaml-text.ts';
import { snippetText } from './proposal.ts';

/** Behind what is prefilled: a final note may not keep the mark. */
const CONFIRM = ' # confirm';

/**
 * A new note of an operation from what is usual in a department, as a snippet whose places are walked by Tab. Nothing
 * clinical is filled in without a mark that asks for confirmation; the eye never is.
 * @param today year-month-day, as the date to begin with
 */
export function newNoteSnippet(department: Department | null, today: string): string {
  const stops = { next: 1 };
  const stop = (preset = '') => `\${${stops.next++}${preset === '' ? '' : `:${snippetText(preset)}`}}`;
  const surgeon = onlySurgeon(department);
  const usual = (key: string, text: string | undefined) =>
    text === undefined ? `${key}: ${stop()}` : `${key}: ${asValue(text)}${CONFIRM}`;
  return [
    `opnote: ${formatVersion.words[0]?.word ?? '1'}`,
    'record: operation',
    'status: draft',
    `id: ${stop()}`,
    `date: ${stop(today)}`,
    `start: ${stop()}`,
    `place: ${stop()}`,
    `urgency: ${stop()}`,
    `procedure: ${stop()}`,
    '',
    'patient:',
    `  ref: ${stop()}`,
    `  born: ${stop()}`,
    `  sex: ${stop()}`,
    `  allergies: ${stop()}`,
    `  anticoagulant: ${stop()}`,
    `  alpha-blocker: ${stop()}`,
    `eye: ${stop()}`,
    `which-eye: ${stop()}`,
    '',
    'team:',
    '  - role: surgeon',
    `    ${usual('ref', surgeon?.ref?.text)}`,
    `    ${usual('grade', surgeon?.grade?.text)}`,
    '',
    usual('seat', surgeon?.seat?.text),
    ...machineSettings(surgeon),
    ...reviews(department),
    '$0',
  ].join('\n');
}

/** A text of the department file as a value of the note. */
function asValue(text: string): string {
  return snippetText(yamlText(text, { as: 'identifier' }));
}

type Person = NonNullable<Department['staff']>['items'][number];

/** Whose habits can be meant where only one person operates; with several, nobody's. */
function onlySurgeon(department: Department | null): Person | undefined {
  const surgeons = department?.staff?.items.filter((person) => person.role?.value === 'surgeon') ?? [];
  return surgeons.length === 1 ? surgeons[0] : undefined;
}

const SETTINGS = ['bottle-height', 'set-pressure', 'vacuum', 'flow'] as const;

function machineSettings(surgeon: Person | undefined): readonly string[] {
  const written = SETTINGS.flatMap((key) => {
    const text = surgeon?.settings?.[key]?.text;
    return text === undefined ? [] : [`${key}: ${asValue(text)}${CONFIRM}`];
  });
  if (written.length === 0) return [];
  return ['', 'nucleus:', '  steps:', ...written.map((line, index) => `    ${index === 0 ? '- ' : '  '}${line}`)];
}

/** The reviews that the department plans after every operation. */
function reviews(department: Department | null): readonly string[] {
  const planned = department?.['review-schedule']?.items.filter((review) => review.when?.value === 'always') ?? [];
  const written = planned.flatMap(({ what, due }) =>
    what === undefined || due === undefined
      ? []
      : [`  - what: ${asValue(what.text)}${CONFIRM}`, `    due: ${asValue(due.text)}${CONFIRM}`],
  );
  return written.length === 0 ? [] : ['', 'reviews:', ...written];
}

/** The same note without places to walk, for a file on disk. */
export function newNoteText(department: Department | null, today: string): string {
  const text = newNoteSnippet(department, today)
    .replace(/\$\{\d+:((?:\\.|[^}\\])*)\}/gu, '$1')
    .replace(/\$\{\d+\}|\$0/gu, '')
    .replace(/\\([\\$}])/gu, '$1');
  return `${text.replace(/[ \t]+$/gmu, '').trimEnd()}\n`;
}
