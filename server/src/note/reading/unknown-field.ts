import { fieldsBelow, nearest, recordPlan, type GroupPlan, type Path } from '@sideport/schemas';
import { sameNumbers } from '@sideport/schemas/notation/likely-term.ts';
import type { Remark } from '../remark.ts';
import { article, kindsWith } from './record-kind.ts';
import type { MapEntry, MapNode } from './tree.ts';

/** A field that its section does not have: the near miss, or where a field of that name belongs. */
export function unknownField(plan: GroupPlan, entry: MapEntry, path: Path, among: MapNode): Remark {
  const names = [...plan.fields.keys()];
  const folded = entry.key.toLowerCase().replace(/[_ ]/gu, '-');
  const alike = names.filter((name) => sameNumbers(name, folded));
  const ofOther = path.length > 1 ? [] : kindsWith(entry.key);
  const near = ofOther.length > 0 ? undefined : names.includes(folded) ? folded : nearest(folded, alike);
  const elsewhere = near === undefined && ofOther.length === 0 ? homes(entry.key) : [];
  const hint =
    near !== undefined
      ? ` Did you mean “${near}”?`
      : ofOther.length > 0
        ? ` It is a field of ${ofOther.map(article).join(' or ')}.`
        : elsewhere.length > 0
          ? ` It belongs in ${elsewhere.slice(0, 3).join(' or ')}.`
          : ` Known here: ${names.length > 14 ? `${names.slice(0, 14).join(', ')}, …` : names.join(', ')}.`;
  return {
    check: 'unknown-field',
    severity: 'error',
    message: `“${entry.key}” is no field of ${path.length > 1 ? `“${plan.guide.label}”` : 'this record'}.${hint}`,
    span: entry.keySpan,
    path,
    related: [],
    fixes:
      near === undefined || among.entries.some(({ key }) => key === near)
        ? []
        : [{ title: `Rename to “${near}”`, safety: 'needs-review', edits: [{ span: entry.keySpan, text: near }] }],
  };
}

function homes(key: string): string[] {
  const found: string[] = [];
  for (const { path } of fieldsBelow(recordPlan('operation'))) {
    if (path.at(-1) === key) found.push(path.length > 1 ? `“${path.slice(0, -1).join('.')}”` : 'the top level');
  }
  return found;
}
