import type { Cell, Cells } from './table.ts';

export interface CsvOptions {
  /** Puts an apostrophe before a cell that a spreadsheet would run as a formula. On unless switched off. */
  readonly guard?: boolean;
  /** Which cells, counted from 0, are numbers by their column: they are never guarded. */
  readonly isNumber?: (index: number) => boolean;
}

const NUMBER = /^[+-]?\d+(?:\.\d+)?(?:e[+-]?\d+)?$/i;
/** OWASP ASVS 1.2.10 and CWE-1236: what makes a spreadsheet run a cell. */
const FORMULA_STARTS = ['=', '+', '-', '@', '\t', '\r', '\0'];

/**
 * One record of comma-separated values, with its CRLF.
 * Source: RFC 4180. The guard leaves strict numbers alone, so that -0.50 and -1e-7 stay numbers.
 */
export function csvRecord(cells: Cells, { guard = true, isNumber = () => false }: CsvOptions = {}): string {
  const texts = cells.map((cell, index) => {
    const text = written(cell);
    return quoted(guard && !isNumber(index) ? guarded(text) : text);
  });
  return `${texts.join(',')}\r\n`;
}

function written(cell: Cell): string {
  return cell === undefined ? '' : String(cell);
}

function guarded(text: string): string {
  return FORMULA_STARTS.includes(text.charAt(0)) && !NUMBER.test(text) ? `'${text}` : text;
}

function quoted(text: string): string {
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
