import { planAt, recordPlan, type Amendment } from '@sideport/schemas';
import type { ProseSection } from './document.ts';
import { capital, join, longInstant, sentence } from './english.ts';
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

/** The changes to fields under one of the given first steps of a path, each with the old and the new value. */
export function changesBelow(amendments: readonly Amendment[], keys: readonly string[]): readonly string[] {
  return amendments.flatMap((amendment) =>
    (amendment.changes?.items ?? [])
      .filter((change) => keys.includes((change.field?.value ?? '').split(/[.[]/u)[0] ?? ''))
      .map((change) => {
        const was = change.was ? `was “${tidy(change.was)}”` : `was ${change.$.said['was']?.word ?? 'not stated'}`;
        const reason = change.reason ?? amendment.reason;
        return `${heading(amendment)}: ${fieldName(change.field?.value)} ${was}, now reads “${tidy(change.now) ?? 'not stated'}”${reason ? ` (${tidy(reason)})` : ''}.`;
      }),
  );
}

/** `pressure by touch (closure.pressure-by-touch)`; a path that the format does not know stays as it is. */
function fieldName(path: string | undefined): string {
  if (path === undefined) return 'a field that is not named';
  const steps = path.split(/[.[\]]+/u).filter((step) => step !== '' && !/^\d+$/u.test(step));
  const label = planAt(recordPlan('operation'), steps)?.guide.label;
  return label === undefined ? path : `${label.toLowerCase()} (${path})`;
}

/** All amendments in full, as the last section of the note they belong to. */
export function amendmentSection(amendments: readonly Amendment[], ownKeys: readonly string[]): ProseSection {
  const paragraphs = amendments.map((amendment) => {
    const changes = amendment.changes?.items.length ?? 0;
    const words = [
      `${heading(amendment)} (${tidy(amendment.id) ?? 'no id recorded'}).`,
      sentence(tidy(amendment.text)),
      amendment.reason && sentence(`Reason: ${tidy(amendment.reason)}`),
      changes > 0 ? sentence(`${changes} ${changes === 1 ? 'field is' : 'fields are'} changed, as shown`) : undefined,
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
    amended: changesBelow(amendments, ownKeys),
  };
}
