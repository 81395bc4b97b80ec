import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { formatRange } from '../../server/src/note/editing/format-range.ts';
import { formatLineLeft, formatNote, formatText } from '../../server/src/note/editing/format.ts';
import { readNote } from '../../server/src/note/reading/read-note.ts';
import { laidOut, saidIn } from './layouts.ts';
import { apply } from './mark.ts';

const sample = readFileSync(new URL('../../samples/sound/long-eye-ring.opnote.yaml', import.meta.url), 'utf8');

/** What a note says, without where and how it is written. */
function meaning(text: string): unknown {
  return readNote(text).values.map(({ field }) => [
    field.path.join('.'),
    JSON.stringify(field.value, (key: string, value: unknown) => (key.startsWith('typed') ? undefined : value)),
  ]);
}

describe('tidying a note', () => {
  it('leaves a tidy note alone', () => {
    expect(formatNote(readNote(sample))).toEqual([]);
  });

  it('writes units out and keeps decimals as typed', () => {
    expect(
      formatText(
        'opnote: 1\nrecord: operation\nincisions:\n  - at: 100\n    width: 2.20\npreop:\n  pupil: 7mm\n  pressure: 15 mm Hg\n',
      ),
    ).toBe(
      'opnote: 1\nrecord: operation\nincisions:\n  - at: 100°\n    width: 2.20 mm\npreop:\n  pupil: 7 mm\n  pressure: 15 mmHg\n',
    );
  });

  it('leaves a bare number that may be an hour, for the check to ask about', () => {
    const text = 'opnote: 1\nrecord: operation\nincisions:\n  - at: 2\n  - at: 12\n  - at: 13\n';
    expect(formatText(text)).toBe(text.replace('13', '13°'));
  });

  it('leaves words, quotes and what it does not understand as they are', () => {
    const text =
      'opnote: 1\nrecord: operation\neye: OS\nprocedure: phaco and IOL\nplace: "3"\nstart: nine\nlens:\n  serial: "0040"\n';
    expect(formatText(text)).toBe(text);
  });

  it('puts fields in the column of their section, with their comments and texts', () => {
    expect(
      formatText(
        'opnote: 1\nrecord: operation\npreop:\n    # measured twice\n    biometry:\n        axial-length:   23.50 mm\n        k1: 43.00 D @ 5  # flat\nincisions:\n- kind:   main\n  width: 2.2 mm\n-   kind: side-port\n    width: 1.0 mm\nfindings: |\n      deep chamber\n        and more\n',
      ),
    ).toBe(
      'opnote: 1\nrecord: operation\npreop:\n  # measured twice\n  biometry:\n    axial-length: 23.50 mm\n    k1: 43.00 D @ 5  # flat\nincisions:\n  - kind: main\n    width: 2.2 mm\n  - kind: side-port\n    width: 1.0 mm\nfindings: |\n      deep chamber\n        and more\n',
    );
  });

  it('takes away blanks at line ends and blank lines too many, and ends the last line', () => {
    expect(formatText('opnote: 1  \nrecord: operation\n\n\n \n\neye: left')).toBe(
      'opnote: 1\nrecord: operation\n\neye: left\n',
    );
    expect(formatText('opnote: 1\nrecord: operation\n\n\n\n')).toBe('opnote: 1\nrecord: operation\n');
    expect(formatText('opnote: 1\r\nrecord: operation\r\n\r\n\r\n\r\neye: left')).toBe(
      'opnote: 1\r\nrecord: operation\r\n\r\neye: left\r\n',
    );
  });

  it('leaves a text alone that cannot be read throughout', () => {
    const text = 'opnote: 1\nrecord: operation\neye left\npreop:\n    pupil: 7\n';
    expect(formatText(text)).toBe(text);
  });

  it('is done after once, and changes nothing that the note says', () => {
    let seed = 7;
    const next = (below: number) => (seed = (seed * 48271) % 2147483647) % below;
    const pieces = [' ', '  ', '\n', '\n\n\n', '   # a comment\n', '\t', ' mm', '|', '- '];
    for (let round = 0; round < 150; round++) {
      let text = sample;
      for (let change = next(3); change >= 0; change--) {
        const at = next(text.length);
        text = text.slice(0, at) + (pieces[next(pieces.length)] ?? '') + text.slice(at + next(3));
      }
      const once = formatText(text);
      expect(formatText(once)).toBe(once);
      expect(meaning(once)).toEqual(meaning(text));
    }
  }, 120_000);
});

describe('a list with an entry below its dash', () => {
  it('is moved with its field, and the rest of the note is tidied', () => {
    const text =
      'opnote: 1\nrecord: operation\npreop:\n    pupil:   7\n    counselling:\n        -   glare\n        -\n            night driving\n    fundus:\n        view: clear\n';
    expect(formatText(text)).toBe(
      'opnote: 1\nrecord: operation\npreop:\n  pupil: 7 mm\n  counselling:\n      -   glare\n      -\n          night driving\n  fundus:\n    view: clear\n',
    );
    expect(formatText(formatText(text))).toBe(formatText(text));
    expect(saidIn(formatText(text)).values).toEqual(saidIn(text.replace('  7', '  7 mm')).values);
  });
});

describe('a part of a note', () => {
  const deep = laidOut(readNote(sample).tree.root!, { step: 4 }).replace(/^( +pupil): .*$/mu, '$1:   7');
  const part = (text: string, from: number, to: number) =>
    apply(text, formatRange(readNote(text), { start: from, end: to }));

  it('of one line has its value tidied, and stays in its column', () => {
    const from = deep.indexOf('    pupil');
    const tidied = part(deep, from, deep.indexOf('\n', from));
    expect(tidied).toBe(deep.replace('pupil:   7\n', 'pupil: 7 mm\n'));
  });

  it('can be any part, and the note says the same and is as readable as before', () => {
    const lines = [...deep.matchAll(/^/gmu)].map(({ index }) => index);
    for (const [at, from] of lines.entries()) {
      if (at % 5 !== 0) continue;
      for (const count of [1, 4, 30]) {
        const text = part(deep, from, lines[at + count] ?? deep.length);
        expect(readNote(text).tree.faults).toEqual([]);
        expect(meaning(text)).toEqual(meaning(deep));
      }
    }
  }, 60_000);

  it('with a whole section has its columns put right', () => {
    const from = deep.indexOf('preop:');
    const to = deep.indexOf('\nplan:');
    const text = part(deep, from, to);
    expect(text.slice(0, from)).toBe(deep.slice(0, from));
    expect(text).toContain('\n  pupil: 7 mm\n');
    expect(text.slice(text.indexOf('\nplan:'))).toBe(deep.slice(to));
    expect(part(deep, 0, deep.length)).toBe(formatText(deep));
  });
});

describe('the line left by Enter', () => {
  it('gets its unit, and no other line is touched', () => {
    const text = 'opnote: 1\nrecord: operation\npreop:\n    pupil: 7\n    pressure: 15\n    ';
    const edits = formatLineLeft(readNote(text), text.length);
    expect(apply(text, edits)).toBe('opnote: 1\nrecord: operation\npreop:\n    pupil: 7\n    pressure: 15 mmHg\n    ');
    expect(formatLineLeft(readNote(text), 3)).toEqual([]);
  });
});
