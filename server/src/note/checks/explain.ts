import { nearest } from '@sideport/schemas';
import type { Remark } from '../remark.ts';
import { allAbouts } from './all-abouts.ts';
import { checkGroups, type AboutCheck, type CheckInfo, type Example } from './check.ts';
import { runExample } from './examples/run-example.ts';
import { checkById, knownChecks } from './known-checks.ts';

/** The page of one check, in plain text for the command line and in Markdown for the editor and docs/checks. */
export interface Explanation {
  readonly id: string;
  readonly text: string;
  readonly markdown: string;
}

/** Everything known of a check, with its examples executed; undefined when there is no such check. */
export function explainCheck(id: string): Explanation | undefined {
  const check = checkById(id);
  const about = allAbouts[id]?.();
  if (check === undefined || about === undefined) return undefined;
  const page = pageOf(check, about);
  return { id, text: asText(page), markdown: asMarkdown(page) };
}

/** The pages of all checks in Markdown, by id. */
export function checkPages(): Readonly<Record<string, string>> {
  return Object.fromEntries(knownChecks.map(({ id }) => [id, explainCheck(id)?.markdown ?? '']));
}

/** The check that a mistyped id probably means. */
export function nearestCheck(id: string): string | undefined {
  return nearest(
    id,
    knownChecks.map((check) => check.id),
  );
}

/** Every check in its group, one line each, as plain text and as Markdown with links to the pages beside it. */
export function explainAll(): { readonly text: string; readonly markdown: string } {
  const text: string[] = [];
  const markdown: string[] = [
    '# Checks',
    '',
    `${knownChecks.length} checks, each with a page of its own: what it looks for, why, what to do, its source, and an example that is executed: its lines are laid over a complete sound note. The same pages open in the editor (“Explain this check”) and with \`sideport explain CHECK\`.`,
  ];
  for (const group of checkGroups) {
    const checks = knownChecks.filter((check) => check.group === group).toSorted((a, b) => (a.id < b.id ? -1 : 1));
    if (checks.length === 0) continue;
    const width = Math.max(...checks.map(({ id }) => id.length));
    text.push(capital(group), ...checks.map(({ id, summary }) => `  ${id.padEnd(width)}  ${summary}`), '');
    markdown.push(
      '',
      `## ${capital(group)}`,
      '',
      ...checks.map(({ id, summary }) => `- [${id}](${id}.md): ${summary}`),
    );
  }
  text.push(`${knownChecks.length} checks. “sideport explain CHECK” shows the page of one.`);
  return { text: `${text.join('\n')}\n`, markdown: `${markdown.join('\n')}\n` };
}

interface Page {
  readonly check: CheckInfo;
  readonly noExample: string | undefined;
  readonly facts: readonly (readonly [name: string, value: string])[];
  readonly examples: readonly ShownExample[];
}

interface ShownExample {
  readonly title: string;
  readonly parts: readonly { readonly file: string; readonly lines: string }[];
  readonly says: readonly string[];
}

function pageOf(check: CheckInfo, about: AboutCheck): Page {
  const { noExample } = about;
  return {
    check,
    noExample,
    facts: [
      ['Why', about.why],
      ['What to do', about.whatToDo],
      ['Source', about.source],
      ['Severity', severityWords(check)],
      ['Allowing it', allowWords(check)],
      ['Group', check.group],
      ['Since', about.since],
    ],
    examples: noExample === undefined ? [shown('Remarked', about.faulty), shown('Not remarked', about.sound)] : [],
  };
}

function severityWords({ severity }: CheckInfo): string {
  return severity === 'unfinished' ? 'info in a planned note, warning in a draft, error in a final note' : severity;
}

function allowWords({ allowable, id, group }: CheckInfo): string {
  if (allowable) return `write the reason behind the line: # allow ${id}: reason`;
  return group === 'writing'
    ? 'cannot be allowed: the note itself would not be read rightly'
    : 'cannot be allowed: put the note right instead';
}

function shown(title: string, example: Example): ShownExample {
  const { review, file } = runExample(example);
  const others = Object.entries(example.files ?? {}).map(([name, lines]) => ({ file: name, lines: lines.trimEnd() }));
  const lines =
    example.times === undefined ? example.note.trimEnd() : `${example.note.trimEnd()}\n… (${example.times} times)`;
  return { title, parts: [{ file, lines }, ...others], says: review.remarks.map(said) };
}

function said(remark: Remark): string {
  const related = remark.related.map(({ message, file }) => `\n  ${message}${file === undefined ? '' : ` (${file})`}`);
  return `${remark.severity}: ${remark.message}${related.join('')}`;
}

function asText({ check, noExample, facts, examples }: Page): string {
  const width = Math.max(...facts.map(([name]) => name.length)) + 2;
  return [
    check.id,
    '',
    check.summary,
    '',
    ...facts.map(([name, value]) => `${name.padEnd(width)}${value}`),
    '',
    ...(noExample === undefined ? [] : ['Example', indented(noExample), '']),
    ...examples.flatMap(({ title, parts, says }) => [
      title,
      ...parts.flatMap(({ file, lines }) => [...(parts.length > 1 ? [`  ${file}`] : []), indented(lines)]),
      ...(says.length === 0 ? [] : ['', ...says.map((line) => indented(line))]),
      '',
    ]),
  ]
    .join('\n')
    .trimEnd()
    .concat('\n');
}

function asMarkdown({ check, noExample, facts, examples }: Page): string {
  return [
    `# ${check.id}`,
    '',
    check.summary,
    '',
    ...facts.flatMap(([name, value]) => [`**${name}:** ${name === 'Allowing it' ? code(value) : value}`, '']),
    ...(noExample === undefined ? [] : ['## Example', '', noExample, '']),
    ...examples.flatMap(({ title, parts, says }) => [
      `## ${title}`,
      '',
      ...parts.flatMap(({ file, lines }) => [
        ...(parts.length > 1 ? [`\`${file}\``, ''] : []),
        '```yaml',
        lines,
        '```',
        '',
      ]),
      ...says.flatMap((line) => ['```text', line, '```', '']),
    ]),
  ]
    .join('\n')
    .trimEnd()
    .concat('\n');
}

function code(value: string): string {
  return value.replace(/# allow .*$/u, (comment) => `\`${comment}\``);
}

function indented(text: string): string {
  return text
    .split('\n')
    .map((line) => (line === '' ? '' : `  ${line}`))
    .join('\n');
}

function capital(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}
