import { describe, expect, it } from 'vitest';
import { newDictation } from '../../server/src/note/dictation/dictation.ts';
import { applyEdits } from '../../server/src/note/dictation/placing.ts';
import { actionsAt } from '../../server/src/note/editing/actions/all-actions.ts';
import { readNote } from '../../server/src/note/reading/read-note.ts';
import { reviewNote } from '../../server/src/note/review.ts';

const dictation = newDictation();

const note = `opnote: 1
record: operation
status: draft
eye: left
cortex: {method: coaxial}
free-text: Vacuum was four hundred, bottle eighty.
dictation: >-
  Left eye. Capsule polished. Lens plus twenty one in the bag,
  one piece. Gorbel frobnicated. Trypan blue.
`;
const reading = readNote(note);

function offersAt(text: string, from: string, to = '') {
  const start = text.indexOf(from);
  const end = to === '' ? start : text.indexOf(to) + to.length;
  return dictation.offers(readNote(text), { start, end });
}

describe('what can be written from a dictation', () => {
  it('is all of it, with or without a look at each section, or the value at the cursor', () => {
    expect(offersAt(note, 'dictation').map(({ title }) => title)).toEqual([
      'Write what was dictated into the fields (5 values, 2 to confirm)',
      'Look at what was dictated first, section by section',
    ]);
    expect(offersAt(note, 'rypan').map(({ title }) => title)).toEqual([
      'Write what was dictated into the fields (5 values, 2 to confirm)',
      'Look at what was dictated first, section by section',
      'Write Dye: trypan blue into the fields (1 value)',
    ]);
  });

  it('is written section by section in one change, which says where each part goes', () => {
    const [all, looked] = offersAt(note, 'dictation');
    expect(looked?.preview).toBe(true);
    expect(all?.parts.map(({ label }) => label)).toEqual([
      'Dye: trypan blue',
      'Cortex removal: yes',
      'Lens: +21 D, capsular bag, 1',
    ]);
    const text = applyEdits(note, all?.parts.flatMap(({ edits }) => [...edits]) ?? []);
    expect(text).toBe(`opnote: 1
record: operation
status: draft
eye: left
dye: trypan blue
cortex: {method: coaxial, polished-posterior: yes}
lens:
  power: +21 D # proposed from the dictation: “plus twenty one”
  pieces: 1
  placed: capsular bag # proposed from the dictation: “in the bag”
free-text: Vacuum was four hundred, bottle eighty.
dictation: >-
  Left eye. Capsule polished. Lens plus twenty one in the bag,
  one piece. Gorbel frobnicated. Trypan blue.
`);
    expect(
      dictation.offers(readNote(text), { start: text.indexOf('dictation: >'), end: text.indexOf('dictation: >') }),
    ).toEqual([]);
  });

  it('is what was selected, in the dictation and in other free words', () => {
    expect(offersAt(note, 'Lens plus', 'one piece').map(({ title }) => title)).toEqual([
      'Write the selected words into the fields (3 values, 2 to confirm)',
      'Look at the selected words first, section by section',
    ]);
    const [offer] = offersAt(note, 'Vacuum was', 'bottle eighty');
    expect(offer?.title).toBe('Write the selected words into the fields (2 values)');
    expect(offersAt(note, 'Vacuum was')).toEqual([]);
    expect(offersAt(note, 'opnote', 'status')).toEqual([]);
  });

  it('is counted beside the name of the field, with what is in no field', () => {
    expect(dictation.progress(reading)).toEqual({
      at: note.indexOf('>-') + 2,
      text: '5 values to write · 1 place in no field',
    });
    const remarks = reviewNote(note, { dictation }).remarks.filter(
      ({ check }) => check === 'dictated-words-in-no-field',
    );
    expect(remarks.map(({ span, message }) => [note.slice(span.start, span.end), message])).toEqual([
      [
        'Gorbel frobnicated',
        '“Gorbel frobnicated” was dictated and is in no field (place 1 of 1). Write it where it belongs, or leave it in the dictation.',
      ],
    ]);
  });

  it('is explained at its field by the words it came from', () => {
    expect(dictation.wordsFor(reading, ['eye'])).toBe('“Left eye” (characters 1 to 8)');
    expect(dictation.wordsFor(reading, ['dye'])).toBe('“Trypan blue” (characters 93 to 103)');
    expect(dictation.wordsFor(reading, ['seat'])).toBeUndefined();
  });
});

