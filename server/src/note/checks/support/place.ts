import type { Place, Span } from '@sideport/schemas';
import type { CheckContext } from '../check.ts';
import type { Related } from '../../remark.ts';

/** Another place that a message speaks of; `file` where it stands in another note of the set. */
export function related(message: string, place: Place | Span, file?: string | null): Related {
  const span = 'span' in place ? place.span : place;
  return file === undefined || file === null ? { message, span } : { message, span, file };
}

/** A place in the department file, where the caller can open it. */
export function inDepartment(message: string, place: Place | undefined, { departmentFile }: CheckContext): Related[] {
  if (place === undefined || departmentFile === null) return [];
  return [related(message, place.key ?? place, departmentFile)];
}

/** The heading of a section or the first line of an entry: enough to be seen, without marking everything below. */
export function headOf(place: Place, context: CheckContext): Place {
  if (place.key !== null) return { span: place.key, key: place.key, path: place.path };
  const end = context.reading.text.indexOf('\n', place.span.start);
  return { ...place, span: { start: place.span.start, end: end < 0 ? place.span.end : Math.min(end, place.span.end) } };
}

/** Where a remark about something missing stands: at its section, or else at the status, which makes it due. */
export function placeOfMissing(context: CheckContext, section?: { readonly $: Place }): Place {
  if (section !== undefined) return headOf(section.$, context);
  const { reading } = context;
  const status = reading.kind === null || reading.kind === 'department' ? undefined : reading.note.status;
  if (status !== undefined) return status;
  const first = reading.tree.root?.kind === 'map' ? reading.tree.root.entries[0] : undefined;
  return { span: first?.keySpan ?? { start: 0, end: 1 }, key: null, path: [] };
}
