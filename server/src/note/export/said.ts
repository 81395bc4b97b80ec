import type { GroupPlan } from '@sideport/schemas';
import { isGroup, isList, type Group } from './members.ts';

/** Every field that says why it has no value, as `path: word`, in the order of the format. */
export function saidIn(group: Group, plan: GroupPlan, path = ''): readonly string[] {
  const found: string[] = [];
  for (const [key, field] of plan.fields) {
    const place = path === '' ? key : `${path}.${key}`;
    const word = group.$.said[key]?.word;
    if (word !== undefined) found.push(`${place}: ${word}`);
    const member = group[key];
    if (field.kind === 'group' && isGroup(member)) found.push(...saidIn(member, field, place));
    if (field.kind === 'list' && field.item.kind === 'group' && isList(member)) {
      for (const [index, item] of member.items.entries()) {
        if (isGroup(item)) found.push(...saidIn(item, field.item, `${place}[${index}]`));
      }
    }
  }
  return found;
}
