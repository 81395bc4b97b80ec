import { siteAt } from '../../calculations/position/site.ts';
import { operationCheck, type About } from '../check.ts';
import { mainIncision } from '../support/course.ts';
import { apart, positionOn } from '../support/measurements.ts';
import { mention, narrativeOf } from '../support/prose.ts';
import { related } from '../support/place.ts';
import { certainEye } from '../support/sides.ts';

const SITE = {
  hints: ['incision', 'wound', 'section', 'tunnel'],
  pattern:
    /\b(?:superior|inferior)?(temporal|nasal|superior|inferior|superotemporal|superonasal|inferotemporal|inferonasal)(?:ly)? (?:main |clear corneal |corneal )?(?:incision|wound|section|tunnel)\b/giu,
};

export const proseNamesOtherSite = operationCheck({
  id: 'prose-names-other-site',
  group: 'writing',
  summary: 'The text names another site of the main incision than the fields.',
  severity: 'warning',
  allowable: true,
  run: (note, say, { reading }) => {
    const main = mainIncision(note)?.at;
    const eye = certainEye(note);
    if (main === undefined || eye === undefined) return;
    const found = mention(narrativeOf(reading), SITE);
    const word = /(?:supero|infero)?(?:temporal|nasal)|superior|inferior/iu.exec(found?.text ?? '')?.[0].toLowerCase();
    const position = positionOn(main.value, eye, note.seat);
    if (found === undefined || word === undefined || position === undefined) return;
    const here = siteAt(position, eye);
    const named = positionOn({ kind: 'word', word: word as typeof here }, eye);
    if (named === undefined || apart(named, position) <= 45) return;
    say({
      at: found.place,
      message: `The text says “${found.text}”, but the main incision is recorded ${main.value.kind === 'word' ? main.text : `at ${main.text} (${here})`}. Which is right?`,
      related: [related(`the main incision: ${main.text}`, main)],
    });
  },
});

export const aboutProseNamesOtherSite: About = () => ({
  why: 'The site decides the astigmatism; nasal for temporal may mean that the side is wrong.',
  whatToDo: 'Read the sentence, and correct the text or the field.',
  source: 'ISO 8429:1986 (dial)',
  since: '1.0',
  faulty: { note: 'free-text: superior incision, uneventful' },
  sound: { note: 'free-text: temporal incision, uneventful' },
});
