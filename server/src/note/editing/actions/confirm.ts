import { lineAt } from '../../edits/lines.ts';
import { withoutProposal } from '../../edits/remove-comment.ts';
import type { ActionSource } from './action.ts';

/** A value that waits for confirmation is confirmed by taking its mark away. */
export const confirmValue: ActionSource = ({ reading }, offset) => {
  const { text, tree } = reading;
  const line = lineAt(text, offset);
  const mark = tree.comments.find(
    ({ span, text: words }) =>
      span.start >= line.start && span.end <= line.end && /^(?:confirm|proposed)\b/u.test(words),
  );
  if (mark === undefined) return [];
  return [
    {
      title: 'Confirm this value: I have checked it',
      safety: 'needs-review',
      edits: [withoutProposal(text, mark)],
    },
  ];
};
