import { followUpCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';

export const visitReportsOtherLens = followUpCheck({
  id: 'visit-reports-other-lens',
  group: 'side and identity',
  summary: 'The visit reports another lens power than the operation recorded.',
  severity: 'error',
  allowable: false,
  run: ({ lens }, say, { operation, operationFile }) => {
    const implanted = operation?.lens?.power;
    if (lens?.power === undefined || implanted === undefined || lens.power.value.amount === implanted.value.amount)
      return;
    say({
      at: lens.power,
      message: `Lens: this visit reports ${lens.power.text}, but the operation recorded ${implanted.text}.`,
      related: [related(`implanted: ${implanted.text}`, implanted, operationFile)],
    });
  },
});

export const aboutVisitReportsOtherLens: About = () => ({
  why: 'Either one of the two is a slip, or the lens in the eye is not the one in the record.',
  whatToDo: 'Look at the implant card and at the label kept with the operation.',
  source: 'IOL quality standard (RCOphth and UKOA 2018)',
  since: '1.0',
  faulty: { base: 'follow-up', note: 'lens:\n  power: +22.5 D' },
  sound: { base: 'follow-up', note: 'lens:\n  power: +21.5 D' },
});
