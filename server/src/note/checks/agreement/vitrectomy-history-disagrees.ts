import { operationCheck, type About } from '../check.ts';
import { has } from '../support/course.ts';
import { related } from '../support/place.ts';

export const vitrectomyHistoryDisagrees = operationCheck({
  id: 'vitrectomy-history-disagrees',
  group: 'agreement',
  summary: 'The vitreous is recorded as absent after vitrectomy, but no earlier vitrectomy is listed.',
  severity: 'warning',
  allowable: true,
  run: (note, say) => {
    const vitreous = note['capsule-state']?.vitreous;
    if (vitreous?.value !== 'absent after vitrectomy') return;
    if (
      has(note.comorbidity, 'previous vitrectomy') ??
      has(note.difficulty, 'vitrectomised eye') ??
      has(note.diagnosis?.cataract, 'after vitrectomy')
    )
      return;
    const list = note.comorbidity?.$ ?? note.$.said['comorbidity'];
    if (list === undefined) return;
    say({
      at: vitreous,
      message: 'Vitreous: it is recorded as absent after vitrectomy, but no previous vitrectomy is listed.',
      related: [related('the comorbidity', list)],
    });
  },
});

export const aboutVitrectomyHistoryDisagrees: About = () => ({
  why: 'A vitrectomised eye behaves differently at every step; the risk models count it.',
  whatToDo: 'List “previous vitrectomy” under comorbidity, or correct the state of the vitreous.',
  source: 'Sim et al., Eye 2024 (vitrectomy as risk factor)',
  since: '1.0',
  faulty: { note: 'capsule-state:\n  vitreous: absent after vitrectomy' },
  sound: { note: 'comorbidity: [previous vitrectomy]\ncapsule-state:\n  vitreous: absent after vitrectomy' },
});
