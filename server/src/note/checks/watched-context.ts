import type { CheckContext } from './check.ts';

/** What the caller may not know, or not yet: other notes that are still being read, a note that has no file so far. */
const MAY_BE_MISSING = ['set', 'operation', 'amended', 'file', 'today', 'dictation', 'department'] as const;

/**
 * The same context, which tells when a check asks for what is not there: it then said nothing for want of it, and not
 * because it found nothing. Without a set it is not known either whether there is a department file or an operation.
 */
export function watchedContext(context: CheckContext, onMissing: () => void): CheckContext {
  const missing = MAY_BE_MISSING.filter((name) => context[name] === null && isUnknown(name, context));
  if (missing.length === 0) return context;
  const watched = { ...context };
  for (const name of missing) {
    Object.defineProperty(watched, name, {
      enumerable: true,
      get: () => {
        onMissing();
        return null;
      },
    });
  }
  return watched;
}

function isUnknown(name: (typeof MAY_BE_MISSING)[number], { set, reading }: CheckContext): boolean {
  if (name === 'department' || name === 'operation' || name === 'amended') return set === null;
  // Nothing is said of a dictation in a note that has none.
  return name !== 'dictation' || (reading.kind === 'operation' && reading.note.dictation !== undefined);
}
