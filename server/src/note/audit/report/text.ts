import type { Audit } from '../audit.ts';
import type { Figure } from '../figure.ts';
import { CAUTIONS, chaptersOf, makingsOf, setSentences, type Chapter } from './chapters.ts';
import { displayCases, displayGroup, displayInterval, displayValue } from './display.ts';

const OVERDUE_SHOWN = 20;

function table(rows: readonly (readonly string[])[]): string {
  const widths = (rows[0] ?? []).map((_, column) => Math.max(...rows.map((row) => (row[column] ?? '').length)));
  return rows
    .map((row) =>
      row
        .map((cell, column) => cell.padEnd(widths[column] ?? 0))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}

function figureRow(figure: Figure, number: number): readonly string[] {
  return [
    figure.label,
    displayGroup(figure.group),
    displayValue(figure),
    displayInterval(figure),
    displayCases(figure),
    figure.suppressed ? '' : String(figure.missing),
    `[${number}]`,
  ];
}

function chapter({ title, caution, figures }: Chapter): string {
  if (figures.length === 0) return `${title}\n${'='.repeat(title.length)}\nNothing to report.\n`;
  const makings = makingsOf(figures);
  const header = ['', 'group', 'value', '95 % interval', 'n', 'missing', 'made by'];
  const rows = table([header, ...figures.map((figure) => figureRow(figure, makings.numberOf(figure)))]);
  const notes = makings.list.map(({ number, method, source, cautions, benchmarks }) => {
    const compare = benchmarks.map(({ value, source: from }) => `     To compare: ${value} (${from}).`);
    return [
      `[${number}] ${method}.`,
      `     Source: ${source}.`,
      ...compare,
      ...cautions.map((one) => `     ${one}`),
    ].join('\n');
  });
  return `${title}\n${'='.repeat(title.length)}\n${caution}\n\n${rows}\n\n${notes.join('\n')}\n`;
}

function list(items: readonly string[]): string {
  return items.map((item) => `- ${item}`).join('\n');
}

/** The audit as plain text. */
export function auditText(audit: Audit): string {
  const found = audit.standOuts.map(({ message, notes }) =>
    notes.length === 0 ? message : `${message} Notes: ${notes.join(', ')}.`,
  );
  const shown = audit.overdue
    .slice(0, OVERDUE_SHOWN)
    .map(({ operation, what, due, daysOver }) => `${operation}: ${what}, due ${due}, ${daysOver} days ago`);
  const more = audit.overdue.length - shown.length;
  return [
    `Audit of cataract operations\n============================\n${setSentences(audit).join('\n')}\n`,
    `${list(CAUTIONS)}\n`,
    `What stands out\n===============\n${found.length === 0 ? 'Nothing lies outside what chance would usually leave.' : list(found)}\n`,
    ...chaptersOf(audit).map(chapter),
    ...(shown.length === 0
      ? []
      : [
          `Reviews without a visit, longest overdue first\n${list(shown)}${more > 0 ? `\nand ${more} more (all of them with --format json)` : ''}\n`,
        ]),
  ].join('\n');
}
