import { textCheck, type About } from '../check.ts';
import { COMMENT, wordsOf } from '../support/private-text.ts';

const PLACEHOLDER =
  /\?\?+|\b(?:tbc|tba|tbd|todo|fixme|xx+)\b|_{3,}|\.{4,}|\[\s*\]|<[a-z][^<>@]{1,40}>|\bto be (?:confirmed|added|completed|filled in)\b|\b(?:insert|enter|type) (?:text|here|name|value)\b|lorem ipsum|\*\*\*/giu;

export const placeholderLeft = textCheck({
  id: 'placeholder-left',
  group: 'writing',
  summary: 'A placeholder was left in the note.',
  severity: 'unfinished',
  allowable: true,
  run: (reading, say) => {
    const { joined, locate } = wordsOf(reading);
    for (const match of joined.matchAll(PLACEHOLDER)) {
      const found = locate(match.index, match[0].length);
      if (found === undefined || found.where === COMMENT) continue;
      say({
        at: { span: found.span, key: null, path: found.path },
        message: `${found.where}: “${match[0]}” is a placeholder. Write what belongs there, or “not recorded”.`,
      });
    }
  },
});

export const aboutPlaceholderLeft: About = () => ({
  why: 'It looks filled in, and says nothing.',
  whatToDo: 'Write what belongs there, or “not recorded”.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: { note: 'findings: TBC' },
  sound: { note: 'findings: dense nucleus, clean capsule' },
});
