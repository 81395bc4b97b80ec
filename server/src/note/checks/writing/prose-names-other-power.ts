import { operationCheck, type About } from '../check.ts';
import { implantedLens } from '../support/lenses.ts';
import { mention, narrativeOf } from '../support/prose.ts';
import { related } from '../support/place.ts';

const POWER = {
  hints: ['lens', 'iol', 'implant'],
  pattern:
    /(?<![\d./-])([+\-\u2212]\d{1,2}(?:\.\d{1,2})?)\s?(?:D|dioptres?|diopters?)\b(?=[^.;\n]{0,30}\b(?:lens|IOL|implant))|\b(?:lens|IOL|implant)\b[^.;\n]{0,30}?(?<![\d./-])([+\-\u2212]\d{1,2}(?:\.\d{1,2})?)\s?(?:D|dioptres?|diopters?)\b/gu,
};

export const proseNamesOtherPower = operationCheck({
  id: 'prose-names-other-power',
  group: 'writing',
  summary: 'The text names another lens power than the fields.',
  severity: 'warning',
  allowable: true,
  run: (note, say, { reading }) => {
    const power = implantedLens(note)?.power;
    if (power === undefined) return;
    const found = mention(narrativeOf(reading), POWER);
    const stated = found?.match[1] ?? found?.match[2];
    if (found === undefined || stated === undefined) return;
    const amount = Number(stated.replace('\u2212', '-'));
    const others = [power, note.plan?.lens?.power, note.plan?.['spare-lens']?.power];
    if (others.some((field) => field?.value.amount === amount)) return;
    say({
      at: found.place,
      message: `The text names a lens of ${stated} D, but the fields say ${power.text}. Which is right?`,
      related: [related(`the fields: ${power.text}`, power)],
    });
  },
});

export const aboutProseNamesOtherPower: About = () => ({
  why: 'Text is often copied from another note; a wrong power in it raises the question which lens is in the eye.',
  whatToDo: 'Compare with the label of the box, and correct the text or the field.',
  source: 'IOL quality standard (RCOphth and UKOA 2018)',
  since: '1.0',
  faulty: { note: 'free-text: lens of +23.0 D unfolded in the bag' },
  sound: { note: 'free-text: lens of +21.5 D unfolded in the bag' },
});
