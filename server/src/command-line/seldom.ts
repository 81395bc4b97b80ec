/**
 * The commands that carry most and are started least, and what understands dictations: a bundle of its own, so that
 * the others need not load it. Each is asked for by its own file; the build puts this bundle in their place.
 */
export { audit } from './commands/audit.ts';
export { dictate } from './commands/dictate.ts';
export { explain } from './commands/explain.ts';
export { exportNotes } from './commands/export.ts';
export { show } from './commands/show.ts';
export { newDictation } from '../note/dictation/dictation.ts';
