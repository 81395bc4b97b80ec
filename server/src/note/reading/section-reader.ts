import { bad, type Reading } from '@sideport/schemas/notation/notation.ts';
import type { Field, GroupPlace, GroupPlan, ListPlan, Place, Plan, Said, ValuePlan } from '@sideport/schemas';
import { replaceValue, replaceWritten } from '../edits/replace-value.ts';
import { yamlQuoted } from '../edits/yaml-text.ts';
import { severityOfUnfinished, type Remark } from '../remark.ts';
import { absenceIn } from './absence.ts';
import type { ReadValue, Status } from './note-reading.ts';
import { insideTypographicQuotes, notUsed, severalValues, textWithColon, type LikelyMeant } from './likely-meant.ts';
import { remarkOnValue } from './value-remarks.ts';
import type { ListNode, MapNode, ScalarNode, Tree, TreeNode } from './tree.ts';
import { unknownField } from './unknown-field.ts';

/** Where the section reader puts what it reads. */
export interface ReaderState {
  readonly text: string;
  readonly tree: Tree;
  readonly status: Status;
  readonly remarks: Remark[];
  readonly values: ReadValue[];
}

type ReadGroup = { readonly $: GroupPlace } & Record<string, unknown>;

/** Reads tree nodes by the plan of the format: every field on its own, so that one fault hides no other. */
export class SectionReader {
  private readonly state: ReaderState;

  constructor(state: ReaderState) {
    this.state = state;
  }

  group(plan: GroupPlan, node: MapNode, place: Place): ReadGroup {
    const said: Record<string, Said> = {};
    const group: Record<string, unknown> = {};
    for (const entry of node.entries) {
      const field = plan.fields.get(entry.key);
      const path = [...place.path, entry.key];
      if (field === undefined) {
        this.state.remarks.push(unknownField(plan, entry, path, node));
        continue;
      }
      if (entry.value === null) {
        this.emptyValue(field, entry.key, { span: entry.keySpan, key: entry.keySpan, path });
        continue;
      }
      const at: Place = { span: entry.value.span, key: entry.keySpan, path };
      const absence = entry.value.kind === 'scalar' ? absenceIn(entry.value.text, field.guide) : undefined;
      if (absence !== undefined) said[entry.key] = { ...at, word: absence };
      else {
        const read = this.node(field, entry.value, at);
        if (read !== undefined) group[entry.key] = read;
      }
    }
    group['$'] = { ...place, said } satisfies GroupPlace;
    return group as ReadGroup;
  }

  private node(plan: Plan, node: TreeNode, place: Place): unknown {
    if (plan.kind === 'value') return this.value(plan, node, place);
    if (plan.kind === 'list') return this.list(plan, node, place);
    if (node.kind === 'map') return this.group(plan, node, place);
    const meant = node.kind === 'scalar' ? notUsed(plan, node, place, this.state) : undefined;
    this.shape(
      'expected-section',
      plan,
      place,
      `“${plan.guide.label}” is a section with fields of its own (${fieldNames(plan)}); found ${described(node)}.`,
      meant,
    );
    return undefined;
  }

  private list(plan: ListPlan, node: TreeNode, place: Place): { items: unknown[]; $: Place } | undefined {
    const nodes = node.kind === 'list' ? node.items : this.single(plan, node, place);
    if (nodes === undefined) return undefined;
    const items: unknown[] = [];
    nodes.forEach((item, index) => {
      if (item === null) {
        this.emptyItem(plan, node as ListNode, index, place);
        return;
      }
      const read = this.node(plan.item, item, {
        span: item.span,
        key: null,
        path: node.kind === 'list' ? [...place.path, index] : place.path,
      });
      if (read !== undefined) items.push(read);
    });
    return { items, $: place };
  }

  /** One value where a list is due counts as a list of one; one section does too, with a remark on its dash. */
  private single(plan: ListPlan, node: TreeNode, place: Place): readonly TreeNode[] | undefined {
    if (node.kind === 'scalar' && plan.item.kind === 'value') {
      const meant = severalValues(plan.item, node, this.state);
      if (meant === undefined) return [node];
      this.shape('expected-list', plan, place, `“${plan.guide.label}” is a list; found ${described(node)}.`, meant);
      return undefined;
    }
    const found = node.kind === 'map' ? 'the fields of one entry without a dash' : described(node);
    this.shape(
      'expected-list',
      plan,
      place,
      `“${plan.guide.label}” is a list: each entry begins with “- ”; found ${found}.`,
    );
    return node.kind === 'map' && plan.item.kind === 'group' ? [node] : undefined;
  }

