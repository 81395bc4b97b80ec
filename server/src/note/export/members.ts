import type { Field, GroupPlace } from '@sideport/schemas';

/** A group of a record as a walk over its plan sees it: fields, lists and groups by key. */
export type Group = Readonly<Record<string, unknown>> & { readonly $: GroupPlace };

export interface List {
  readonly items: readonly unknown[];
}

export const isGroup = (member: unknown): member is Group =>
  typeof member === 'object' && member !== null && '$' in member && !('items' in member);

export const isList = (member: unknown): member is List =>
  typeof member === 'object' && member !== null && 'items' in member && Array.isArray(member.items);

export const isField = (member: unknown): member is Field<unknown> =>
  typeof member === 'object' && member !== null && 'value' in member && 'text' in member;
