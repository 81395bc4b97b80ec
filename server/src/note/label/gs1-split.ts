import { gs1Element, gs1ElementAt, type Gs1Element } from './gs1-table.ts';
import type { LabelFault, LabelSpan } from './reading.ts';

/** One element as it was found: `value` has escapes undone and no spaces around it. */
export interface SplitElement {
  readonly ai: string;
  readonly element: Gs1Element | undefined;
  readonly value: string;
  readonly span: LabelSpan;
  /** Where its identifier stands, with its brackets when there are some. */
  readonly keySpan: LabelSpan;
}

export interface Split {
  readonly elements: readonly SplitElement[];
  readonly faults: readonly LabelFault[];
}

/** What stands for the separator FNC1: the control character a scanner sends, and the ways people write it. */
const SEPARATORS = ['\u001d', '\u241d', '<GS>', '{GS}', '^'];

const fault = (name: LabelFault['fault'], message: string, start: number, end: number): LabelFault => ({
  fault: name,
  severity: 'error',
  message,
  span: { start, end },
});

/** Splits text such as `(01)09521234543213(17)270630`; a bracket inside a value is written `\(`. */
export function splitBracketed(text: string, from: number): Split {
  const elements: SplitElement[] = [];
  const faults: LabelFault[] = [];
  let at = from;
  while (at < text.length) {
    const open = /\((\d{2,4})\)/y;
    open.lastIndex = at;
    const found = open.exec(text);
    if (!found) {
      const next = nextOpening(text, at + 1);
      faults.push(outsideFault(text, at, next));
      at = next;
      continue;
    }
    const start = open.lastIndex;
    const end = nextOpening(text, start);
    elements.push(bracketedElement(text, found[1] ?? '', start, end, faults));
    at = end;
  }
  return { elements, faults };
}

function nextOpening(text: string, from: number): number {
  for (let at = from; at < text.length; at++) {
    if (text[at] === '\\') at++;
    else if (text[at] === '(') return at;
  }
  return text.length;
}

function outsideFault(text: string, start: number, end: number): LabelFault {
  const shown = text.slice(start, end);
  return shown.startsWith('(')
    ? fault(
        'label-bracket-not-closed',
        `"${shown}" opens a bracket that is not an identifier. An identifier is 2 to 4 digits in brackets, such as (10); a bracket inside a value is written \\(.`,
        start,
        end,
      )
    : fault(
        'label-text-outside-parts',
        `"${shown}" belongs to no part: write its identifier in brackets before it.`,
        start,
        end,
      );
}

function bracketedElement(text: string, ai: string, start: number, end: number, faults: LabelFault[]): SplitElement {
  const raw = text.slice(start, end);
  const value = raw.trim();
  const valueStart = start + (value === '' ? 0 : raw.indexOf(value));
  const span = { start: valueStart, end: valueStart + value.length };
  if (raw !== value) {
    const place = raw.trimStart() === raw ? span.end : start;
    faults.push(
      fault(
        'label-space',
        `There is a space beside the value of (${ai}). GS1 data have none: take it out.`,
        place,
        place + 1,
      ),
    );
  }
  const keySpan = { start: start - ai.length - 2, end: start };
  return { ai, element: gs1Element(ai), value: value.replaceAll(/\\([()\\])/g, '$1'), span, keySpan };
}

/** Splits data as a scanner sends it; a separator ends every element whose length is not fixed. */
export function splitScanned(text: string, from: number): Split {
  const elements: SplitElement[] = [];
  const faults: LabelFault[] = [];
  let at = from;
  while (at < text.length) {
    const skipped = separatorAt(text, at);
    if (skipped > 0) {
      at += skipped;
      continue;
    }
    const element = gs1ElementAt(text, at);
    if (!element) {
      faults.push(
        fault(
          'label-identifier-unknown',
          `"${text.slice(at)}" begins with no identifier known on a lens label, so it was not read. Scan the box again, or type the label with brackets.`,
          at,
          text.length,
        ),
      );
      break;
    }
    const start = at + element.ai.length;
    const separator = nextSeparator(text, start);
    const end = element.predefined ? Math.min(start + element.longest, separator) : separator;
    elements.push({
      ai: element.ai,
      element,
      value: text.slice(start, end),
      span: { start, end },
      keySpan: { start: at, end: start },
    });
    at = end;
  }
  return { elements, faults };
}

/** How many characters of a separator stand at a place; 0 when there is none. */
export function separatorAt(text: string, at: number): number {
  return SEPARATORS.find((separator) => text.startsWith(separator, at))?.length ?? 0;
}

function nextSeparator(text: string, from: number): number {
  const places = SEPARATORS.map((separator) => text.indexOf(separator, from)).filter((place) => place >= 0);
  return Math.min(text.length, ...places);
}
