import { describe, expect, it } from 'vitest';
import { lineIndex } from '../../server/src/language-server/line-index.ts';

/**
 * Language Server Protocol 3.17, "Text Documents": lines end at LF, CRLF or a lone CR; `character` counts UTF-16 code
 * units; a position behind the end of a line means its end.
 */
describe('lines and columns', () => {
  it.each([
    ['LF', 'eye: left\nseat: superior\n'],
    ['CRLF', 'eye: left\r\nseat: superior\r\n'],
    ['a lone CR', 'eye: left\rseat: superior\r'],
  ])('end at %s', (_, text) => {
    const lines = lineIndex(text);
    const seat = text.indexOf('seat');
    expect(lines.positionAt(seat)).toEqual({ line: 1, character: 0 });
    expect(lines.offsetAt({ line: 1, character: 0 })).toBe(seat);
    expect(lines.positionAt(text.length)).toEqual({ line: 2, character: 0 });
  });

  it('count UTF-16 units: two for an emoji, one for a letter with an accent', () => {
    const text = 'place: 🏥 é x';
    const lines = lineIndex(text);
    expect(lines.positionAt(text.indexOf('é'))).toEqual({ line: 0, character: 10 });
    expect(lines.offsetAt({ line: 0, character: 12 })).toBe(text.indexOf('x'));
  });

  it('count a byte order mark as the first unit of the first line', () => {
    const text = '\uFEFFopnote: 1\neye: left';
    const lines = lineIndex(text);
    expect(lines.positionAt(1)).toEqual({ line: 0, character: 1 });
    expect(lines.positionAt(text.indexOf('eye'))).toEqual({ line: 1, character: 0 });
  });

  it('keep a position behind the end of its line within the line', () => {
    const text = 'eye: left\r\nseat: superior';
    const lines = lineIndex(text);
    expect(lines.offsetAt({ line: 0, character: 99 })).toBe(9);
    expect(lines.offsetAt({ line: 99, character: 0 })).toBe(text.length);
    expect(lines.rangeOf({ start: 5, end: 9 })).toEqual({
      start: { line: 0, character: 5 },
      end: { line: 0, character: 9 },
    });
  });
});
