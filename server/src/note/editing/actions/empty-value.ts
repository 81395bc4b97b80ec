import { lineAt } from '../../edits/lines.ts';
import { allSpots } from '../spots.ts';
import type { ActionSource } from './action.ts';

/** Behind a field with nothing in it: record that there was none, that it was not done, that it is not known. */
export const recordAbsence: ActionSource = ({ reading }, offset) => {
  const line = lineAt(reading.text, offset);
  const spots = [...allSpots(reading.tree, reading.kind)];
  const { key, node, plan } =
    spots.find(
      (spot) => spot.key !== null && spot.key.start >= line.start && spot.key.end <= line.end && spot.node === null,
    ) ?? {};
  if (!key || node !== null || plan === undefined) return [];
  const colon = reading.text.indexOf(':', key.end) + 1;
  const words = [...(plan.guide.says ?? []), 'not recorded'];
  return words.map((word) => ({
    title: `Record as “${word}”`,
    safety: 'needs-review',
    edits: [{ span: { start: colon, end: colon + blanksAt(reading.text, colon) }, text: ` ${word}` }],
  }));
};

function blanksAt(text: string, offset: number): number {
  return /^[ \t]*/u.exec(text.slice(offset, offset + 200))?.[0].length ?? 0;
}
