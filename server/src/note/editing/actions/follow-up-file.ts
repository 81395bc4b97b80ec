import { formatVersion } from '@sideport/schemas/sections/head.ts';
import { yamlText } from '../../edits/yaml-text.ts';
import type { ActionSource } from './action.ts';

/** A file for a later visit, pointing to this operation. The eye is left for the person who examines it. */
export const addFollowUpFile: ActionSource = ({ reading }, offset) => {
  if (reading.kind !== 'operation') return [];
  const { id, patient, signed } = reading.note;
  const isAtHead = id?.key !== undefined && offset <= (patient?.$.span.end ?? id.span.end);
  const isAtReviews = within(reading.note.reviews?.$, offset) || within(signed?.$, offset);
  if (id === undefined || !(isAtHead || isAtReviews)) return [];
  const ref =
    patient?.ref === undefined ? '' : `patient:\n  ref: ${yamlText(patient.ref.text, { as: 'identifier' })}\n`;
  return [
    {
      title: 'Add the follow-up file',
      safety: 'needs-review',
      edits: [],
      newFile: {
        suffix: 'follow-up',
        text: `opnote: ${formatVersion.words[0]?.word ?? '1'}\nrecord: follow-up\nstatus: draft\nid: \noperation: ${yamlText(id.text, { as: 'identifier' })}\ndate: \n${ref}eye: \nvisit: \nby: \n`,
      },
    },
  ];
};

function within(
  place: { readonly span: { start: number; end: number }; readonly key: { start: number } | null } | undefined,
  offset: number,
): boolean {
  return place !== undefined && (place.key?.start ?? place.span.start) <= offset && offset <= place.span.end;
}
