import type { Path } from '@sideport/schemas';
import type { NoteReading } from '../../reading/note-reading.ts';
import type { TreeNode } from '../../reading/tree.ts';

/**
 * Whether something stands at a path, readable or not: what the reader could not read, or found under a misspelt name,
 * it has remarked on itself, and it must not be called missing as well.
 */
export function isWritten(reading: NoteReading, path: Path): boolean {
  let node: TreeNode | null | undefined = reading.tree.root;
  for (const [depth, step] of path.entries()) {
    if (node?.kind === 'list') node = typeof step === 'number' ? node.items[step] : null;
    else if (node?.kind === 'map') {
      const entry = node.entries.find(({ key }) => key === step);
      if (entry === undefined) return remarkedOn(reading, path.slice(0, depth + 1));
      node = entry.value;
    }
    // A single value where a section is due, or nothing behind the key: the reader has said so.
    if (node === null || node === undefined || node.kind === 'scalar') return true;
  }
  return true;
}

function remarkedOn({ remarks, text }: NoteReading, path: Path): boolean {
  const name = String(path.at(-1));
  return remarks.some(({ check, fixes, span, path: at }) => {
    if (check === 'unknown-field') return at.length === path.length && fixes[0]?.edits[0]?.text === name;
    if (check !== 'text-not-readable') return false;
    const line = text.slice(text.lastIndexOf('\n', span.start) + 1, span.end);
    return new RegExp(`^[\\s-]*${name}(?![\\w-])`, 'u').test(line);
  });
}

/** Whether the reader could not read something at a path or below it: what is left of it must not be compared. */
export function isPartlyUnread({ remarks }: NoteReading, ...path: Path): boolean {
  return remarks.some((remark) => remark.severity === 'error' && path.every((step, i) => remark.path[i] === step));
}
