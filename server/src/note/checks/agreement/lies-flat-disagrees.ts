import { operationCheck, type About } from '../check.ts';
import { has } from '../support/course.ts';
import { related } from '../support/place.ts';

export const liesFlatDisagrees = operationCheck({
  id: 'lies-flat-disagrees',
  group: 'agreement',
  summary: 'Whether the patient can lie flat is answered in two ways.',
  severity: 'warning',
  allowable: true,
  run: ({ patient, difficulty }, say) => {
    const flat = patient?.['lies-flat'];
    const unable = has(difficulty, 'unable to lie flat');
    if (flat?.value !== true || unable === undefined) return;
    say({
      at: unable,
      message: 'Difficulty: “unable to lie flat” is listed, but the patient is said to lie flat.',
      related: [related('lies flat: yes', flat)],
    });
  },
});

export const aboutLiesFlatDisagrees: About = () => ({
  why: 'It decides table, seat and anaesthesia, and it is a risk factor in the models.',
  whatToDo: 'Correct the one that is wrong.',
  source: 'Narendran et al., Eye 2009;23:31-7 (risk factor)',
  since: '1.0',
  faulty: { note: 'difficulty: [unable to lie flat]' },
  sound: { note: 'patient:\n  lies-flat: no\ndifficulty: [unable to lie flat]' },
});
