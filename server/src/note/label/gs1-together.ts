import type { SplitElement } from './gs1-split.ts';
import { gs1ElementAt } from './gs1-table.ts';
import { fullYear, labelDate } from './label-dates.ts';
import type { LabelFault } from './reading.ts';

/** What is wrong with the elements as a whole: companions missing, exclusions, repeats. */
export function judgeTogether(elements: readonly SplitElement[]): readonly LabelFault[] {
  const present = new Map<string, string>();
  const faults: LabelFault[] = [];
  const add = (found: SplitElement, fault: LabelFault['fault'], message: string): void => {
    faults.push({ fault, severity: 'error', message, span: wide(found) });
  };
  for (const found of elements) {
    const before = present.get(found.ai);
    if (before !== undefined && before !== found.value) {
      add(
        found,
        'label-part-repeated',
        `(${found.ai}) stands twice with different values: ${before} and ${found.value}.`,
      );
    }
    present.set(found.ai, found.value);
  }
  for (const found of elements) {
    if (!found.element) continue;
    for (const group of found.element.needs) {
      if (group.some((ai) => present.has(ai))) continue;
      const wanted = group.includes('01') ? 'the device number (01)' : group.map((ai) => `(${ai})`).join(' or ');
      add(
        found,
        'label-part-needs-another',
        `The ${found.element.title} (${found.ai}) means nothing without ${wanted}, and the label has none.`,
      );
    }
    for (const other of found.element.excludes) {
      if (present.has(other)) {
        add(found, 'label-parts-exclude-each-other', `(${found.ai}) and (${other}) may not stand on the same label.`);
      }
    }
  }
  return faults;
}

/**
 * A lost separator is legal and silent: the lot then swallows what follows it. This warns when a lot or
 * serial number of scanned data ends in something that reads as further parts.
 */
export function separatorWarnings(elements: readonly SplitElement[], year: number): readonly LabelFault[] {
  const warnings: LabelFault[] = [];
  for (const found of elements) {
    if (found.ai !== '10' && found.ai !== '21') continue;
    const tail = swallowedTail(found.value, elements, year);
    if (!tail) continue;
    const name = found.ai === '10' ? 'lot' : 'serial number';
    warnings.push({
      fault: 'label-separator-probably-missing',
      severity: 'warning',
      message: `The ${name} ${found.value} may have swallowed what follows it: its end, ${tail.text}, reads as ${tail.reads}. A separator may have been lost in scanning; compare the ${name} with the box.`,
      span: wide(found),
    });
  }
  return warnings;
}

interface Tail {
  readonly text: string;
  readonly reads: string;
}

function swallowedTail(value: string, elements: readonly SplitElement[], year: number): Tail | undefined {
  const present = new Set(elements.map((element) => element.ai));
  for (let at = 1; at < value.length; at++) {
    const reads = readsAs(value, at, present, year);
    if (reads) return { text: value.slice(at), reads };
  }
  return undefined;
}

/** What the text from a place on reads as, if it reads as parts to its very end. */
function readsAs(value: string, at: number, present: ReadonlySet<string>, year: number): string | undefined {
  const element = gs1ElementAt(value, at);
  if (!element || present.has(element.ai)) return undefined;
  const rest = value.slice(at + element.ai.length);
  if (element.ai === '10' || element.ai === '21') {
    // Two digits alone are common inside a lot number; they are suspicious only with a number of some length behind.
    return rest.length >= 4 ? `${element.title} (${element.ai}) ${rest}` : undefined;
  }
  if (!element.date || !/^\d{6}/.test(rest)) return undefined;
  const date = labelDate(fullYear(Number(rest.slice(0, 2)), year), Number(rest.slice(2, 4)), Number(rest.slice(4, 6)));
  if (!('date' in date) || Math.abs(Number(date.date.slice(0, 4)) - year) > 15) return undefined;
  const reads = `${element.title} (${element.ai}) ${date.date}`;
  const next = at + element.ai.length + 6;
  if (next === value.length) return reads;
  const more = readsAs(value, next, new Set([...present, element.ai]), year);
  return more && `${reads}, ${more}`;
}

const wide = ({ span, keySpan }: SplitElement): LabelFault['span'] => (span.end > span.start ? span : keySpan);
