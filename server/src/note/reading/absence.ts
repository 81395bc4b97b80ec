import type { Absence, Guide } from '@sideport/schemas';

const spellings: Readonly<Record<string, Absence>> = {
  none: 'none',
  nil: 'none',
  'not done': 'not done',
  'not performed': 'not done',
  'not recorded': 'not recorded',
  'not known': 'not recorded',
  'not applicable': 'not applicable',
  'n/a': 'not applicable',
};

/** Whether a text says why a field has no value, in a word that the field understands. */
export function absenceIn(text: string, guide: Guide): Absence | undefined {
  const word = spellings[text.trim().toLowerCase()];
  if (word === undefined) return undefined;
  return word === 'not recorded' || guide.says?.includes(word) === true ? word : undefined;
}
