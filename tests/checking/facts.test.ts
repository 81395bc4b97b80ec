import { expect, test } from 'vitest';
import { readNote } from '../../server/src/note/reading/read-note.ts';
import { factsIn, factsOf } from '../../server/src/note/set/note-set.ts';
import { makeYear } from '../../tools/year/make-year.ts';

test('facts read from a part of a note are those of the whole', () => {
  for (const { file, text } of makeYear({ operations: 40 })) {
    expect(factsIn(text, file)).toEqual(factsOf(readNote(text), file));
  }
  const prose = 'findings: a long account of an operation that is told twice in the very same words, word for word\n';
  const amendment = `record: amendment\nid: AM-1\namends: OP-1\nat: 2031-03-15T08:00+01:00\n${prose}`;
  for (const text of [amendment, `record: operation\n${prose}`, `operation: OP-1\nid: FU-1\n`, '', 'nonsense', '- a']) {
    expect(factsIn(text, 'x')).toEqual(factsOf(readNote(text), 'x'));
  }
});
