import type { Span } from '@sideport/schemas';
import type { Comment } from '../reading/tree.ts';
import type { Edit } from '../remark.ts';
import { lineBehindMark } from './lines.ts';
import { proposalsIn } from './marks.ts';

/** The part of a comment that was there before the mark of a proposal was put before it; mostly all of it. */
export function ownPart(text: string, { span, text: words }: Comment): Comment {
  const proposals = proposalsIn(words);
  if (proposals === '') return { span, text: words };
  const own = words.slice(proposals.length).trim();
  return own === ''
    ? { span: { start: span.end, end: span.end }, text: '' }
    : { span: { start: text.lastIndexOf(own, span.end), end: span.end }, text: own };
}

/** Takes the mark of a proposal away, and leaves what the comment says besides. */
export function withoutProposal(text: string, comment: Comment): Edit {
  const own = ownPart(text, comment);
  if (own.text === '' || own.span.start === comment.span.start) return withoutComment(text, comment.span);
  return { span: { start: comment.span.start, end: own.span.start }, text: '# ' };
}

/**
 * Takes a comment away, with the blanks before it and, where nothing else stands on its line, the whole line. Of a
 * comment that begins with the mark of a proposal, a part behind it can be taken away.
 */
export function withoutComment(text: string, { start, end }: Span): Edit {
  const line = lineBehindMark(text, start);
  const before = text.slice(line.start, start).replace(/[; \t]+$/u, '');
  const next = text.indexOf('\n', end);
  return before === '' && next >= 0
    ? { span: { start: line.start, end: next + 1 }, text: '' }
    : { span: { start: line.start + before.length, end }, text: '' };
}
