import type { Span } from '@sideport/schemas';
import { planOfValue, type NoteReading, type ReadValue } from '../../../server/src/note/reading/note-reading.ts';
import type { TreeNode } from '../../../server/src/note/reading/tree.ts';

/** A note that a slip is to be made in. */
export interface Subject {
  readonly text: string;
  readonly reading: NoteReading;
}

export function replaced({ text }: Subject, span: Span, by: string): string {
  return text.slice(0, span.start) + by + text.slice(span.end);
}

function pathOf({ field }: ReadValue): string {
  return field.path.filter((step) => typeof step === 'string').join('.');
}

/** The values at paths, list positions left out; all values without paths. */
export function valuesAt({ reading }: Subject, ...paths: readonly string[]): ReadValue[] {
  return reading.values.filter((value) => paths.length === 0 || paths.includes(pathOf(value)));
}

export function notationOf({ reading }: Subject, value: ReadValue) {
  return planOfValue(reading, value)?.notation;
}

export interface Entry {
  readonly path: string;
  readonly key: string;
  readonly keySpan: Span;
  readonly value: TreeNode | null;
  /** The whole lines of the field. */
  readonly lines: Span;
}

/** Every field of a note outside lists, with its lines. */
export function entriesOf({ reading, text }: Subject): Entry[] {
  const entries: Entry[] = [];
  const visit = (node: TreeNode | null, path: string): void => {
    if (node?.kind !== 'map') return;
    for (const { key, keySpan, value } of node.entries) {
      const here = path === '' ? key : `${path}.${key}`;
      const start = text.lastIndexOf('\n', keySpan.start) + 1;
      const end = text.indexOf('\n', (value?.span.end ?? keySpan.end) - 1) + 1;
      if (text.slice(start, keySpan.start).trim() === '')
        entries.push({ path: here, key, keySpan, value, lines: { start, end } });
      visit(value, here);
    }
  };
  visit(reading.tree.root, '');
  return entries;
}
