import { gs1CheckDigit } from './check-digits.ts';
import type { SplitElement } from './gs1-split.ts';
import type { LabelFault } from './reading.ts';

/** Trade numbers are written with 8, 12, 13 or 14 digits. Source: GS1 General Specifications, GTIN. */
const TRADE_NUMBER = /^(?:\d{8}|\d{12,14})$/u;
const LONGEST = 14;

/** Identifiers of the thing that is labelled: the device itself, or a piece of it. */
const DEVICE = ['01', '8006'];

/**
 * A trade number by itself, as it is printed under the bars of a box. Read as a scan its first digits would pass for an
 * identifier, and the rest for a value nobody wrote; but no scan of a device number is so short.
 */
export function bareTradeNumber(text: string, from: number): LabelFault | undefined {
  const digits = text.slice(from).trim();
  if (!TRADE_NUMBER.test(digits) || gs1CheckDigit(digits.slice(0, -1)) !== digits.slice(-1)) return undefined;
  return {
    fault: 'label-device-number-missing',
    severity: 'error',
    message: `${digits} is a trade number by itself. On a label it stands behind (01), with ${LONGEST} digits: (01)${digits.padStart(LONGEST, '0')}. The line marked UDI on the box says more: scan or type that.`,
    span: { start: from, end: text.length },
  };
}

/** A label that may be sound as GS1 data and still names no lens. */
export function noDeviceNumber(elements: readonly SplitElement[]): LabelFault | undefined {
  const [first] = elements;
  if (first === undefined || elements.some(({ ai }) => DEVICE.includes(ai))) return undefined;
  const found = elements.map(({ ai, element }) => `(${ai}) ${element?.title ?? 'unknown'}`).join(', ');
  return {
    fault: 'label-device-number-missing',
    severity: 'error',
    message: `The label has no device number (01), so that it names no lens; it was read as ${found}. Scan or type the line marked UDI on the box.`,
    span: { start: first.keySpan.start, end: Math.max(...elements.map(({ span }) => span.end)) },
  };
}
