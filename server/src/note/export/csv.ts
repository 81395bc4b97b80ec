import type { Cell, Cells } from './table.ts';

export interface CsvOptions {
  /** Puts an apostrophe before a cell that a spreadsheet would run as a formula. On unless switched off. */
  readonly guard?: boolean;
}

const NUMBER = /^[+-]?\d+(?:\.\d+)?$/;
/** OWASP ASVS 1.2.10 and CWE-1236: what makes a spreadsheet run a cell. */
const FORMULA_STARTS = ['=', '+', '-', '@', '\t', '\r', '\0'];

/**
 * One record of comma-separated values, with its CRLF.
 * Source: RFC 4180. The guard leaves strict numbers alone, so that -0.50 stays a number.
 */
export function csvRecord(cells: Cells, { guard = true }: CsvOptions = {}): string {
  return `${cells.map((cell) => quoted(guard ? guarded(written(cell)) : written(cell))).join(',')}\r\n`;
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
