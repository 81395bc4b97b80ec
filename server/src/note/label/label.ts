import { readGs1 } from './gs1.ts';
import { separatorAt } from './gs1-split.ts';
import { readHibc } from './hibc.ts';
import type { LabelReading, LabelSpan } from './reading.ts';

/** What a scanner may send in front of GS1 data: GS1-128, DataBar, DataMatrix, QR code, DotCode. */
const GS1_SYMBOLOGIES = ['C1', 'e0', 'd2', 'Q3', 'J1'];

/**
 * Reads the label of a lens: GS1 or HIBC, typed by hand or scanned.
 * @param text the label as it stands in the record; nothing before or after it
 * @param year the year that two-digit years are counted from, that of the operation
 */
export function readLabel(text: string, year: number): LabelReading {
  const reading = read(text, year);
  return { ...reading, faults: reading.faults.map((fault) => ({ ...fault, span: insideOf(text, fault.span) })) };
}

/** A place inside the text and, unless the text is empty, at least one character long. */
function insideOf(text: string, { start, end }: LabelSpan): LabelSpan {
  const from = Math.max(0, Math.min(start, text.length - 1));
  return { start: from, end: Math.min(text.length, Math.max(end, from + 1)) };
}

function read(text: string, year: number): LabelReading {
  const symbology = /^\](..)/.exec(text)?.[1];
  const from = symbology === undefined ? 0 : 3;
  const hibc = /^\*?\+/.exec(text.slice(from));
  if (hibc) return readHibc(text, from + hibc[0].length - 1, year);
  if (symbology !== undefined && !GS1_SYMBOLOGIES.includes(symbology)) {
    return refused(
      'label-symbology-not-gs1',
      `The scanner says with ]${symbology} that this symbol does not hold GS1 data. Scan the symbol marked UDI.`,
      text,
      0,
      3,
    );
  }
  if (/^[(\d]/.test(text.slice(from)) || separatorAt(text, from) > 0) return readGs1(text, from, year);
  return refused(
    'label-not-recognised',
    'This is neither a GS1 label, which starts with (01) or with digits, nor a HIBC label, which starts with +. Type or scan the line marked UDI on the box.',
    text,
    0,
    text.length,
  );
}

function refused(
  fault: LabelReading['faults'][number]['fault'],
  message: string,
  text: string,
  start: number,
  end: number,
): LabelReading {
  const form = text.startsWith('(') ? 'bracketed' : 'scanned';
  return {
    standard: 'unknown',
    form,
    parts: [],
    faults: [{ fault, severity: 'error', message, span: { start, end } }],
  };
}
