import type { Amendment, FollowUp, Operation } from '@sideport/schemas';
import { amendmentSection, changesBelow } from './amendment-lines.ts';
import { closingSections } from './closing-sections.ts';
import { CAUTIONS, referenceOf, signatureLines, statusNotices } from './common.ts';
import type { ProseDocument } from './document.ts';
import { capital, join, longInstant } from './english.ts';
import { Passage, tidyFor } from './passage.ts';
import { sayRisks } from './sections/diagnosis.ts';

/**
 * An amendment by itself; the note that it amends shows it beside the original.
 * @param amended the note it amends, where it is at hand
 */
export function amendmentProse(
  note: Amendment,
  unread: number,
  amended: Operation | FollowUp | undefined,
): ProseDocument {
  const tidy = tidyFor('amendment');
  const risks = new Passage();
  sayRisks(risks, note.patient, tidy);
  const changes = changesBelow([note], () => true, amended);
  return {
    title: join(
      [
        `${capital(note.kind?.value ?? 'amendment')} to the note ${tidy(note.amends) ?? '(not named)'}`,
        note.at && longInstant(note.at.value),
      ],
      ', ',
    ),
    reference: referenceOf(note),
    notices: [
      ...statusNotices(note, unread),
      'This is not a note by itself: read it together with the note it amends.',
    ],
    facts: [
      { label: 'Amends', text: tidy(note.amends) ?? 'not recorded' },
      { label: 'Author', text: tidy(note.by) ?? 'not recorded' },
      { label: 'Patient', text: tidy(note.patient?.ref) ?? 'not recorded' },
      { label: 'Eye', text: note.eye?.value ?? 'not recorded' },
      { label: 'Note', text: tidy(note.id) ?? 'no id recorded' },
    ],
    sections: [
      amendmentSection([note], changes),
      ...(risks.paragraphs.length === 0
        ? []
        : [{ id: 'patient', heading: 'Patient', paragraphs: risks.paragraphs, computed: [], amended: [] }]),
      ...closingSections(note, tidy),
    ],
    signatures: signatureLines(note.signed, tidy),
    cautions: CAUTIONS,
  };
}
