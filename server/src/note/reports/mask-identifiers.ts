/**
 * Hides what could name a person in text that leaves the editor for a shared build log. The first figures stay,
 * so that the owner of the note recognises the value. A name without a title cannot be told from other words.
 */

const EMAIL = /[\p{L}\p{N}._%+-]+@[\p{L}\p{N}.-]+\.\p{L}{2,}/gu;
const TITLED_NAME = /\b(Mr|Mrs|Ms|Miss|Mx|Dr|Prof)(\.?\s+)(?:\p{Lu}[\p{L}\p{M}'’-]*\.?\s*)+/gu;
// Ten-digit health numbers, social security numbers, telephone numbers; an ISO date is not one of them.
const GROUPED_DIGITS = /(?<![\w.])\+?(?!\d{4}-\d{2}-\d{2})\d[\d ()-]{6,}\d(?!\w|\.\d)/g;
// Hospital numbers and serial numbers: a run of seven figures or more, also behind letters.
const LONG_RUN = /\d{7,}/g;
const LEAST_GROUPED_DIGITS = 9;
const LEFT_READABLE = 3;

function maskDigits(text: string): string {
  let seen = 0;
  return text.replaceAll(/\d/g, (digit) => {
    seen += 1;
    return seen <= LEFT_READABLE ? digit : '*';
  });
}

/** `943 476 5919` becomes `943 *** ****`, `Mrs Elm` becomes `Mrs ***`, an address of a mailbox `***@***`. */
export function maskIdentifiers(text: string): string {
  return text
    .replaceAll(EMAIL, '***@***')
    .replaceAll(TITLED_NAME, (whole: string, title: string, gap: string) => {
      const trailing = /\s*$/.exec(whole)?.[0] ?? '';
      return `${title}${gap}***${trailing}`;
    })
    .replaceAll(GROUPED_DIGITS, (run) =>
      run.replaceAll(/\D/g, '').length >= LEAST_GROUPED_DIGITS ? maskDigits(run) : run,
    )
    .replaceAll(LONG_RUN, maskDigits);
}
