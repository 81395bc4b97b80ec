import { expect, test } from 'vitest';
import { SetTexts } from '../../server/src/command-line/set-texts.ts';

const texts: Readonly<Record<string, string>> = {
  plain: 'id: OP-7\nfindings: deep chamber, lax zonule\n',
  quoted: 'id: \'OP-7\'\nfindings: "deep chamber,\n  lax zonule"\n',
  folded: 'findings: >\n  deep chamber,\n  lax\n  zonule\n',
  doubled: "findings: 'the surgeon''s view'\n",
  coded: 'id: "OP\\u002d7"\n',
  other: 'id: OP-8\nfindings: shallow chamber\n',
};
const set = new SetTexts([...Object.keys(texts), 'unreadable'], (path) => texts[path]);

test.each([
  ['an identifier', ['OP-7'], ['plain', 'quoted', 'coded']],
  ['a text, however it is broken into lines', ['deep chamber, lax zonule'], ['plain', 'quoted', 'folded', 'coded']],
  ['an apostrophe that quotes double', ["the surgeon's view"], ['doubled', 'coded']],
  ['all of several words', ['OP-8', 'shallow chamber'], ['coded', 'other']],
  ['words in no note: only those that could hide them', ['OP-9'], ['coded']],
])('finds %s', (_, words, paths) => {
  expect(set.holding(words)).toEqual(paths);
});
