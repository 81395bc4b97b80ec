import { describe, expect, it } from 'vitest';
import { dictate } from '../../server/src/note/dictation/dictate.ts';
import { keptDictation } from '../../server/src/note/dictation/kept-text.ts';
import { applyEdits, noteFromDictation, placeValues } from '../../server/src/note/dictation/placing.ts';
import { readNote } from '../../server/src/note/reading/read-note.ts';
import { commentsIn, laidOut, saidIn, styles } from '../editing/layouts.ts';
import { ownExamples, referenceExamples } from './score.ts';

const all = [...referenceExamples, ...ownExamples];

/** What a note says, as lines of path and text. */
function said(text: string): readonly string[] {
  return readNote(text).values.map(({ field }) => `${field.path.join('.')}: ${field.text}`);
}

describe('a new note from a dictation', () => {
  it.each(all.map((example) => [example.id, example] as const))(
    '%s can be read, keeps the dictation, and has each value once',
    (_, { text }) => {
      const { text: note, result } = noteFromDictation(text);
      const reading = readNote(note);
      expect(reading.remarks).toEqual([]);
      expect(keptDictation(reading)?.text).toBe(text.trim());
      const placed = result.values.filter(
        ({ value, state, path }) => value !== null && state !== 'unresolved' && path[0] !== 'free-text',
      );
      const lines = new Set(said(note));
      const none = [...note.matchAll(/^\s*(?:- )?([a-z-]+): (none|not done)\b/gmu)].map((match) => match[1]);
      const missing = placed.filter(
        ({ path, value }) => !lines.has(`${path.join('.')}: ${value}`) && !none.includes(String(path.at(-1))),
      );
      expect(missing).toEqual([]);
    },
  );

  it.each(all.map((example) => [example.id, example] as const))(
    '%s gives the same again when it is dictated into its own note',
    (_, { text }) => {
      const { text: note } = noteFromDictation(text);
      const reading = readNote(note);
      const again = dictate(text, reading);
      expect(placeValues(reading, again.values).filter(({ text: written }) => written.trim() !== '')).toEqual([]);
      expect(again.conflicts.filter(({ inNote }) => inNote !== undefined)).toEqual([]);
    },
  );

  it('marks what is only proposed, with the words it was read from', () => {
    const { text } = noteFromDictation(
      'Left eye. Two point four millimetre clear corneal incision. Lens plus twenty one in the bag.',
    );
    expect(text).toBe(
      [
        'opnote: 1',
        'record: operation',
        'status: draft',
        'eye: left # proposed from the dictation: “Left eye”',
        'incisions:',
        '  - kind: main',
        '    width: 2.4 mm',
        '    plane: clear corneal',
        'lens:',
        '  power: +21 D # proposed from the dictation: “plus twenty one”',
        '  placed: capsular bag # proposed from the dictation: “in the bag”',
        'dictation: >-',
        '  Left eye. Two point four millimetre clear corneal incision. Lens plus twenty one in the bag.',
        '',
      ].join('\n'),
    );
  });
});

const begun = `# Theatre 2
opnote: 1
record: operation
status: draft

eye: left   # as on the list
plan:
  lens: {maker: Halden Optics, model: HX-1, power: +21.0 D}

incisions:
  # made by the fellow
  - kind: main
    width: 2.2 mm
lens:
  maker: Halden Optics
cortex: {method: bimanual}
complications: none
`;

function states(text: string, note?: string): readonly string[] {
  const reading = note === undefined ? undefined : readNote(note);
  return dictate(text, reading).values.map(({ path, state }) => `${path.join('.')} ${state}`);
}

