import { ABSENT_WORDS, pupilAidWords } from './capsule-words.ts';
import { hookSample } from './incisions.ts';
import type { Part } from './part.ts';
import type { Scene, Written } from './scene.ts';
import type { Point } from './svg.ts';

/** What the note says and the drawing cannot show: in the list, in words. */
export function saidParts({ absent, pupilAids, incisions }: Scene): readonly Part[] {
  const hooks = incisions?.filter(({ hook }) => hook === true).length ?? 0;
  return [
    ...(pupilAids ?? []).map((aid) => ({
      ...said(pupilAidWords(aid, hooks), aid),
      sample: (at: Point) => (aid.kind === 'iris hooks' && hooks > 0 ? hookSample(at) : ''),
    })),
    ...(absent ?? []).map((one) => said(ABSENT_WORDS[one.part], one)),
  ];
}

function said(words: string, from: Written): Part {
  return { words, from, mark: '', sample: () => '', spots: [], incomplete: false };
}
