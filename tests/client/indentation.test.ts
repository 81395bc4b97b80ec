import { expect, test } from 'vitest';
import { likelyIndentation } from '../../client/src/indentation.ts';

test.each([
  ['nothing written yet', [], 0],
  ['after a field', ['eye: right'], 0],
  ['after a section', ['incisions:'], 2],
  ['after a section with a remark of the writer behind it', ['incisions: # two'], 2],
  ['after the first field of a list entry', ['incisions:', '  - kind: main'], 4],
  ['after a further field of a list entry', ['incisions:', '  - kind: main', '    width: 2.2 mm'], 4],
  ['after a section within a list entry', ['steps:', '  - settings:'], 6],
  ['after prose is announced', ['free-text: |'], 2],
  ['after blank lines', ['incisions:', '', '  '], 2],
  ['after a line that is a comment', ['incisions:', '# the main one first'], 2],
  ['after a value that holds a colon', ['start: 09:15'], 0],
])('%s', (_, linesBefore, indentation) => {
  expect(likelyIndentation(linesBefore)).toBe(indentation);
});
