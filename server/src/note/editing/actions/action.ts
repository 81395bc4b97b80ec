import type { Edit } from '../../remark.ts';
import type { Around } from '../around.ts';

/** Something that can be done where the cursor stands, at the writer's choice. */
export interface Action {
  readonly title: string;
  /** Whether the writer has to look at the result before relying on it. */
  readonly safety: 'safe' | 'needs-review';
  readonly edits: readonly Edit[];
  /** A file that is made beside the note; its name is built from the note's own file name, never from its content. */
  readonly newFile?: { readonly suffix: string; readonly text: string };
}

/** Offers its actions for an offset in the note; none where it has nothing to offer. */
export type ActionSource = (around: Around, offset: number) => readonly Action[];
