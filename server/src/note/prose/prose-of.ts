import type { Amendment, FollowUp, Operation } from '@sideport/schemas';
import type { ComputedNote } from '../computing/computed.ts';
import { drawAstigmatism } from '../picture/double-angle.ts';
import { drawEye } from '../picture/eye-picture.ts';
import { astigmatismOf, sceneOf } from '../picture/scene-of-note.ts';
import type { NoteReading } from '../reading/note-reading.ts';
import { amendmentsOf } from '../set/amendments-of.ts';
import type { NoteSet } from '../set/note-set.ts';
import { amendmentProse } from './amendment-prose.ts';
import type { ProseDocument } from './document.ts';
import { followUpProse } from './follow-up-prose.ts';
import type { PagePicture } from './html.ts';
import { operationProse } from './operation-prose.ts';

/** A note in words, with the pictures that belong to it; undefined for a text that is no note. */
export function proseOf(
  reading: NoteReading,
  computed: ComputedNote,
  set: NoteSet | null,
): { readonly document: ProseDocument; readonly pictures: readonly PagePicture[] } | undefined {
  const unread = reading.remarks.filter(({ severity }) => severity === 'error').length;
  if (reading.kind === 'follow-up') {
    const amendments = amendmentsOf(set, reading.note.id?.value);
    return { document: followUpProse(reading.note, computed, unread, amendments), pictures: [] };
  }
  if (reading.kind === 'amendment') {
    return { document: amendmentProse(reading.note, unread, amendedBy(reading.note, set)), pictures: [] };
  }
  if (reading.kind !== 'operation') return undefined;
  const amendments = amendmentsOf(set, reading.note.id?.value);
  const document = operationProse(reading.note, { computed, amendments, unread });
  const eye = drawEye(sceneOf(reading.note));
  const vectors = astigmatismOf(computed, undefined);
  const astigmatism = vectors.before || vectors.expected ? [drawAstigmatism(vectors)] : [];
  return { document, pictures: [eye, ...astigmatism].map(({ svg, title }) => ({ svg, caption: title })) };
}

/** The note that an amendment amends; undefined where the set does not have it. */
function amendedBy({ amends }: Amendment, set: NoteSet | null): Operation | FollowUp | undefined {
  const facts = set?.facts.find(({ id, record }) => record !== 'amendment' && id === amends?.value);
  const reading = facts === undefined ? undefined : set?.open(facts.file);
  return reading?.kind === 'operation' || reading?.kind === 'follow-up' ? reading.note : undefined;
}
