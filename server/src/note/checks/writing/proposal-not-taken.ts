import { textCheck, type About } from '../check.ts';
import { deletingComment } from '../support/fixes.ts';
import { marksOf } from '../support/comments.ts';

export const proposalNotTaken = textCheck({
  id: 'proposal-not-taken',
  group: 'writing',
  summary: 'A final note still has an open proposal of the dictation.',
  severity: 'error',
  allowable: false,
  run: (reading, say, { status }) => {
    if (status !== 'final') return;
    for (const { span } of marksOf(reading, /^proposed\b/iu)) {
      const proposal = reading.text
        .slice(span.start, span.end)
        .replace(/^#\s*proposed\s*/iu, '')
        .trim();
      say({
        at: span,
        message: `A proposal is still open: “${proposal}”. Take it over as a field, or delete the comment.`,
        fixes: [deletingComment(reading, span, 'Delete the proposal', 'needs-review')],
      });
    }
  },
});

export const aboutProposalNotTaken: About = () => ({
  why: 'The dictation said something that could not be filled in by itself; as a comment it is not part of the record.',
  whatToDo: 'Take the proposal over as a field, or delete the comment.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: { note: '# proposed dye: trypan blue\ndye: none' },
  sound: { note: 'dye: none' },
});
