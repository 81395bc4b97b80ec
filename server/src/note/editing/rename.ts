import { identifier } from '@sideport/schemas/notation/plain.ts';
import { replaceValue } from '../edits/replace-value.ts';
import type { NoteReading } from '../reading/note-reading.ts';
import type { Edit } from '../remark.ts';
import { isSameThing, mentionsIn, type Mention } from './mentions.ts';

/** Why a name cannot be used, or undefined when it can. */
export function whyNotName(name: string): string | undefined {
  const reading = identifier.read(name);
  if (!reading.ok) return reading.fault.message;
  return /[\r\n]/u.test(name) ? 'A name stands on one line.' : undefined;
}

/** The edits that give a thing another name throughout one text. */
export function renameIn(reading: NoteReading, thing: Pick<Mention, 'thing' | 'name'>, name: string): readonly Edit[] {
  return mentionsIn(reading)
    .filter((mention) => isSameThing(mention, thing))
    .flatMap(({ span }) => replaceValue(reading, span, name, 'identifier'));
}
