import { planAt, recordPlan, type Path, type ValuePlan } from '@sideport/schemas';
import type { NoteReading } from '../reading/note-reading.ts';
import type { MapNode, TreeNode } from '../reading/tree.ts';

/** What the note says already, as a dictation looks at it. A missing note says nothing. */
export class NoteView {
  readonly #root: TreeNode | null;

  constructor(reading: NoteReading | undefined) {
    this.#root = reading?.tree.root ?? null;
  }

  /** The text of the value at a path, as typed; undefined where there is none. */
  text(path: Path): string | undefined {
    const node = this.#node(path);
    return node?.kind === 'scalar' ? node.text : undefined;
  }

  /** Whether nothing is written at a path, and nothing above it says that there is none. */
  isFree(path: Path): boolean {
    return this.#node(path) === undefined && this.blocking(path) === undefined;
  }

  /** A value written where a path would need a section or a list: "none", where an entry was to be added. */
  blocking(path: Path): string | undefined {
    for (let length = path.length - 1; length > 0; length -= 1) {
      const node = this.#node(path.slice(0, length));
      if (node?.kind === 'scalar') return node.text;
    }
    return undefined;
  }

  /** The entries of a list; one entry written without a dash counts as a list of one. */
  entries(path: Path): readonly (TreeNode | null)[] {
    const node = this.#node(path);
    if (node?.kind === 'list') return node.items;
    return node?.kind === 'map' ? [node] : [];
  }

  /** The position of the first entry of a list that is what is looked for, from a position on. */
  entryLike(path: Path, identity: Readonly<Record<string, string>>, from = 0): number | undefined {
    const found = this.entries(path).findIndex(
      (node, at) => at >= from && node?.kind === 'map' && isLike(node, identity),
    );
    return found < 0 ? undefined : found;
  }

  /** The position of the first entry of a list that has no value for a key. */
  entryWithout(path: Path, key: string): number | undefined {
    const found = this.entries(path).findIndex(
      (node) => node?.kind === 'map' && node.entries.every((entry) => entry.key !== key),
    );
    return found < 0 ? undefined : found;
  }

  #node(path: Path): TreeNode | undefined {
    let node: TreeNode | null | undefined = this.#root;
    for (const step of path) {
      if (typeof step === 'number') node = node?.kind === 'list' ? node.items[step] : step === 0 ? node : undefined;
      else node = node?.kind === 'map' ? node.entries.find(({ key }) => key === step)?.value : undefined;
    }
    return node ?? undefined;
  }
}

/** Whether an entry has every value of an identity; a drug may be written with its strength behind it. */
function isLike(node: MapNode, identity: Readonly<Record<string, string>>): boolean {
  return Object.entries(identity).every(([key, wanted]) => {
    const value = node.entries.find((entry) => entry.key === key)?.value;
    if (value?.kind !== 'scalar') return false;
    const text = value.text.trim().toLowerCase();
    return text === wanted.toLowerCase() || (key === 'drug' && text.startsWith(`${wanted.toLowerCase()} `));
  });
}

const operation = recordPlan('operation');

/** What the format knows of the value at a path of an operation, or undefined. */
export function valuePlanAt(path: Path): ValuePlan | undefined {
  const plan = planAt(operation, path);
  const value = plan?.kind === 'list' ? plan.item : plan;
  return value?.kind === 'value' ? value : undefined;
}

/** Whether two texts mean the same value at a path. */
export function sameMeaning(path: Path, a: string, b: string): boolean {
  const notation = valuePlanAt(path)?.notation;
  const [first, second] = [notation?.read(a), notation?.read(b)];
  if (first?.ok !== true || second?.ok !== true) return a.trim().toLowerCase() === b.trim().toLowerCase();
  return meaning(first.value) === meaning(second.value);
}

/** What a value means, without how it was typed. */
export function meaning(value: unknown): string {
  return JSON.stringify(value, (key, part: unknown) => (key === 'typed' || key === 'typedUnit' ? undefined : part));
}
