import type { Absence, Guide } from '@sideport/schemas';

const spellings: ReadonlyMap<string, Absence> = new Map(
  Object.entries<Absence>({
    none: 'none',
    nil: 'none',
    'not done': 'not done',
    'not performed': 'not done',
    'not recorded': 'not recorded',
    'not known': 'not recorded',
    'not applicable': 'not applicable',
    'n/a': 'not applicable',
  }),
);
const LONGEST = Math.max(...[...spellings.keys()].map((word) => word.length));

/** Whether a text says why a field has no value, in a word that the field understands. */
export function absenceIn(text: string, guide: Guide): Absence | undefined {
  const trimmed = text.trim();
  // Every value of a note passes here.
  if (trimmed.length > LONGEST) return undefined;
  const word = spellings.get(trimmed.toLowerCase());
  if (word === undefined) return undefined;
  if (word === 'not recorded' || guide.says?.includes(word) === true) return word;
  // A step that does not apply, such as a capsulotomy in an eye without its lens, was not done.
  return word === 'not applicable' && guide.says?.includes('not done') === true ? 'not done' : undefined;
}
