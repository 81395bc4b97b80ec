import type { Plan } from '@sideport/schemas';
import { childPlan, type Addition, type Branch } from './additions.ts';
import { STEP } from './lines.ts';
import { FROM_LABEL, PROPOSED } from './marks.ts';
import { yamlBlock, yamlText } from './yaml-text.ts';

/** What stands behind the colon of a field that is written. */
export interface Written {
  /** On the line of the colon, with the blank before it. */
  readonly inline: string;
  /** The comment that asks for confirmation of what is on that line. */
  readonly mark?: string;
  /** On lines of its own below, each beginning with its line end. */
  readonly below: string;
}

/** How what is below a field is written, for a field in a column; undefined where it holds nothing. */
export function writtenBehind(
  branch: Branch,
  plan: Plan | undefined,
  column: number,
  eol: string,
): Written | undefined {
  if (branch.value !== undefined) return ofValue(branch.value, column, eol);
  if (branch.below.size === 0) return undefined;
  if (plan?.kind !== 'list') return { inline: '', below: fields(branch, plan, column + STEP, eol).join('') };
  const entries = [...branch.below.values()];
  if (plan.item.kind !== 'value')
    return { inline: '', below: entries.flatMap((each) => entryLines(each, plan.item, column + STEP, eol)).join('') };
  return inlineList(entries);
}

/** The values of a list on one line, as people write it. */
export function inlineList(entries: readonly Branch[]): Written {
  const values = valuesOf(entries);
  const mark = markOf(values);
  const inline = ` [${values.map((value) => inBrackets(value)).join(', ')}]`;
  return { inline, ...(mark !== undefined && { mark }), below: '' };
}

/** The text of a value within brackets or braces. */
export function inBrackets({ value, as }: Addition): string {
  return as === 'open' ? '' : yamlText(value, { as: as === 'identifier' ? as : 'value', inBrackets: true });
}

export function valuesOf(entries: readonly Branch[]): readonly Addition[] {
  return entries.flatMap(({ value }) => (value === undefined ? [] : [value]));
}

export function asText({ inline, mark, below }: Written): string {
  return `${inline}${mark === undefined ? '' : ` # ${mark}`}${below}`;
}

/** A new entry of a list, each line beginning with its line end. */
export function entryLines(branch: Branch, plan: Plan | undefined, column: number, eol: string): readonly string[] {
  const dash = `${eol}${' '.repeat(column)}-`;
  if (branch.value !== undefined) return [`${dash}${asText(ofValue(branch.value, column, eol))}`];
  const indent = `${eol}${' '.repeat(column + STEP)}`;
  return fields(branch, plan, column + STEP, eol).map((line, at) =>
    at === 0 ? `${dash} ${line.slice(indent.length)}` : line,
  );
}

/** The fields of a group, one text for each, beginning with its line end. */
function fields(branch: Branch, plan: Plan | undefined, column: number, eol: string): readonly string[] {
  return [...branch.below].flatMap(([key, child]) => {
    const written = writtenBehind(child, childPlan(plan, key), column, eol);
    return written === undefined ? [] : [`${eol}${' '.repeat(column)}${key}:${asText(written)}`];
  });
}

function ofValue(value: Addition, column: number, eol: string): Written {
  if (value.as === 'open') return { inline: ' ', below: '' };
  if (value.as === 'block') {
    // A comment behind a block would be a part of the text.
    const [first = '', ...lines] = yamlBlock(value.value, ' '.repeat(column + STEP), eol).split(eol);
    return { inline: ` ${first}`, below: lines.map((line) => `${eol}${line}`).join('') };
  }
  const mark = markOf([value]);
  return { inline: ` ${yamlText(value.value, { as: value.as })}`, ...(mark !== undefined && { mark }), below: '' };
}

/** The mark that asks for confirmation of values on one line, for a dictation with the words of each. */
export function markOf(values: readonly Addition[]): string | undefined {
  const proposed = values.filter(({ proposedFrom }) => proposedFrom !== undefined);
  if (proposed.length === 0) return undefined;
  if (proposed.every(({ proposedFrom }) => proposedFrom === 'label')) return FROM_LABEL;
  return `${PROPOSED}: ${values.map(({ words }) => `“${shortened(words ?? '')}”`).join(', ')}`;
}

const SHOWN = 60;

function shortened(words: string): string {
  const line = words.replace(/\s+/gu, ' ').replace(/[“”]/gu, "'").trim();
  return line.length > SHOWN ? `${line.slice(0, SHOWN - 1)}…` : line;
}