  private value(plan: ValuePlan, node: TreeNode, place: Place): Field<unknown> | undefined {
    if (node.kind !== 'scalar') {
      const meant = textWithColon(plan, node, this.state.text);
      this.shape(
        'expected-value',
        plan,
        place,
        meant === undefined
          ? `“${plan.guide.label}” has one value, ${plan.notation.expected}; found ${described(node)}.`
          : `“${plan.guide.label}” is a text.`,
        meant,
      );
      return undefined;
    }
    const quoted = plan.guide.prose === true ? undefined : insideTypographicQuotes(node);
    const reading = quoted === undefined ? plan.notation.read(node.text) : typographicQuotes(node.text, quoted);
    if (!reading.ok) {
      const { check, message, suggestion } = reading.fault;
      const isSide = plan.notation.name === 'side';
      const fixes =
        suggestion === undefined || isSide
          ? []
          : [
              {
                title: `Write “${suggestion}”`,
                safety: check === 'decimal-comma' ? ('safe' as const) : ('needs-review' as const),
                edits:
                  quoted === undefined
                    ? replaceValue(this.state, node.span, suggestion)
                    : replaceWritten(this.state.text, node.span, suggestion),
              },
            ];
      this.state.remarks.push({
        check,
        severity: 'error',
        message: `${plan.guide.label}: ${message}`,
        span: node.span,
        path: place.path,
        related: [],
        fixes,
      });
      return undefined;
    }
    const field: Field<unknown> = { value: reading.value, text: node.text, ...place };
    this.state.values.push({ field, style: node.style });
    remarkOnValue(this.state, plan, node, field);
    return field;
  }

  private emptyValue(plan: Plan, key: string, place: Place): void {
    if (this.faultBehind(place.span.end)) return;
    const instead =
      plan.guide.says === undefined
        ? '“not recorded”'
        : `${plan.guide.says.map((word) => `“${word}”`).join(', ')} or “not recorded”`;
    this.state.remarks.push({
      check: 'empty-value',
      severity: severityOfUnfinished(this.state.status),
      message: `“${key}” has nothing behind it. Write the value, or ${instead}.`,
      span: place.span,
      path: place.path,
      related: [],
      fixes: [],
    });
  }

  /** Whether the rest of the line was already remarked on: then its value is not missing but refused. */
  private faultBehind(offset: number): boolean {
    const { text, tree } = this.state;
    const lineEnd = text.indexOf('\n', offset);
    return tree.faults.some(({ span }) => span.start >= offset && (lineEnd < 0 || span.start < lineEnd));
  }

  private emptyItem(plan: ListPlan, node: ListNode, index: number, place: Place): void {
    const before = node.items[index - 1]?.span.end ?? node.span.start;
    const dash = this.state.text.indexOf('-', before);
    const start = dash >= 0 && dash < node.span.end ? dash : node.span.start;
    if (this.faultBehind(start)) return;
    this.state.remarks.push({
      check: 'empty-value',
      severity: severityOfUnfinished(this.state.status),
      message: `An entry of “${plan.guide.label}” is empty. Write it or delete its dash.`,
      span: { start, end: start + 1 },
      path: [...place.path, index],
      related: [],
      fixes: [],
    });
  }

  private shape(check: string, plan: Plan, place: Place, message: string, meant?: LikelyMeant): void {
    const says =
      meant !== undefined
        ? ` ${meant.hint}`
        : plan.guide.says === undefined
          ? ''
          : ` If there was none of it, write ${plan.guide.says.map((word) => `“${word}”`).join(' or ')}.`;
    this.state.remarks.push({
      check,
      severity: 'error',
      message: `${message}${says}`,
      span: place.span,
      path: place.path,
      related: [],
      fixes: meant?.fixes ?? [],
    });
  }
}

function described(node: TreeNode): string {
  if (node.kind === 'scalar') return `“${shortened(node)}”`;
  return node.kind === 'map' ? 'a section' : 'a list';
}

function shortened(node: ScalarNode): string {
  return node.text.length > 40 ? `${node.text.slice(0, 39)}…` : node.text;
}

/** The quotes that a text program puts in place of straight ones belong to the value here. */
function typographicQuotes(text: string, inside: string): Reading<never> {
  const straight = yamlQuoted(inside);
  return bad(
    'unreadable-value',
    `the marks around ${text} are typographic ones, which belong to the value here. Write ${straight}.`,
    straight,
  );
}

function fieldNames(plan: GroupPlan): string {
  return [...plan.fields.keys()].slice(0, 4).join(', ');
}
