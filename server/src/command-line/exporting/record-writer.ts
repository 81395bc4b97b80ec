import type { Leaving } from '../../note/export/leaving.ts';
import type { FileWriter, World } from '../world.ts';

/** One record on its way out. */
export interface LeavingRecord {
  /** Its file, as reports name it. */
  readonly file: string;
  readonly leaving: Leaving;
  /** How many places of the note could not be read. */
  readonly unread: number;
}

/** Takes records one by one, so that their number does not count. */
export interface RecordWriter {
  /** Records of their own, rows of tables that are joined by ids, or one document for each operation. */
  readonly form: 'records' | 'tables' | 'documents';
  /** Asked once for each record before anything is made of it: whether it has no place in this form. */
  leavesOut?(kind: Leaving['kind']): boolean;
  add(record: LeavingRecord): void;
  finish(): void;
  /** Sentences for the person who exports: what was written, and what has no place in this form. */
  readonly remarks: readonly string[];
  /** Sentences about records that this form cannot take. */
  readonly problems?: readonly string[];
}

/** Standard output as a file that is never closed. */
export function standardOutput({ stdout }: World): FileWriter {
  return { write: (data) => stdout.write(data), close: () => undefined };
}
