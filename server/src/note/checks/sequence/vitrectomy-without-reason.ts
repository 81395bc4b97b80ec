import { operationCheck, type About } from '../check.ts';
import { headOf, related } from '../support/place.ts';

export const vitrectomyWithoutReason = operationCheck({
  id: 'vitrectomy-without-reason',
  group: 'sequence and consequence',
  summary: 'A vitrectomy is recorded, but the vitreous is said not to have prolapsed and the capsule to be intact.',
  severity: 'warning',
  allowable: true,
  run: ({ vitrectomy, 'capsule-state': state }, say, context) => {
    if (vitrectomy === undefined || vitrectomy.text !== undefined || context.status === 'planned') return;
    if (state?.vitreous?.value !== 'not prolapsed' || state.posterior?.value !== 'intact') return;
    say({
      at: headOf(vitrectomy.$, context),
      message:
        'Vitrectomy: it is recorded, but the vitreous did not prolapse and the posterior capsule is intact. Why was it done?',
      related: [
        related('the vitreous: not prolapsed', state.vitreous),
        related('the posterior capsule: intact', state.posterior),
      ],
    });
  },
});

export const aboutVitrectomyWithoutReason: About = () => ({
  why: 'A vitrectomy is an extra procedure: the record has to say why it was done.',
  whatToDo: 'Correct the state of capsule or vitreous, or say in words why the vitrectomy was done.',
  source: 'RCS Good Surgical Practice 2014, 1.3 (extra procedure and the reason)',
  since: '1.0',
  faulty: { note: 'vitrectomy:\n  approach: anterior\n  complete: yes' },
  sound: {
    note: 'vitrectomy:\n  approach: pars plana\n  complete: yes\n  text: to lower the pressure in a crowded chamber',
  },
});
