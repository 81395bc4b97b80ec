import { textCheck, type About } from '../check.ts';
import { replacingPart } from '../support/fixes.ts';
import { walk } from '../support/values.ts';

const ZERO = /(?<=(?:[@x×]|at|axis)\s*)0+(?:\.0+)?(?=\s*°?$)/iu;

export const axisWrittenZero = textCheck({
  id: 'axis-written-zero',
  group: 'writing',
  summary: 'An axis is written as 0 instead of 180.',
  severity: 'info',
  allowable: true,
  run: (reading, say) => {
    for (const { field, plan, style } of walk(reading).values) {
      const { name } = plan.notation;
      const isAxis = name === 'keratometry' || name === 'refraction' || field.path.at(-1) === 'axis';
      if (!isAxis || style !== 'plain') continue;
      const match =
        field.path.at(-1) === 'axis' ? /^0+(?:\.0+)?(?=\s*(?:°|deg|$))/u.exec(field.text) : ZERO.exec(field.text);
      if (match === null) continue;
      say({
        at: field,
        message: `${plan.guide.label}: the axis of ${field.text} is written as 0; the same meridian is written 180, so that an axis that was forgotten is not taken for one.`,
        fixes: replacingPart(reading, field, { index: match.index, length: match[0].length }, '180'),
      });
    }
  },
});

export const aboutAxisWrittenZero: About = () => ({
  why: 'A zero may stand for the horizontal meridian or for an axis that nobody typed.',
  whatToDo: 'Write 180 for the horizontal meridian; leave the axis out where there is no cylinder.',
  source: 'ISO 8429:1986 (0 is written 180)',
  since: '1.0',
  faulty: { note: 'preop:\n  biometry:\n    k1: 43.00 D @ 0\n    k2: 43.75 D @ 90' },
  sound: { note: 'preop:\n  biometry:\n    k1: 43.00 D @ 180\n    k2: 43.75 D @ 90' },
});
