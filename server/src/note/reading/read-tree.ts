import { readPlainTree } from './plain-tree.ts';
import type { Tree } from './tree.ts';
import { readYamlTree } from './yaml-tree.ts';

/**
 * Reads a text as a tree: the one way in for everything that knows fields. Never throws. Spans are UTF-16 offsets into
 * `text`.
 */
export function readTree(text: string): Tree {
  return readPlainTree(text) ?? readYamlTree(text);
}