describe('a dictation written into a note', () => {
  const dictation =
    "Left eye. Clear corneal incision two point two at one hundred degrees. Two side ports at two and ten o'clock. Capsule polished. Lens plus twenty one in the bag, one piece. Posterior capsule rupture. Vacuum four hundred.";

  it('changes nothing that was there, and puts each value in its section, in the order of an operation', () => {
    const { text, result } = noteFromDictation(dictation, begun);
    expect(text).toBe(`# Theatre 2
opnote: 1
record: operation
status: draft

eye: left   # as on the list
plan:
  lens: {maker: Halden Optics, model: HX-1, power: +21.0 D}

incisions:
  # made by the fellow
  - kind: main
    at: 100° # proposed from the dictation: “one hundred degrees”
    width: 2.2 mm
    plane: clear corneal
  - kind: side-port
    at: 2 o'clock
  - kind: side-port
    at: 10 o'clock
nucleus:
  steps:
    - vacuum: 400 mmHg
lens:
  maker: Halden Optics
  power: +21 D
  pieces: 1
  placed: capsular bag # proposed from the dictation: “in the bag”
cortex: {method: bimanual, polished-posterior: yes}
capsule-state:
  posterior: torn # proposed from the dictation: “Posterior capsule rupture”
complications: none
dictation: >-
  Left eye. Clear corneal incision two point two at one hundred degrees. Two side ports at two and ten
  o'clock. Capsule polished. Lens plus twenty one in the bag, one piece. Posterior capsule rupture.
  Vacuum four hundred.
`);
    expect(result.conflicts).toEqual([expect.objectContaining({ path: ['complications', 0, 'what'], inNote: 'none' })]);
  });

  it('keeps line ends, and works in a note with a byte order mark', () => {
    const { text } = noteFromDictation(dictation, `\uFEFF${begun.replace(/\n/gu, '\r\n')}`);
    expect(text.startsWith('\uFEFF# Theatre 2\r\n')).toBe(true);
    expect(text.replace(/\r\n/gu, '')).not.toContain('\n');
    expect(readNote(text).remarks).toEqual(readNote(begun).remarks);
  });

  it('leaves to the surgeon where the note says something else', () => {
    const { result } = noteFromDictation('Right eye. Incision two point four millimetres.', begun);
    expect(result.values.map(({ path, value, state, because }) => [path.join('.'), value, state, because])).toEqual([
      ['eye', 'right', 'unresolved', 'the note says left'],
      ['incisions.0.width', '2.4 mm', 'unresolved', 'the note says 2.2 mm'],
      ['incisions.0.kind', 'main', 'filled', 'the note says the same'],
    ]);
    expect(result.conflicts.map(({ path, inNote }) => [path.join('.'), inNote])).toEqual([
      ['eye', 'left'],
      ['incisions.0.width', '2.2 mm'],
    ]);
  });

  it('fills side and lens from a second source in the note only', () => {
    const planned = 'opnote: 1\nrecord: operation\nstatus: draft\nplan:\n  eye: left\n  lens: {power: +21.0 D}\n';
    expect(states('Left eye. Lens plus twenty one dioptres.')).toEqual(['eye proposed', 'lens.power proposed']);
    expect(states('Left eye. Lens plus twenty one dioptres.', planned)).toEqual(['eye filled', 'lens.power filled']);
    expect(states('Right eye. Lens plus twenty two dioptres.', planned)).toEqual([
      'eye proposed',
      'lens.power proposed',
    ]);
  });

  it('never turns what was only heard, or what another side was said beside, into a filled value', () => {
    const note = readNote('opnote: 1\nrecord: operation\nstatus: draft\neye: left\nlens:\n  power: -2 D\n');
    const [side] = dictate('Left eye. Right. Lens minus to dioptres.', note).values;
    expect(side).toMatchObject({ value: 'left', state: 'proposed' });
    expect(dictate('Lens minus to dioptres.', note).values[0]).toMatchObject({ value: '-2 D', state: 'proposed' });
  });
});

describe('the dictation kept in a note', () => {
  it.each([
    ['folded', 'dictation: >-\n  Left eye. Vacuum\n  four hundred.\n'],
    ['literal', 'dictation: |\n  Left eye. Vacuum\n  four hundred.\n'],
    ['plain', 'dictation: Left eye. Vacuum four hundred.\n'],
    ['single quotes', "dictation: 'Left eye. It''s vacuum four hundred.'\n"],
    ['double quotes', String.raw`dictation: "Left eye. \"Vacuum\" four hundred."` + '\n'],
  ])('%s: each of its characters is found in the note', (_, line) => {
    const note = `opnote: 1\nrecord: operation\nstatus: draft\n${line}`;
    const kept = keptDictation(readNote(note));
    for (const word of ['Left', 'acuum', 'four', 'hundred']) {
      const at = kept?.text.indexOf(word) ?? -1;
      const span = kept?.spanOf({ start: at, end: at + word.length }) ?? { start: 0, end: 0 };
      expect(note.slice(span.start, span.end)).toBe(word);
    }
  });

  it('edits are applied in the order of the text', () => {
    expect(
      applyEdits('abc', [
        { span: { start: 3, end: 3 }, text: 'd' },
        { span: { start: 0, end: 1 }, text: 'A' },
      ]),
    ).toBe('Abcd');
  });
});

describe.each(Object.entries(styles))('a dictation written into a note laid out with %s', (_, style) => {
  const thin =
    'opnote: 1\nrecord: operation\nstatus: draft\neye: left\ndye:\nincisions:\n  - kind: main\n    width: 2.2 mm\nlens:\n  maker: Halden Optics\ncortex:\n  method: bimanual\ncomplications-excluded: [iris prolapse]\nfindings: soft nucleus\n';
  const before = laidOut(readNote(thin).tree.root!, style);

  it.each(referenceExamples.slice(0, 6).map(({ id, text }) => [id, text] as const))(
    '%s: nothing is lost, and the note can be read',
    (__, dictation) => {
      const { text } = noteFromDictation(dictation, before);
      const [was, is] = [saidIn(before), saidIn(text)];
      expect(is.faults).toEqual([]);
      expect(is.values).toEqual(expect.arrayContaining(was.values.filter((value) => !value.endsWith('='))));
      const words = commentsIn(text).map((comment) =>
        comment.replace(/^proposed from the dictation: (?:“[^”]*”(?:, |; )?)*/u, ''),
      );
      expect(words).toEqual(expect.arrayContaining([...commentsIn(before)]));
    },
  );
});
