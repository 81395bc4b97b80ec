import { recordPlan, type RecordKind } from '@sideport/schemas';
import { statuses } from '@sideport/schemas/vocabulary/head.ts';
import { formatVersion } from '@sideport/schemas/sections/head.ts';
import type { Remark } from '../remark.ts';
import type { NoteReading, ReadValue, Status } from './note-reading.ts';
import { readTree } from './read-tree.ts';
import { recordKindOf } from './record-kind.ts';
import { SectionReader } from './section-reader.ts';
import type { MapNode, Tree } from './tree.ts';

/** A note of more characters than this is not read: no operative note comes near it. */
export const LARGEST_NOTE = 1_000_000;

/**
 * Reads a note (or, with `kind` department, a department file). Never throws: what cannot be read becomes a remark
 * and hides nothing about the rest. With `only`, the other sections at the top of the note are passed over.
 */
export function readNote(text: string, kind?: 'department', only?: ReadonlySet<string>): NoteReading {
  if (text.length > LARGEST_NOTE) return tooLarge(text);
  const tree = readTree(text);
  const remarks: Remark[] = tree.faults.map((fault) => ({
    ...fault,
    severity: 'error',
    path: [],
    related: [],
    fixes: [],
  }));
  if (tree.root?.kind !== 'map') return empty(text, tree, remarks);
  const status = statusOf(tree.root);
  const record: RecordKind = kind ?? recordKindOf(tree.root, { text, tree }, remarks);
  const values: ReadValue[] = [];
  const reader = new SectionReader({ text, tree, status, remarks, values });
  const root =
    only === undefined ? tree.root : { ...tree.root, entries: tree.root.entries.filter(({ key }) => only.has(key)) };
  const note = reader.group(recordPlan(record), root, { span: tree.root.span, key: null, path: [] });
  return { text, tree, remarks, values, status, kind: record, note };
}

function statusOf(root: MapNode): Status {
  const written = scalarAt(root, 'status');
  const reading = written === undefined ? undefined : statuses.read(written.text);
  return reading?.ok === true ? reading.value : 'draft';
}

function scalarAt(root: MapNode, key: string) {
  const value = root.entries.find((entry) => entry.key === key)?.value;
  return value?.kind === 'scalar' ? value : undefined;
}

function empty(text: string, tree: Tree, remarks: Remark[]): NoteReading {
  if (remarks.length === 0 && text.length > 0) {
    remarks.push(
      whole(
        text,
        'text-not-readable',
        `This file holds no note. A note begins with “opnote: ${formatVersion.words[0]?.word ?? '1'}”.`,
      ),
    );
  }
  return { text, tree, remarks, values: [], status: 'draft', kind: null, note: null };
}

function tooLarge(text: string): NoteReading {
  const message = `This file has ${text.length} characters; a note has at most ${LARGEST_NOTE}. It was not read.`;
  const tree: Tree = { root: null, comments: [], faults: [] };
  return {
    text,
    tree,
    remarks: [whole(text, 'note-too-large', message)],
    values: [],
    status: 'draft',
    kind: null,
    note: null,
  };
}

function whole(text: string, check: string, message: string): Remark {
  return {
    check,
    severity: 'error',
    message,
    span: { start: 0, end: Math.min(1, text.length) },
    path: [],
    related: [],
    fixes: [],
  };
}
