import { insertValues } from '../../edits/insert-values.ts';
import { lineAt } from '../../edits/lines.ts';
import { allSpots } from '../spots.ts';
import type { ActionSource } from './action.ts';

/** Behind a field with nothing in it: record that there was none, that it was not done, that it is not known. */
export const recordAbsence: ActionSource = ({ reading }, offset) => {
  const line = lineAt(reading.text, offset);
  const spots = [...allSpots(reading.tree, reading.kind)];
  const spot = spots.find(
    ({ key, node }) => key !== null && key.start >= line.start && key.end <= line.end && node === null,
  );
  if (spot?.plan === undefined) return [];
  const words = [...(spot.plan.guide.says ?? []), 'not recorded'];
  return words.map((word) => ({
    title: `Record as “${word}”`,
    safety: 'needs-review',
    edits: insertValues(reading, [{ path: spot.path, value: word, as: 'value' }]),
  }));
};
