import { operationCheck, type About } from '../check.ts';
import { has } from '../support/course.ts';
import { related } from '../support/place.ts';

export const hydrodissectionOfPosteriorPolar = operationCheck({
  id: 'hydrodissection-of-posterior-polar',
  group: 'sequence and consequence',
  summary: 'Cortical hydrodissection is recorded in a posterior polar cataract, or although none was to be done.',
  severity: 'warning',
  allowable: true,
  run: ({ diagnosis, plan, hydrodissection }, say) => {
    const cortex = hydrodissection?.cortex;
    const reason = has(diagnosis?.cataract, 'posterior polar') ?? has(plan?.precautions, 'no hydrodissection');
    if (cortex?.value !== true || reason === undefined) return;
    say({
      at: cortex,
      message: `Hydrodissection: it was done under the capsule, although ${reason.value === 'posterior polar' ? 'the cataract is posterior polar' : 'none was planned'}.`,
      related: [related(reason.value, reason)],
    });
  },
});

export const aboutHydrodissectionOfPosteriorPolar: About = () => ({
  why: 'The capsule under a posterior polar opacity is often weak: fluid under it can burst it.',
  whatToDo: 'Correct the field. If it was done knowingly, allow the remark with the reason.',
  source: 'posterior polar cataract: literature from memory; common practice',
  since: '1.0',
  faulty: { note: 'diagnosis:\n  cataract: [posterior polar]\ndifficulty: [posterior polar cataract]' },
  sound: {
    note: 'diagnosis:\n  cataract: [posterior polar]\ndifficulty: [posterior polar cataract]\nhydrodissection:\n  cortex: no\n  delineation: yes',
  },
});
