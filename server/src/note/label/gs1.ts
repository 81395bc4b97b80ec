import { judgeValue } from './gs1-judge.ts';
import { splitBracketed, splitScanned, type SplitElement } from './gs1-split.ts';
import { bareTradeNumber, noDeviceNumber } from './gs1-device-number.ts';
import { judgeTogether, separatorWarnings } from './gs1-together.ts';
import type { LabelFault, LabelPart, LabelReading } from './reading.ts';

/**
 * Reads a GS1 element string: typed with brackets, or as a scanner sends it.
 * Source: GS1 General Specifications; GS1 Barcode Syntax Dictionary and its reference checks.
 * @param text the label, without a symbology identifier before `from`
 * @param from where the element string starts
 * @param year the year that two-digit years are counted from
 */
export function readGs1(text: string, from: number, year: number): LabelReading {
  const bracketed = text.startsWith('(', from);
  const bare = bareTradeNumber(text, from);
  if (bare !== undefined) return { standard: 'gs1', form: 'scanned', parts: [], faults: [bare] };
  const split = bracketed ? splitBracketed(text, from) : splitScanned(text, from);
  const faults: LabelFault[] = [...split.faults];
  const parts = split.elements.map((found) => part(found, year, faults));
  faults.push(...judgeTogether(split.elements));
  if (!bracketed) faults.push(...separatorWarnings(split.elements, year));
  const missing = faults.length === 0 ? noDeviceNumber(split.elements) : undefined;
  if (missing !== undefined) faults.push(missing);
  return { standard: 'gs1', form: bracketed ? 'bracketed' : 'scanned', parts, faults };
}

function part(found: SplitElement, year: number, faults: LabelFault[]): LabelPart {
  const base = { key: found.ai, value: found.value, span: found.span };
  if (!found.element) {
    faults.push({
      fault: 'label-identifier-unknown',
      severity: 'error',
      message: `(${found.ai}) is no identifier known on a lens label. Compare it with the box.`,
      span: found.keySpan,
    });
    return { ...base, kind: 'other', title: 'unknown part' };
  }
  const judged = judgeValue(found, found.element, year);
  faults.push(...judged.faults);
  return {
    ...base,
    kind: found.element.kind,
    title: found.element.title,
    ...(judged.date === undefined ? {} : { date: judged.date }),
  };
}

/** The element string with brackets, as it is printed beside the symbol. */
export function gs1Bracketed(parts: readonly LabelPart[]): string {
  return parts.map((each) => `(${each.key})${each.value.replaceAll(/[\\()]/g, '\\$&')}`).join('');
}
