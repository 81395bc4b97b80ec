import { describe, expect, test } from 'vitest';
import { placeForDictation, unindentedLines } from '../../client/src/dictation-place.ts';
import { rewritingSwitches, whatLeaves } from '../../client/src/dictation-privacy.ts';

/** The note with words dictated at the place. */
function dictated(text: string, eol = '\n'): string | undefined {
  const place = placeForDictation(text, eol);
  return place === undefined ? undefined : `${text.slice(0, place.at)}${place.insert}‸${text.slice(place.at)}`;
}

describe('the place for dictated words', () => {
  test.each([
    ['a new block at the end', 'eye: left\n', 'eye: left\ndictation: |-\n  ‸\n'],
    ['a new block in an empty note', '', 'dictation: |-\n  ‸'],
    [
      'an empty field becomes a block',
      'eye: left\ndictation:\ndye: none\n',
      'eye: left\ndictation: |-\n  ‸\ndye: none\n',
    ],
    ['an empty block', 'dictation: |-\ndye: none\n', 'dictation: |-\n  ‸\ndye: none\n'],
    [
      'the end of a block',
      'dictation: >-\n  Left eye.\n  Topical.\n\ndye: none\n',
      'dictation: >-\n  Left eye.\n  Topical. ‸\n\ndye: none\n',
    ],
    ['the end of a block that ends the note', 'dictation: |\n  Left eye.\n', 'dictation: |\n  Left eye. ‸\n'],
  ])('%s', (_, text, expected) => {
    expect(dictated(text)).toBe(expected);
  });

  test('line ends stay as they are, and a dictation on one line is left alone', () => {
    expect(dictated('eye: left\r\n', '\r\n')).toBe('eye: left\r\ndictation: |-\r\n  ‸\r\n');
    expect(dictated('dictation: Left eye.\n')).toBeUndefined();
  });

  test('dictated lines are indented where they are not', () => {
    expect(unindentedLines('Left eye.\nTopical.\n  Phaco.\n\nEnd')).toEqual([10, 29]);
    expect(unindentedLines('Left eye.')).toEqual([]);
  });
});

describe('what leaves the machine', () => {
  test('nothing, where the words are understood here and not rewritten', () => {
    expect(
      whatLeaves({ model: 'nemotron-3.5-asr-streaming-0.6b', switches: ['dictation.enabled'], browser: false }),
    ).toEqual([]);
    expect(whatLeaves({ model: undefined, switches: [], browser: false })).toEqual([]);
  });

  test('the voice, where the model is not known to run here, and always in a browser', () => {
    expect(whatLeaves({ model: 'mai', switches: [], browser: false })).toEqual([
      'What you say is sent to a service on the network to be turned into text (“dictation.model” is “mai”).',
    ]);
    expect(whatLeaves({ model: 'nemotron-3.5-asr-streaming-0.6b', switches: [], browser: true })).toHaveLength(1);
  });

  test('the text, where a language model rewrites it', () => {
    const switches = ['dictation.enabled', 'dictation.experimental.llmCleanup'];
    expect(whatLeaves({ model: undefined, switches, browser: false })).toEqual([
      'The text is sent to a language model, which rewrites it (“dictation.experimental.llmCleanup” is on). Numbers and denials may change without a trace.',
    ]);
    expect(rewritingSwitches(switches)).toEqual(['dictation.experimental.llmCleanup']);
  });
});
