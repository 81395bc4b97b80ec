import type { Operation } from '@sideport/schemas';
import { operationCheck, type CheckContext, type About } from '../check.ts';
import { mainIncision } from '../support/course.ts';
import { comparedSite } from '../support/incision-site.ts';
import { related } from '../support/place.ts';
import { incisionOffSteep } from '../support/steep.ts';
import { rounded } from '../support/words.ts';

const SITE_APART = 30;
const WIDTH_APART = 0.35;

export const incisionDiffersFromPlan = operationCheck({
  id: 'incision-differs-from-plan',
  group: 'agreement',
  summary: 'The main incision lies elsewhere than planned, or is wider or narrower.',
  severity: 'warning',
  allowable: true,
  run: (note, say, context) => {
    const main = mainIncision(note);
    if (main === undefined || main.text !== undefined) return;
    const site = siteDifference(note, context);
    if (site !== undefined) {
      say({
        at: site.made,
        message: `Incision: it was made ${site.made.text}, but ${site.expected.text} was planned (${rounded(site.apart, 0)}° away).`,
        related: [related(`planned: ${site.expected.text}`, site.expected)],
      });
      return;
    }
    const planned = note.plan?.incision?.width;
    if (planned === undefined || main.width === undefined) return;
    if (Math.abs(planned.value.amount - main.width.value.amount) <= WIDTH_APART) return;
    say({
      at: main.width,
      message: `Incision: ${main.width.text} wide, but ${planned.text} was planned.`,
      related: [related(`planned: ${planned.text}`, planned)],
    });
  },
});

export const aboutIncisionDiffersFromPlan: About = () => ({
  why: 'The expected astigmatism was computed for the planned site and width.',
  whatToDo: 'Correct the one that is wrong, or say in “text” of the incision why it was changed.',
  source:
    'Naeser, J Refract Surg 2002;18:72 (effect grows with width); limits of 30° and 0.35 mm common practice, no source',
  since: '1.0',
  faulty: {
    note: 'seat: superior\nincisions:\n  - kind: main\n    at: superior\n    width: 2.4 mm\n    plane: clear corneal',
  },
  sound: {
    note: 'seat: superior\nincisions:\n  - kind: main\n    at: superior\n    width: 2.4 mm\n    plane: clear corneal\n    text: deep-set eye, moved to 12',
  },
});

/** A site elsewhere on the eye; mirrored sides and the steep meridian have checks of their own. */
function siteDifference(note: Operation, context: CheckContext) {
  const site = comparedSite(note, 'plan');
  if (site === undefined || site.mirrored || site.apart <= SITE_APART) return undefined;
  return incisionOffSteep(note, context) === undefined ? site : undefined;
}