const proposed = `opnote: 1
record: operation
status: draft
diagnosis:
  cataract: [nuclear, white, brunescent] # proposed from the dictation: “white”, “brunescent”
incisions:
  - kind: main # proposed from the dictation: “a”
    at: 100° # proposed from the dictation: “b”
    width: 2.2 mm
ring:
  used: yes # proposed from the dictation: “c”
lens:
  # the surgeon's own comment
  power: +21 D # proposed from the dictation: “d”
  pieces: 1
  placed: capsular bag # proposed from the dictation: “e”
cortex: {method: coaxial, polished-posterior: yes} # proposed from the dictation: “f”
`;

function act(at: string, title: RegExp): string {
  const actions = actionsAt({ reading: readNote(proposed), surroundings: {} }, proposed.indexOf(at));
  const action = actions.find((one) => title.test(one.title));
  if (action === undefined) throw new Error(`only: ${actions.map((one) => one.title).join(' | ')}`);
  const text = applyEdits(proposed, action.edits);
  expect(readNote(text).remarks).toEqual([]);
  return text;
}

/** The lines that are no longer there, and those that are new. */
function changed(text: string): readonly string[] {
  const [before, after] = [proposed.split('\n'), text.split('\n')];
  return [
    ...before.filter((line) => !after.includes(line)).map((line) => `- ${line.trim()}`),
    ...after.filter((line) => !before.includes(line)).map((line) => `+ ${line.trim()}`),
  ];
}

describe('a proposal of the dictation', () => {
  it('is confirmed by taking its mark away', () => {
    expect(changed(act('power', /^Confirm this value/u))).toEqual([
      '- power: +21 D # proposed from the dictation: “d”',
      '+ power: +21 D',
    ]);
  });

  it('is declined by taking the value out again, and no more than that', () => {
    expect(changed(act('power', /^Decline this proposal: take “\+21 D” out again$/u))).toEqual([
      '- power: +21 D # proposed from the dictation: “d”',
    ]);
    expect(changed(act('used: yes', /^Decline this/u))).toEqual([
      '- ring:',
      '- used: yes # proposed from the dictation: “c”',
    ]);
    expect(changed(act('kind: main', /^Decline this/u))).toEqual([
      '- - kind: main # proposed from the dictation: “a”',
      '- at: 100° # proposed from the dictation: “b”',
      '+ - at: 100° # proposed from the dictation: “b”',
    ]);
    expect(changed(act('polished', /^Decline this/u))).toEqual([
      '- cortex: {method: coaxial, polished-posterior: yes} # proposed from the dictation: “f”',
      '+ cortex: {method: coaxial}',
    ]);
    expect(changed(act('cataract', /^Decline this/u))).toEqual([
      '- cataract: [nuclear, white, brunescent] # proposed from the dictation: “white”, “brunescent”',
      '+ cataract: [nuclear]',
    ]);
  });

  it('is decided with the others of its section', () => {
    expect(changed(act('pieces', /^Confirm all 2 proposals of lens/u))).toEqual([
      '- power: +21 D # proposed from the dictation: “d”',
      '- placed: capsular bag # proposed from the dictation: “e”',
      '+ power: +21 D',
      '+ placed: capsular bag',
    ]);
    expect(changed(act('pieces', /^Decline all 2 proposals of lens/u))).toEqual([
      '- power: +21 D # proposed from the dictation: “d”',
      '- placed: capsular bag # proposed from the dictation: “e”',
    ]);
    expect(changed(act('width', /^Decline all 2 proposals of incisions/u))).toEqual([
      '- - kind: main # proposed from the dictation: “a”',
      '- at: 100° # proposed from the dictation: “b”',
      '- width: 2.2 mm',
      '+ - width: 2.2 mm',
    ]);
  });
});
