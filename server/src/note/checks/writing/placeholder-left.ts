import type { Span } from '@sideport/schemas';
import { textCheck, type About } from '../check.ts';
import { replacing } from '../support/fixes.ts';
import { matchesOf } from '../support/joined-text.ts';
import { COMMENT, wordsOf } from '../support/private-text.ts';

const PLACEHOLDER = {
  hints: [
    '??',
    'tbc',
    'tba',
    'tbd',
    'todo',
    'fixme',
    'xx',
    '___',
    '....',
    '[',
    '<',
    'to be ',
    'insert ',
    'enter ',
    'type ',
    'lorem',
    '***',
  ],
  pattern:
    /\?\?+|\b(?:tbc|tba|tbd|todo|fixme|xx+)\b|_{3,}|\.{4,}|\[\s*\]|<[a-z][^<>@]{1,40}>|\bto be (?:confirmed|added|completed|filled in)\b|\b(?:insert|enter|type) (?:text|here|name|value)\b|lorem ipsum|\*\*\*/giu,
};

export const placeholderLeft = textCheck({
  id: 'placeholder-left',
  group: 'writing',
  summary: 'A placeholder was left in the note.',
  severity: 'unfinished',
  allowable: true,
  run: (reading, say) => {
    const text = wordsOf(reading);
    for (const match of matchesOf(text, PLACEHOLDER)) {
      const found = text.locate(match.index, match[0].length);
      if (found === undefined || found.where === COMMENT) continue;
      say({
        at: { span: found.span, key: null, path: found.path },
        message: `${found.where}: “${match[0]}” is a placeholder. Write what belongs there, or “not recorded”.`,
        fixes: isAlone(reading.text, found.span) ? [replacing(reading, found.span, 'not recorded')] : [],
      });
    }
  },
});

/** Whether the placeholder is all that stands behind its key. */
function isAlone(text: string, { start, end }: Span): boolean {
  const lineEnd = text.indexOf('\n', end);
  const before = text.slice(text.lastIndexOf('\n', start - 1) + 1, start);
  return /:\s+$/u.test(before) && text.slice(end, lineEnd < 0 ? text.length : lineEnd).trim() === '';
}

export const aboutPlaceholderLeft: About = () => ({
  why: 'It looks filled in, and says nothing.',
  whatToDo: 'Write what belongs there, or “not recorded”.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: { note: 'findings: TBC' },
  sound: { note: 'findings: dense nucleus, clean capsule' },
});
