import type { Field, Keratometry, Quantity, ValuePlan } from '@sideport/schemas';
import { replaceWritten } from '../edits/replace-value.ts';
import { yamlQuoted } from '../edits/yaml-text.ts';
import type { Remark } from '../remark.ts';
import type { ReaderState } from './section-reader.ts';
import type { ScalarNode } from './tree.ts';

/** Remarks on what one value gives cause to by itself, once it was understood. */
export function remarkOnValue(state: ReaderState, plan: ValuePlan, node: ScalarNode, field: Field<unknown>): void {
  const amount = amountOf(field.value);
  const possible = plan.guide.possible;
  if (amount !== undefined && possible !== undefined && (amount < possible[0] || amount > possible[1])) {
    const unit = plan.notation.unit === undefined || plan.notation.unit === '' ? '' : ` ${plan.notation.unit}`;
    state.remarks.push(
      remark(
        'impossible-value',
        'error',
        `${plan.guide.label}: ${field.text}${inOwnUnit(field.value, amount)} is outside what is possible, ${possible[0]} to ${possible[1]}${unit}. Was another sign, unit or field meant?`,
        field,
      ),
    );
  }
  if (node.style !== 'plain') return;
  if (plan.notation.name === 'identifier' && changedByOthers(node.text)) {
    state.remarks.push({
      ...remark(
        'identifier-without-quotes',
        'warning',
        `${plan.guide.label}: other programs read ${node.text} as the number ${Number(node.text)}. Put it in quotes: "${node.text}".`,
        field,
      ),
      fixes: [
        {
          title: `Put "${node.text}" in quotes`,
          safety: 'safe',
          edits: replaceWritten(state.text, node.span, yamlQuoted(node.text)),
        },
      ],
    });
  }
  if (plan.guide.prose === true || plan.notation.name === 'identifier') {
    const cut = cutBehind(state, node);
    if (cut !== undefined) {
      state.remarks.push(
        remark(
          'text-cut-by-hash',
          'warning',
          `${plan.guide.label}: the text ends before “${cut}”, because “ #” begins a comment. If it belongs to the text, put the whole text in quotes.`,
          field,
        ),
      );
    }
  }
}

/** The number that stands for a value in range checks, in the field's own unit. */
export function amountOf(value: unknown): number | undefined {
  if (typeof value !== 'object' || value === null || !('amount' in value)) return undefined;
  const quantity = value as Quantity | Keratometry;
  if (typeof quantity.amount !== 'number') return undefined;
  return 'meridian' in quantity && quantity.unit === 'mm' ? 337.5 / quantity.amount : quantity.amount;
}

/** A radius of the cornea is held against limits in dioptres; both are said. */
function inOwnUnit(value: unknown, amount: number): string {
  const isRadius =
    typeof value === 'object' && value !== null && 'meridian' in value && (value as Keratometry).unit === 'mm';
  return isRadius ? ` (${amount.toFixed(2)} D)` : '';
}

/** Plain digits that other readers of YAML turn into another number: leading zeros, hexadecimal, exponents. */
function changedByOthers(text: string): boolean {
  if (/^[+-]?\d+$/u.test(text)) return /^[+-]?0\d/u.test(text) || text.startsWith('+') || text.length > 15;
  return (
    /^0x[\da-f]+$/iu.test(text) || /^0o[0-7]+$/u.test(text) || /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/iu.test(text)
  );
}

const MARKS = /^(?:allow |confirm|proposed|dictated)/u;

function cutBehind(state: ReaderState, node: ScalarNode): string | undefined {
  const comment = state.tree.comments.find((candidate) => candidate.span.start >= node.span.end);
  if (comment === undefined || MARKS.test(comment.text)) return undefined;
  return /^[ \t]*$/u.test(state.text.slice(node.span.end, comment.span.start))
    ? state.text.slice(comment.span.start, comment.span.end)
    : undefined;
}

function remark(check: string, severity: Remark['severity'], message: string, field: Field<unknown>): Remark {
  return { check, severity, message, span: field.span, path: field.path, related: [], fixes: [] };
}
