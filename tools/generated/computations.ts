import { computedValues } from '../../schemas/src/computed-values.ts';
import type { ListedCalculation } from '../../server/src/note/calculations/calculation.ts';
import { CALCULATIONS } from '../../server/src/note/calculations/list.ts';

/** docs/computations.md: every computed value of a note, and every calculation with its worked example, as it ran. */
export function computationsPage(): string {
  const groups = [...new Set(computedValues.map(({ group }) => group))];
  const topics = [...new Set(CALCULATIONS.map(({ about }) => about.topic))];
  return `${[
    opening,
    '## Computed values of a note',
    'Names are a contract: `sideport compute --format json`, the editor and exports use them. A value stands beside the field it belongs to; the same name may stand at several fields (each incision, each step, the planned and the implanted lens). Lens powers and predicted refractions stand behind the line for the formulas that the plan names, or else for the department’s first choice.',
    ...groups.map(valuesOfGroup),
    '## Calculations',
    'Each is a pure function of plain numbers. It answers a value with unit, method, source and cautions, or the reason why there is none; it never answers with a number outside its range. Full precision is kept; the examples below show the values as they were computed.',
    ...topics.map(topic),
  ].join('\n\n')}\n`;
}

const opening = `<!-- Generated from the calculations by npm run generate. Do not edit. -->

# Computations

Computed values are aids. Check them against the biometry print-out and the lens box; follow local policy and licensed
practice. Constants of formulas are the responsibility of whoever enters them.

**Rounding.** Values are kept at full precision and rounded only where a person reads them, as the trade does: dioptres
to 0.01, axes and positions to 1 degree (a horizontal axis is 180, never 0), lengths to 0.01 mm, pressures to 1 mmHg,
logMAR and ratios to 0.01, letters, minutes and days to 1, ultrasound times to 0.1 s. Half is rounded away from zero.
A cylinder of zero has no axis: null in data, “no axis” in words.

**Status of a source.** *seen*: its text (an abstract, an excerpt, a scan) was read. *seen second-hand*: another
publication or an open library quoting it was read. *from memory*: the source itself was not read; verify before clinical
use. *derived*: algebra or arithmetic. *common practice*: no source.`;

function valuesOfGroup(group: string): string {
  const rows = computedValues
    .filter((value) => value.group === group)
    .map(
      ({ name, unit, inline, meaning }) =>
        `| \`${name}\` | ${unit} | ${inline ? 'behind the line' : ''} | ${meaning} |`,
    );
  return [`### ${capital(group)}`, ['| name | unit | shown | meaning |', '|---|---|---|---|', ...rows].join('\n')].join(
    '\n\n',
  );
}

function topic(name: string): string {
  return [`### ${name}`, ...CALCULATIONS.filter(({ about }) => about.topic === name).map(calculation)].join('\n\n');
}

function calculation({ about, runExample }: ListedCalculation): string {
  const { name, definition, inputs, unit, domain, method, inFull, source, cautions, example } = about;
  const outcome = runExample();
  const inputRows = Object.entries(inputs).map(
    ([key, field]) => `| \`${key}\` | ${field.label} | ${field.unit} | ${field.range} |`,
  );
  const gives = outcome.ok ? written(outcome.value) : `refused: ${outcome.because}`;
  return [
    `#### ${name}`,
    `${definition}${unit === '' ? '' : ` Unit: ${unit}.`}`,
    ['| input | meaning | unit | accepted |', '|---|---|---|---|', ...inputRows].join('\n'),
    [
      `- Method: ${method}${inFull === undefined ? '' : `. In full: ${inFull}`}`,
      `- Domain: ${domain}`,
      `- Source: ${source.citation} — *${source.status}*`,
      ...cautions.map((caution) => `- Caution: ${caution}`),
      `- Example: ${written(example.input)} gives ${gives}${outcome.ok && unit !== '' ? ` ${unit}` : ''}`,
    ].join('\n'),
  ].join('\n\n');
}

/** Data in one line, numbers to six digits. */
function written(data: unknown): string {
  if (typeof data === 'number') return String(Number(data.toPrecision(6)));
  if (typeof data === 'string') return `“${data}”`;
  if (Array.isArray(data)) return `[${data.map(written).join(', ')}]`;
  if (typeof data !== 'object' || data === null) return String(data);
  return Object.entries(data)
    .map(([key, value]) =>
      typeof value === 'object' && value !== null ? `${key} (${written(value)})` : `${key} ${written(value)}`,
    )
    .join(', ');
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
