import { operationCheck, type About } from '../check.ts';
import { composeNote } from '../examples/compose.ts';
import { longEye } from '../examples/scenarios.ts';
import { longLength } from '../support/measurements.ts';
import { isWritten } from '../support/written.ts';
import { headOf, related } from '../support/place.ts';

export const longEyeWithoutCounselling = operationCheck({
  id: 'long-eye-without-counselling',
  group: 'sequence and consequence',
  summary: 'Nothing records that a patient with a long eye was told of the risk of retinal detachment.',
  severity: 'info',
  allowable: true,
  run: (note, say, context) => {
    const length = longLength(note, context);
    const { preop } = note;
    if (length === undefined || preop === undefined || preop.$.said['counselling']?.word === 'not recorded') return;
    if (
      preop.counselling === undefined &&
      preop.$.said['counselling'] === undefined &&
      isWritten(context.reading, ['preop', 'counselling'])
    )
      return;
    if (preop.counselling?.items.some(({ value }) => /retina|detach/iu.test(value)) === true) return;
    say({
      at: headOf(preop.counselling?.$ ?? preop.$.said['counselling'] ?? preop.$, context),
      message: `Counselling: the eye is ${length.text} long, but nothing is recorded of the risk of retinal detachment.`,
      related: [related(`axial length: ${length.text}`, length)],
    });
  },
});

export const aboutLongEyeWithoutCounselling: About = () => ({
  why: 'It is the risk that a highly myopic patient would most want to know, and the warning signs have to be known for life.',
  whatToDo: 'Record it under “counselling” when it was said; if it was not, say it and write a late entry.',
  source: 'Laube 2017, PLoS One (10.2 % for 25 to 28.9 mm under 61 years); duty to inform, common practice',
  since: '1.0',
  faulty: { note: composeNote(longEye, 'preop:\n  counselling:\n    - glasses for reading afterwards') },
  sound: { note: longEye },
});
