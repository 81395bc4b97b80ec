import type { SlotName } from '@sideport/schemas/spoken/phrase.ts';
import { readPattern, type PatternTree } from './pattern.ts';

/** A phrase as it is said: its words, and where its slot is. */
export type SaidStep = { readonly word: string } | { readonly slot: SlotName };

/** The first form of a pattern, with nothing that may be missing. */
export function firstForm(pattern: string): readonly SaidStep[] {
  return formOf(readPattern(pattern));
}

/** The first form of a pattern that holds no slot. */
export function firstWords(pattern: string | undefined): string {
  if (pattern === undefined) return '';
  return firstForm(pattern)
    .flatMap((step) => ('word' in step && step.word !== ',' ? [step.word] : []))
    .join(' ');
}

function formOf(tree: PatternTree): readonly SaidStep[] {
  switch (tree.kind) {
    case 'word':
      return [{ word: tree.word }];
    case 'slot':
      return [{ slot: tree.slot }];
    case 'sequence':
      return tree.parts.flatMap(formOf);
    default:
      return tree.parts.some((part) => part.kind === 'sequence' && part.parts.length === 0)
        ? []
        : formOf(tree.parts[0]!);
  }
}
