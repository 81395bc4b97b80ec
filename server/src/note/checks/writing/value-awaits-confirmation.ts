import { textCheck, type About } from '../check.ts';
import { deletingComment } from '../support/fixes.ts';
import { markedText, marksOf } from '../support/comments.ts';

export const valueAwaitsConfirmation = textCheck({
  id: 'value-awaits-confirmation',
  group: 'writing',
  summary: 'A value of a final note is marked as to be confirmed.',
  severity: 'error',
  allowable: false,
  run: (reading, say, { status }) => {
    if (status !== 'final') return;
    for (const mark of marksOf(reading, /^confirm\b/iu)) {
      const what = markedText(reading, mark);
      say({
        at: mark.span,
        message: `${what === '' ? 'The line below' : `“${what}”`} still awaits confirmation. Compare it with its source, then delete the mark.`,
        fixes: [deletingComment(reading, mark.span, 'Confirmed: delete the mark', 'needs-review')],
      });
    }
  },
});

export const aboutValueAwaitsConfirmation: About = () => ({
  why: 'It came from dictation or memory and nobody has looked at it yet: it must not be signed as it stands.',
  whatToDo: 'Compare the value with its source; then delete the mark “# confirm”.',
  source: 'RCS Good Surgical Practice 2014, 1.3 (entries the signer answers for)',
  since: '1.0',
  faulty: { note: 'urgency: elective # confirm' },
  sound: { note: 'urgency: elective' },
});
