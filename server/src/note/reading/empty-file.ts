import { formatVersion } from '@sideport/schemas/sections/head.ts';
import type { Remark } from '../remark.ts';

/**
 * What is said of a file with nothing in it. In an editor that is how a note begins; on disk a note was lost, by a full
 * disk or a crash, and must not pass for sound. Its span is empty, because there is no text that it could cover.
 */
export function emptyFile(): Remark {
  return {
    check: 'text-not-readable',
    severity: 'error',
    message: `This file is empty. A note begins with “opnote: ${formatVersion.words[0]?.word ?? '1'}”; was one lost here?`,
    span: { start: 0, end: 0 },
    path: [],
    related: [],
    fixes: [],
  };
}
