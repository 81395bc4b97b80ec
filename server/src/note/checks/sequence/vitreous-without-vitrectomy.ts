import { operationCheck, type About } from '../check.ts';
import { complicationOf } from '../support/course.ts';
import { isContradicted } from '../support/torn.ts';
import { related } from '../support/place.ts';

export const vitreousWithoutVitrectomy = operationCheck({
  id: 'vitreous-without-vitrectomy',
  group: 'sequence and consequence',
  summary: 'Vitreous came forward, and no vitrectomy is recorded.',
  severity: 'unfinished',
  allowable: true,
  run: (note, say) => {
    const vitreous = note['capsule-state']?.vitreous;
    if (vitreous?.value !== 'prolapsed' || note.vitrectomy !== undefined) return;
    if (isContradicted(note, 'vitreous loss')) return;
    if (complicationOf(note, 'vitreous loss')?.action !== undefined) return;
    const said = note.$.said['vitrectomy'];
    say({
      at: vitreous,
      message: `Vitreous: it prolapsed, but no vitrectomy is recorded${said === undefined ? '' : ' (“' + said.word + '”)'}, and nothing says how the vitreous was dealt with.`,
      related: said === undefined ? [] : [related(`vitrectomy: ${said.word}`, said)],
    });
  },
});

export const aboutVitreousWithoutVitrectomy: About = () => ({
  why: 'Vitreous left in the chamber pulls on the retina and the wound; if it was dealt with otherwise, the record must say how.',
  whatToDo: 'Record the vitrectomy, or say in “action” of the complication how the vitreous was dealt with.',
  source: 'RCS Good Surgical Practice 2014, 1.3 (extra procedure and the reason)',
  since: '1.0',
  faulty: {
    note: 'capsule-state:\n  zonule: ruptured\n  zonule-extent: 2 clock hours\n  vitreous: prolapsed\n  vitreous-in-wound: no\ncomplications:\n  - what: zonular dialysis\n    when: nucleus\n    account: two hours of zonule gave way\n    told: yes\n  - what: vitreous loss\n    when: nucleus\n    account: a strand came round the equator\n    told: yes\nreviews:\n  - what: pressure and wound\n    due: 1 day\n  - what: dilated retina\n    due: 2 weeks',
  },
  sound: {
    note: 'capsule-state:\n  zonule: ruptured\n  zonule-extent: 2 clock hours\n  vitreous: prolapsed\n  vitreous-in-wound: no\nvitrectomy:\n  approach: anterior\n  stain: triamcinolone\n  complete: yes\ncomplications:\n  - what: zonular dialysis\n    when: nucleus\n    account: two hours of zonule gave way\n    action: dispersive viscoelastic\n    told: yes\n  - what: vitreous loss\n    when: nucleus\n    account: a strand came round the equator\n    action: anterior vitrectomy\n    told: yes\nreviews:\n  - what: pressure and wound\n    due: 1 day\n  - what: dilated retina\n    due: 2 weeks',
  },
});
