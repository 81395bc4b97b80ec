import { operationCheck, type About } from '../check.ts';
import { apart, positionOn } from '../support/measurements.ts';
import { related } from '../support/place.ts';
import { certainEye } from '../support/sides.ts';
import { rounded } from '../support/words.ts';

const CLOSEST = 15;

export const incisionsInOnePlace = operationCheck({
  id: 'incisions-in-one-place',
  group: 'plausibility',
  summary: 'Two incisions lie in the same place.',
  severity: 'warning',
  allowable: true,
  run: (note, say) => {
    const eye = certainEye(note);
    if (eye === undefined) return;
    const sites = (note.incisions?.items ?? []).flatMap(({ at, kind }) => {
      const position =
        at === undefined || kind?.value === 'relaxing' ? undefined : positionOn(at.value, eye, note.seat);
      return at === undefined || position === undefined ? [] : [{ at, position }];
    });
    for (const [i, { at, position }] of sites.entries()) {
      const near = sites.slice(0, i).find((other) => apart(other.position, position) < CLOSEST);
      if (near === undefined) continue;
      say({
        at,
        message: `Incisions: ${at.text} and ${near.at.text} are ${rounded(apart(near.position, position), 0)}° apart, in the same place. Is one of them mistyped?`,
        related: [related(`the other one: ${near.at.text}`, near.at)],
      });
    }
  },
});

export const aboutIncisionsInOnePlace: About = () => ({
  why: 'Two wounds a few degrees apart would run into each other: one of the sites is mistyped.',
  whatToDo: 'Correct the site that is wrong.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: {
    note: 'incisions:\n  - kind: main\n    at: temporal\n    width: 2.4 mm\n    plane: clear corneal\n  - kind: side-port\n    at: 175°\n    width: 1.0 mm',
  },
  sound: {
    note: 'incisions:\n  - kind: main\n    at: temporal\n    width: 2.4 mm\n    plane: clear corneal\n  - kind: side-port\n    at: 115°\n    width: 1.0 mm',
  },
});
