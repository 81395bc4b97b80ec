import type { Plan, Span } from '@sideport/schemas';
import type { NoteReading } from '../reading/note-reading.ts';
import type { ScalarNode } from '../reading/tree.ts';
import { allSpots, type Spot } from './spots.ts';

/** What a piece of the text is, beyond its grammar. */
export const tokenKinds = [
  'field',
  'side',
  'quantity',
  'term',
  'identifier',
  'date',
  'absence',
  'allowance',
  'mark',
] as const;
export type TokenKind = (typeof tokenKinds)[number];

export interface Token {
  readonly span: Span;
  readonly kind: TokenKind;
}

const ABSENCES = new Set(['none', 'not done', 'not recorded', 'not applicable']);
const NUMBERS = /^(?:number|quantity in|keratometry|refraction|visual acuity|acuity|dose|count|ring size)/u;

/** Sides, quantities, terms and allowances of a note, in the order of the text, none across lines. */
export function tokens(reading: NoteReading): readonly Token[] {
  const found: Token[] = [];
  for (const spot of allSpots(reading.tree, reading.kind)) {
    if (spot.key !== null && spot.plan !== undefined) found.push({ span: spot.key, kind: 'field' });
    const kind = spot.node?.kind === 'scalar' ? kindOf(spot, spot.node) : undefined;
    if (kind !== undefined && spot.node !== null) found.push({ span: spot.node.span, kind });
  }
  for (const { text, span } of reading.tree.comments) {
    const mark = /^(?:allow [a-z0-9-]+|confirm\b|proposed\b)/u.exec(text)?.[0];
    if (mark === undefined) continue;
    const start = reading.text.indexOf(mark, span.start);
    found.push({ span: { start, end: start + mark.length }, kind: mark.startsWith('allow') ? 'allowance' : 'mark' });
  }
  return found
    .filter(({ span }) => !reading.text.slice(span.start, span.end).includes('\n'))
    .toSorted((a, b) => a.span.start - b.span.start);
}

function kindOf({ plan }: Spot, node: ScalarNode): TokenKind | undefined {
  const value = plan?.kind === 'list' ? plan.item : plan;
  if (ABSENCES.has(node.text) && !hasTerm(value, node.text)) return 'absence';
  if (value?.kind !== 'value') return undefined;
  const { notation } = value;
  if (notation.name === 'side') return 'side';
  if (notation.words !== undefined) return 'term';
  if (notation.name === 'identifier') return 'identifier';
  if (/date|time/u.test(notation.name)) return 'date';
  return notation.unit !== undefined || NUMBERS.test(notation.name) ? 'quantity' : undefined;
}

function hasTerm(plan: Plan | undefined, text: string): boolean {
  return plan?.kind === 'value' && plan.notation.words?.some(({ word }) => word === text) === true;
}
