import { groups } from '@sideport/schemas/spoken/groups.ts';
import type { SlotName } from '@sideport/schemas/spoken/phrase.ts';

/** A pattern as a tree. */
export type PatternTree =
  | { readonly kind: 'word'; readonly word: string }
  | { readonly kind: 'slot'; readonly slot: SlotName }
  | { readonly kind: 'sequence'; readonly parts: readonly PatternTree[] }
  | { readonly kind: 'either'; readonly parts: readonly PatternTree[] };

/** Reads a pattern of the phrase table. Throws when it is not well formed: then the table is at fault, not the dictation. */
export function readPattern(pattern: string): PatternTree {
  const pieces = pattern.match(/[()[\]|]|\{[a-z]+\}|[^\s()[\]|{}]+/gu) ?? [];
  const reader = { pieces, at: 0, pattern };
  const tree = either(reader);
  if (reader.at < pieces.length) throw new Error(`“${pattern}” closes a group that it did not open`);
  return tree;
}

const groupTrees = new Map<string, PatternTree>();

/** What a name in a pattern stands for. */
function namedGroup(name: string, pattern: string): PatternTree {
  const known = groupTrees.get(name);
  if (known !== undefined) return known;
  const group = groups[name];
  if (group === undefined) throw new Error(`“${pattern}” uses the unknown group $${name}`);
  const tree = readPattern(group);
  groupTrees.set(name, tree);
  return tree;
}

interface Reader {
  readonly pieces: readonly string[];
  at: number;
  readonly pattern: string;
}

function either(reader: Reader): PatternTree {
  const parts = [sequence(reader)];
  while (reader.pieces[reader.at] === '|') {
    reader.at += 1;
    parts.push(sequence(reader));
  }
  return parts.length === 1 ? parts[0]! : { kind: 'either', parts };
}

function sequence(reader: Reader): PatternTree {
  const parts: PatternTree[] = [];
  for (;;) {
    const piece = reader.pieces[reader.at];
    if (piece === undefined || piece === '|' || piece === ')' || piece === ']') return { kind: 'sequence', parts };
    reader.at += 1;
    if (piece.startsWith('$')) parts.push(namedGroup(piece.slice(1), reader.pattern));
    else parts.push(piece === '(' || piece === '[' ? group(reader, piece) : step(piece));
  }
}

function group(reader: Reader, open: string): PatternTree {
  const inside = either(reader);
  if (reader.pieces[reader.at] !== (open === '(' ? ')' : ']'))
    throw new Error(`“${reader.pattern}” has a group that is not closed`);
  reader.at += 1;
  return open === '[' ? { kind: 'either', parts: [inside, { kind: 'sequence', parts: [] }] } : inside;
}

function step(piece: string): PatternTree {
  if (piece.startsWith('{')) return { kind: 'slot', slot: piece.slice(1, -1) as SlotName };
  const words = piece.split('+').filter((word) => word !== '');
  if (words.length < 2) return { kind: 'word', word: piece };
  const apart: PatternTree = { kind: 'sequence', parts: words.map((word) => ({ kind: 'word', word })) };
  return { kind: 'either', parts: [apart, { kind: 'word', word: words.join('') }] };
}
