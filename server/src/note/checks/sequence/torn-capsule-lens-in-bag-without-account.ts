import { operationCheck, type About } from '../check.ts';
import { complicationOf } from '../support/course.ts';
import { isContradicted } from '../support/torn.ts';
import { related } from '../support/place.ts';

export const tornCapsuleLensInBagWithoutAccount = operationCheck({
  id: 'torn-capsule-lens-in-bag-without-account',
  group: 'sequence and consequence',
  summary: 'The posterior capsule was torn, the lens lies in the bag, and nothing says why that was safe.',
  severity: 'warning',
  allowable: true,
  run: (note, say) => {
    const posterior = note['capsule-state']?.posterior;
    const placed = note.lens?.placed;
    if (posterior?.value !== 'torn' || placed?.value !== 'capsular bag') return;
    if (isContradicted(note, 'posterior capsule rupture')) return;
    const rupture = complicationOf(note, 'posterior capsule rupture');
    if (note['capsule-state']?.text !== undefined || rupture?.account !== undefined || rupture?.extent !== undefined)
      return;
    if (note.lens?.text !== undefined) return;
    say({
      at: placed,
      message:
        'Lens: it lies in the capsular bag although the posterior capsule was torn, and nothing says why the bag could hold it.',
      related: [related('the posterior capsule: torn', posterior)],
    });
  },
});

export const aboutTornCapsuleLensInBagWithoutAccount: About = () => ({
  why: 'A bag with a tear holds a lens only when the tear is small, central and rounded; the next surgeon must know.',
  whatToDo:
    'Say in the account of the complication, or in words with the capsule, how large the tear was and why the bag could hold the lens.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: {
    note: 'capsule-state:\n  posterior: torn\n  vitreous: not prolapsed\ncomplications:\n  - what: posterior capsule rupture\n    when: polishing\n    action: dispersive viscoelastic\n    told: yes\nreviews:\n  - what: pressure and wound\n    due: 1 day\n  - what: dilated retina\n    due: 4 weeks',
  },
  sound: {
    note: 'capsule-state:\n  posterior: torn\n  vitreous: not prolapsed\n  text: central tear of 1.5 mm, rounded off, vitreous face intact\ncomplications:\n  - what: posterior capsule rupture\n    when: polishing\n    action: dispersive viscoelastic\n    account: the tip caught the capsule while polishing\n    told: yes\nreviews:\n  - what: pressure and wound\n    due: 1 day\n  - what: dilated retina\n    due: 4 weeks',
  },
});
