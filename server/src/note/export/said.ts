import type { GroupPlan } from '@sideport/schemas';
import { isGroup, isList, type Group } from './members.ts';

/** Every field that says why it has no value, as `path: word`, in the order of the format. */
export function saidIn(group: Group, plan: GroupPlan): readonly string[] {
  const found: string[] = [];
  gather(group, plan, '', found);
  return found;
}

function gather(group: Group, plan: GroupPlan, before: string, found: string[]): void {
  for (const [key, field] of plan.fields) {
    const word = group.$.said[key]?.word;
    if (word !== undefined) found.push(`${before}${key}: ${word}`);
    const member = group[key];
    if (field.kind === 'group' && isGroup(member)) gather(member, field, `${before}${key}.`, found);
    if (field.kind === 'list' && field.item.kind === 'group' && isList(member)) {
      for (const [index, item] of member.items.entries()) {
        if (isGroup(item)) gather(item, field.item, `${before}${key}[${index}].`, found);
      }
    }
  }
}
