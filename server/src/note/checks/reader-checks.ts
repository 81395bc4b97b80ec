import type { CheckInfo } from './check.ts';

function rule(
  id: string,
  summary: string,
  options: Partial<Pick<CheckInfo, 'severity' | 'allowable'>> = {},
): CheckInfo {
  return { id, group: 'writing', summary, severity: 'error', allowable: false, ...options };
}

/** What the reader itself remarks on; none of it can be allowed unless it says so. The pages are in about-reader-checks.ts. */
export const readerChecks: readonly CheckInfo[] = [
  rule('text-not-readable', 'A line of the note cannot be read.'),
  rule('record-kind-missing', 'The note does not say which kind of record it is.'),
  rule('record-kind-disagrees', 'The note says that it is one kind of record and has the fields of another.'),
  rule('note-too-large', 'The file is far larger than any note.'),
  rule('note-not-fully-checked', 'A check failed on this note, so that the note is not fully checked.'),
  rule('unknown-field', 'A field does not exist in this section.'),
  rule('field-given-twice', 'A field is written twice in the same place.'),
  rule('anchor-refused', 'A value is given a name so that it can be copied by reference.'),
  rule('alias-refused', 'A value is copied from elsewhere by reference.'),
  rule('tag-refused', 'A value is forced to be of a type.'),
  rule('merge-key-refused', 'Fields are merged from elsewhere.'),
  rule('several-documents', 'The file holds more than one document.'),
  rule('unreadable-value', 'A value is not written in a way this field understands.'),
  rule('wrong-unit', 'A quantity has a unit that measures something else.'),
  rule('unknown-word', 'A word is not in the vocabulary of its field.'),
  rule('decimal-comma', 'A number has a decimal comma.'),
  rule('impossible-value', 'A number is outside what is possible.'),
  rule('empty-value', 'A field has nothing behind it.', { severity: 'unfinished' }),
  rule('expected-section', 'A section has a single value instead of its fields.'),
  rule('expected-list', 'A list has no entries with dashes.'),
  rule('expected-value', 'A field with one value has a list or a section.'),
  rule('identifier-without-quotes', 'An identifier looks like a number and has no quotes.', {
    severity: 'warning',
    allowable: true,
  }),
  rule('text-cut-by-hash', 'A text is cut off by “ #”.', { severity: 'warning', allowable: true }),
  rule('allowance-unknown', 'An allowance names a check that does not exist.', { severity: 'warning' }),
  rule('allowance-refused', 'An allowance names a check that cannot be allowed.'),
  rule('allowance-without-reason', 'An allowance gives no reason.', { severity: 'warning' }),
  rule('allowance-unused', 'An allowance is not needed.', { severity: 'warning' }),
];
