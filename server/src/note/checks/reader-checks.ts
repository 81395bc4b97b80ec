import type { CheckInfo, Example } from './check.ts';

/** What the reader itself remarks on; these have pages like every other check, and none can be allowed unless it says so. */
function rule(
  id: string,
  text: { readonly summary: string; readonly why: string; readonly whatToDo: string },
  faulty: string | Example,
  sound: string | Example,
  options: Partial<Pick<CheckInfo, 'severity' | 'allowable' | 'source' | 'noExample'>> = {},
): CheckInfo {
  return {
    id,
    group: 'writing',
    ...text,
    source: 'common practice, no source',
    severity: 'error',
    since: '1.0',
    allowable: false,
    ...options,
    faulty: typeof faulty === 'string' ? { note: faulty } : faulty,
    sound: typeof sound === 'string' ? { note: sound } : sound,
  };
}

export const readerChecks: readonly CheckInfo[] = [
  rule(
    'text-not-readable',
    {
      summary: 'A line of the note cannot be read.',
      why: 'What cannot be read is not checked, not computed and not exported.',
      whatToDo:
        'Write “field: value”, indent with blanks, close quotes and brackets, and put a text that holds “: ” in quotes.',
    },
    'indication: glare: cannot drive at night',
    'indication: "glare: cannot drive at night"',
  ),
  rule(
    'record-kind-missing',
    {
      summary: 'The note does not say which kind of record it is.',
      why: 'An operation, a follow-up and an amendment are read differently.',
      whatToDo: 'Write record: operation, record: follow-up or record: amendment in the head.',
    },
    'without: record',
    'record: operation',
  ),
  rule(
    'note-too-large',
    {
      summary: 'The file is far larger than any note.',
      why: 'A file of this size is something else, or holds pasted pictures, and would stop the editor.',
      whatToDo: 'Keep pictures and print-outs outside the note.',
    },
    { base: 'nothing', note: 'a page of a pasted print-out\n', times: 40_000 },
    'free-text: a short text',
  ),
  rule(
    'note-not-fully-checked',
    {
      summary: 'A check failed on this note, so that the note is not fully checked.',
      why: 'A fault of the program must never look like a sound note.',
      whatToDo: 'Report it. Read the note with a colleague before signing.',
    },
    '',
    '',
    {
      noExample:
        'No note can show this: it takes a fault of the program. A test makes a check fail to see that it is said.',
    },
  ),
  rule(
    'unknown-field',
    {
      summary: 'A field does not exist in this section.',
      why: 'A misspelt or misplaced field is neither checked nor exported: it looks recorded and is lost.',
      whatToDo: 'Correct the name, move the field to the section it belongs to, or write the matter as free text.',
    },
    'dye-used: trypan blue',
    'dye: trypan blue',
  ),
  rule(
    'field-given-twice',
    {
      summary: 'A field is written twice in the same place.',
      why: 'Nobody can tell which of two values was meant.',
      whatToDo: 'Delete the wrong one.',
    },
    'dye: trypan blue\ndye: none',
    'dye: trypan blue',
  ),
  rule(
    'anchor-refused',
    {
      summary: 'A value is given a name so that it can be copied by reference.',
      why: 'A value copied by reference between places cannot be audited.',
      whatToDo: 'Delete the “&name”.',
    },
    'findings: &seen deep chamber',
    'findings: deep chamber',
  ),
  rule(
    'alias-refused',
    {
      summary: 'A value is copied from elsewhere by reference.',
      why: 'A value copied by reference between places cannot be audited.',
      whatToDo: 'Write the value itself.',
    },
    'condition-at-end: *seen',
    'condition-at-end: comfortable',
  ),
  rule(
    'tag-refused',
    {
      summary: 'A value is forced to be of a type.',
      why: 'The field itself says how it is read; a forced type makes other programs read something else.',
      whatToDo: 'Delete the “!…”.',
    },
    'dye: !!str trypan blue',
    'dye: trypan blue',
  ),
  rule(
    'merge-key-refused',
    {
      summary: 'Fields are merged from elsewhere.',
      why: 'Merged fields cannot be audited.',
      whatToDo: 'Write the fields themselves.',
    },
    'hydrodissection:\n  <<: {cortex: yes}\n  rotation: yes',
    'hydrodissection:\n  cortex: yes\n  rotation: yes',
  ),
  rule(
    'several-documents',
    {
      summary: 'The file holds more than one document.',
      why: 'One file is one record about one eye; the second document would be overlooked.',
      whatToDo: 'Move the second document to a file of its own.',
    },
    'free-text: first\n---\nopnote: 1',
    'free-text: first',
  ),
  rule(
    'unreadable-value',
    {
      summary: 'A value is not written in a way this field understands.',
      why: 'A value that is not understood is neither checked nor computed with.',
      whatToDo: 'Write it as the message shows, or write “not recorded”.',
    },
    'start: five past ten',
    'start: 10:05',
  ),
  rule(
    'wrong-unit',
    {
      summary: 'A quantity has a unit that measures something else.',
      why: 'A number under the wrong unit is a wrong number.',
      whatToDo: 'Write the quantity in the unit shown, or in another unit of the same kind.',
    },
    'anaesthesia:\n  kinds: [sub-Tenon]\n  volume: 3.5 mg',
    'anaesthesia:\n  kinds: [sub-Tenon]\n  volume: 3.5 mL',
  ),
  rule(
    'unknown-word',
    {
      summary: 'A word is not in the vocabulary of its field.',
      why: 'Only words of the vocabulary can be counted, coded and compared.',
      whatToDo: 'Choose one of the words shown, or “other” and say the rest as text.',
    },
    'urgency: planed',
    'urgency: elective',
  ),
  rule(
    'decimal-comma',
    {
      summary: 'A number has a decimal comma.',
      why: 'A comma is read differently in different countries; 21,5 must not become 215.',
      whatToDo: 'Write a point.',
    },
    'anaesthesia:\n  kinds: [sub-Tenon]\n  volume: 3,5 mL',
    'anaesthesia:\n  kinds: [sub-Tenon]\n  volume: 3.5 mL',
  ),
  rule(
    'impossible-value',
    {
      summary: 'A number is outside what is possible.',
      why: 'It is a slip of the keyboard, of the unit or of the field.',
      whatToDo: 'Look at the print-out and correct the number.',
    },
    'anaesthesia:\n  kinds: [sub-Tenon]\n  volume: 35 mL',
    'anaesthesia:\n  kinds: [sub-Tenon]\n  volume: 3.5 mL',
  ),
  rule(
    'empty-value',
    {
      summary: 'A field has nothing behind it.',
      why: 'Nobody can tell whether it was none, not done, not recorded or forgotten.',
      whatToDo: 'Write the value, or say why there is none: none, not done, not recorded.',
    },
    'dye:',
    'dye: none',
    { severity: 'unfinished' },
  ),
  rule(
    'expected-section',
    {
      summary: 'A section has a single value instead of its fields.',
      why: 'The value belongs to one of the fields, and which one cannot be guessed.',
      whatToDo: 'Write the fields of the section, each on a line of its own.',
    },
    'hydrodissection: complete',
    'hydrodissection:\n  cortex: yes',
  ),
  rule(
    'expected-list',
    {
      summary: 'A list has no entries with dashes.',
      why: 'There may be several of them; each entry begins with a dash.',
      whatToDo: 'Begin each entry with “- ”.',
    },
    'drugs:\n  drug: cefuroxime\n  purpose: antibiotic\n  route: intracameral\n  dose: 1 mg in 0.1 mL',
    'drugs:\n  - drug: cefuroxime\n    purpose: antibiotic\n    route: intracameral\n    dose: 1 mg in 0.1 mL',
  ),
  rule(
    'expected-value',
    {
      summary: 'A field with one value has a list or a section.',
      why: 'The field can hold one value only.',
      whatToDo: 'Write the one value, or use the field or list that can hold more.',
    },
    'urgency:\n  - elective\n  - urgent',
    'urgency: elective',
  ),
  rule(
    'identifier-without-quotes',
    {
      summary: 'An identifier looks like a number and has no quotes.',
      why: 'This program keeps 007 as typed; another program that reads the note turns it into 7.',
      whatToDo: 'Put it in double quotes.',
    },
    'place: 0031',
    'place: "0031"',
    { severity: 'warning', allowable: true },
  ),
  rule(
    'text-cut-by-hash',
    {
      summary: 'A text is cut off by “ #”.',
      why: 'Everything behind “ #” is a comment and is lost from the record.',
      whatToDo: 'Put the whole text in quotes, or move the comment to a line of its own.',
    },
    'findings: deep chamber # lax zonule',
    'findings: "deep chamber # lax zonule"',
    { severity: 'warning', allowable: true },
  ),
  rule(
    'allowance-unknown',
    {
      summary: 'An allowance names a check that does not exist.',
      why: 'It allows nothing, and the reader believes that something was looked at.',
      whatToDo: 'Correct the name or delete the allowance.',
    },
    'dye: none # allow dye-missing: not needed',
    'dye: none',
    { severity: 'warning' },
  ),
  rule(
    'allowance-refused',
    {
      summary: 'An allowance names a check that cannot be allowed.',
      why: 'Side, identity and the lens are never a matter of discretion.',
      whatToDo: 'Put the note right and delete the allowance.',
    },
    'dye: none # allow unknown-field: we write it so',
    'dye: none',
  ),
  rule(
    'allowance-without-reason',
    {
      summary: 'An allowance gives no reason.',
      why: 'Who reads the note later must see why a remark was set aside.',
      whatToDo: 'Write the reason behind a colon.',
    },
    'place: "0031" # allow identifier-without-quotes',
    'place: "0031"',
    { severity: 'warning' },
  ),
  rule(
    'allowance-unused',
    {
      summary: 'An allowance is not needed.',
      why: 'An allowance left behind would silence a later, real remark.',
      whatToDo: 'Delete it.',
    },
    'place: "0031" # allow identifier-without-quotes: old numbering',
    'place: "0031"',
    { severity: 'warning' },
  ),
];
