import { operationCheck, type About } from '../check.ts';
import { askedForBy, practice, rcs } from '../support/completeness.ts';
import { wasAbandoned } from '../support/course.ts';
import { missingIn } from '../support/missing-fields.ts';
import { headOf, placeOfMissing } from '../support/place.ts';
import { listed } from '../support/words.ts';
import { isWritten } from '../support/written.ts';

const ofMain = [
  ['at', 'the site'],
  ['width', 'the width'],
  ['plane', 'whether it is corneal, limbal or scleral'],
] as const;
const ofOthers = [['at', 'the site']] as const;

export const incisionIncomplete = operationCheck({
  id: 'incision-incomplete',
  group: 'completeness',
  summary: 'The main incision is not recorded, or an incision has no site or width.',
  severity: 'unfinished',
  allowable: true,
  run: (note, say, context) => {
    if (context.status === 'planned' || wasAbandoned(note)) return;
    const incisions = note.incisions?.items ?? [];
    const isMissing = !incisions.some(({ kind }) => kind?.value === 'main');
    if (
      isMissing &&
      !incisions.some(({ kind }) => kind === undefined) &&
      (note.incisions !== undefined || !isWritten(context.reading, ['incisions']))
    ) {
      say({
        at: note.incisions === undefined ? placeOfMissing(context) : headOf(note.incisions.$, context),
        message: `Incisions: the note does not record the main incision. ${askedForBy([{ by: [rcs] }])}`,
      });
      return;
    }
    for (const incision of incisions) {
      const isMain = incision.kind?.value === 'main';
      const missing = isMain ? missingIn(incision, ofMain, context) : missingIn(incision, ofOthers, context);
      if (missing.length === 0) continue;
      say({
        at: headOf(incision.$, context),
        ...(isMain ? {} : { severity: 'info' as const }),
        message: `Incisions: ${listed(missing)} of the ${incision.kind?.value ?? ''} incision ${missing.length === 1 ? 'is' : 'are'} missing. ${askedForBy([{ by: [isMain ? rcs : practice] }])}`,
      });
    }
  },
});

export const aboutIncisionIncomplete: About = () => ({
  why: 'Site and width are what the induced astigmatism is computed from.',
  whatToDo: 'Record every opening of the eye with its site, the main one with its width and plane as well.',
  source: `${rcs} (incision)`,
  since: '1.0',
  faulty: { note: 'incisions:\n  - kind: main\n    at: temporal\n    plane: clear corneal' },
  sound: { note: 'incisions:\n  - kind: main\n    at: temporal\n    width: 2.4 mm\n    plane: clear corneal' },
});
