import type { Amendment, FollowUp, Operation } from '@sideport/schemas';
import type { ProseSection } from './document.ts';
import { capital, join, longInstant, sentence } from './english.ts';
import { fieldInWords } from './field-in-words.ts';
import { tidyFor } from './passage.ts';

const tidy = tidyFor('amendment');

/** `Correction by S-02, 16 March 2031 at 08:30 (UTC+01:00)`. */
function heading(amendment: Amendment): string {
  const kind = capital(amendment.kind?.value ?? 'amendment');
  return join(
    [join([kind, amendment.by && `by ${tidy(amendment.by)}`]), amendment.at && longInstant(amendment.at.value)],
    ', ',
  );
}

/**
 * The changes to fields whose path begins so, each with the old and the new value.
 * @param amended the note they change, where it is at hand
 */
export function changesBelow(
  amendments: readonly Amendment[],
  isOf: (firstStep: string) => boolean,
  amended: Operation | FollowUp | undefined,
): readonly string[] {
  return amendments.flatMap((amendment) =>
    (amendment.changes?.items ?? [])
      .filter((change) => isOf((change.field?.value ?? '').split(/[.[]/u)[0] ?? ''))
      .map((change) => {
        const was = change.was ? `was “${tidy(change.was)}”` : `was ${change.$.said['was']?.word ?? 'not stated'}`;
        const reason = change.reason ?? amendment.reason;
        return `${heading(amendment)}: ${fieldInWords(change.field?.value, amended)}: ${was}, now reads “${tidy(change.now) ?? 'not stated'}”${reason ? ` (${tidy(reason)})` : ''}.`;
      }),
  );
}

/**
 * All amendments in full, as the last section of the note they belong to.
 * @param changes the changes that stand behind no other section
 */
export function amendmentSection(amendments: readonly Amendment[], changes: readonly string[]): ProseSection {
  const paragraphs = amendments.map((amendment) => {
    const count = amendment.changes?.items.length ?? 0;
    const words = [
      `${heading(amendment)} (${tidy(amendment.id) ?? 'no id recorded'}).`,
      sentence(tidy(amendment.text)),
      amendment.reason && sentence(`Reason: ${tidy(amendment.reason)}`),
      count > 0 ? sentence(`${count} ${count === 1 ? 'field is' : 'fields are'} changed, as shown`) : undefined,
      ...(amendment.signed?.items ?? []).map((signature) =>
        sentence(`Signed by ${tidy(signature.by) ?? 'not stated'}`),
      ),
    ];
    return join(words);
  });
  return {
    id: 'amendments',
    heading: 'Amendments',
    paragraphs,
    computed: [],
    amended: changes,
  };
}
