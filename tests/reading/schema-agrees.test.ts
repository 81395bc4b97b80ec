import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { recordPlan } from '@sideport/schemas';
import { schemaOf } from '@sideport/schemas/fields/schema.ts';
import { readNote } from '../../server/src/note/reading/read-note.ts';
import type { TreeNode } from '../../server/src/note/reading/tree.ts';

const files = readdirSync('samples/sound', { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => [name] as const);

/** The tree as plain data for the schema: every scalar as typed; a field that says why it has no value is left out. */
function plain(node: TreeNode): unknown {
  if (node.kind === 'scalar') return node.text;
  if (node.kind === 'list') return node.items.map((item) => (item === null ? null : plain(item)));
  const entries = node.entries.filter(({ value }) => value !== null);
  return Object.fromEntries(entries.map(({ key, value }) => [key, value === null ? null : plain(value)]));
}

/** The typed note without its places: what the schema delivers for the same text. */
function withoutPlaces(note: unknown): unknown {
  if (typeof note !== 'object' || note === null) return note;
  if ('text' in note && 'value' in note) return { leaf: true, value: note.value, text: note.text };
  if ('items' in note && Array.isArray(note.items)) return note.items.map(withoutPlaces);
  return Object.fromEntries(
    Object.entries(note)
      .filter(([key]) => key !== '$')
      .map(([key, value]) => [key, withoutPlaces(value)]),
  );
}

function withoutSaid(data: unknown, note: unknown): unknown {
  if (Array.isArray(data)) {
    const items = (note as { items: unknown[] }).items;
    return data.map((item, index) => withoutSaid(item, items[index]));
  }
  if (typeof data !== 'object' || data === null) return data;
  const group = note as Record<string, unknown> & { $: { said: Record<string, unknown> } };
  return Object.fromEntries(
    Object.entries(data)
      .filter(([key]) => !(key in group.$.said))
      .map(([key, value]) => [key, withoutSaid(value, group[key])]),
  );
}

test.each(files)('%s: the schema parses what the reader reads, with equal values', (file) => {
  const text = readFileSync(`samples/sound/${file}`, 'utf8');
  const reading = readNote(text, file.endsWith('sideport.yaml') ? 'department' : undefined);
  expect(reading.tree.root).not.toBeNull();
  if (reading.kind === null || reading.tree.root === null) return;
  const parsed = schemaOf(recordPlan(reading.kind)).safeParse(withoutSaid(plain(reading.tree.root), reading.note));
  expect(parsed.error?.issues).toBeUndefined();
  expect(parsed.data).toEqual(withoutPlaces(reading.note));
});
