import { inventCase, type InventedCase } from './case.ts';
import { DEPARTMENT } from './department.ts';
import { SeededRandom } from './random.ts';
import { followUpNote, operationNote } from './write-notes.ts';

export interface YearFile {
  readonly file: string;
  readonly text: string;
}

export interface YearOptions {
  readonly operations?: number;
  readonly seed?: number;
}

const DRAFTS_EVERY = 100;
const LOST_LINKS_EVERY = 400;

/**
 * An invented year of a department with three surgeons: its department file, operations and follow-ups, one at a
 * time. One note in a hundred was never finished, one follow-up in four hundred names no operation.
 */
export function* makeYear({ operations = 2000, seed = 20_310_101 }: YearOptions = {}): Generator<YearFile> {
  const random = new SeededRandom(seed);
  yield { file: 'sideport.yaml', text: DEPARTMENT };
  for (let index = 0; index < operations; index += 1) {
    const one: InventedCase = inventCase(index, operations, random);
    const isDraft = index % DRAFTS_EVERY === DRAFTS_EVERY - 1;
    const folder = one.date.slice(0, 7);
    yield { file: `${folder}/${one.id}.opnote.yaml`, text: operationNote(one, isDraft ? 'draft' : 'final', random) };
    if (one.visitDays === null) continue;
    const text = followUpNote(one, one.visitDays, random);
    const isLost = index % LOST_LINKS_EVERY === LOST_LINKS_EVERY - 1;
    yield {
      file: `${folder}/FU-${one.id.slice(3)}.opnote.yaml`,
      text: isLost ? text.replace(`operation: ${one.id}`, 'operation: OP-0000-00000') : text,
    };
  }
}
