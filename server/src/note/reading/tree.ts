import type { Span } from '@sideport/schemas';

/** The text of a note as a tree, before anything is known about fields. Every scalar is text, exactly as typed. */
export type TreeNode = ScalarNode | MapNode | ListNode;

export interface ScalarNode {
  readonly kind: 'scalar';
  readonly text: string;
  readonly style: 'plain' | 'single' | 'double' | 'literal' | 'folded';
  /** Quotes and block marks included. */
  readonly span: Span;
}

export interface MapNode {
  readonly kind: 'map';
  readonly entries: readonly MapEntry[];
  readonly span: Span;
}

export interface MapEntry {
  readonly key: string;
  readonly keySpan: Span;
  /** null where nothing is written behind the key. */
  readonly value: TreeNode | null;
}

export interface ListNode {
  readonly kind: 'list';
  readonly items: readonly (TreeNode | null)[];
  readonly span: Span;
}

/** A comment, from its # to the end of the line. */
export interface Comment {
  readonly text: string;
  readonly span: Span;
}

/** Something in the writing itself that cannot be read or is refused. */
export interface TreeFault {
  readonly check: string;
  readonly message: string;
  readonly span: Span;
}

export interface Tree {
  readonly root: TreeNode | null;
  readonly comments: readonly Comment[];
  readonly faults: readonly TreeFault[];
}
