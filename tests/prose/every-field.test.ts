import { describe, expect, test } from 'vitest';
import { recordPlan, type Plan, type RecordKind, type ValuePlan } from '@sideport/schemas';
import { proseAsText } from '../../server/src/note/prose/text.ts';
import { proseOf } from '../../server/src/note/prose/prose-of.ts';
import { reviewNote } from '../../server/src/note/review.ts';

interface Written {
  readonly path: string;
  readonly word: string;
}

/** Writes a note that has every field of its kind, each with a value that occurs nowhere else. */
class FullNote {
  readonly lines: string[] = [];
  readonly written: Written[] = [];

  constructor(kind: RecordKind) {
    for (const [key, plan] of recordPlan(kind).fields) this.#head(kind, key, plan);
  }

  #head(kind: RecordKind, key: string, plan: Plan): void {
    const fixed: Readonly<Record<string, string>> = { opnote: '1', record: kind, status: 'final' };
    if (fixed[key] === undefined) this.#field(plan, key, '', key);
    else this.lines.push(`${key}: ${fixed[key]}`);
  }

  #field(plan: Plan, key: string, indent: string, path: string): void {
    if (plan.kind === 'value') this.lines.push(`${indent}${key}: ${this.#value(plan, path)}`);
    else if (plan.kind === 'group') {
      this.lines.push(`${indent}${key}:`);
      for (const [name, field] of plan.fields) this.#field(field, name, `${indent}  `, `${path}.${name}`);
    } else if (plan.item.kind === 'value') this.lines.push(`${indent}${key}: [${this.#value(plan.item, path)}]`);
    else {
      this.lines.push(`${indent}${key}:`);
      const from = this.lines.length;
      for (const [name, field] of plan.item.fields) this.#field(field, name, `${indent}    `, `${path}.${name}`);
      this.lines[from] = `${indent}  - ${(this.lines[from] ?? '').trimStart()}`;
    }
  }

  #value({ notation, guide }: ValuePlan, path: string): string {
    const count = this.written.length;
    const remember = (word: string): string => {
      this.written.push({ path, word });
      return word;
    };
    if (notation.name === 'text') return remember(`zq${count}x`);
    if (notation.name === 'identifier') return remember(`ZQ-${count}`);
    const { unit } = notation;
    if (unit !== undefined && unit !== '' && guide.possible !== undefined) {
      const [least, most] = guide.possible;
      const amount = least + (most - least) * (0.2 + (count % 50) / 100);
      return `${remember(amount.toFixed(most > 200 ? 0 : 2))} ${unit}`;
    }
    return guide.example ?? notation.examples[0] ?? notation.words?.[0]?.word ?? '';
  }
}

describe('nothing recorded is left out of the record in words', () => {
  test.each(['operation', 'follow-up', 'amendment'] as const)('%s', (kind) => {
    const { lines, written } = new FullNote(kind);
    const { reading, computed } = reviewNote(`${lines.join('\n')}\n`, {});
    const read = new Set(
      reading.values.map(({ field }) => field.path.filter((step) => typeof step === 'string').join('.')),
    );
    const told = proseOf(reading, computed, null);
    const prose =
      told !== undefined ? proseAsText(told.document).replaceAll('−', '-').replace(/\s+/gu, ' ').toLowerCase() : '';
    const missing = written
      .filter(({ path, word }) => read.has(path) && !prose.includes(word.toLowerCase()))
      .map(({ path }) => path);
    expect(written.length).toBeGreaterThan(10);
    expect(missing).toEqual([]);
  });
});
