import type { Operation } from '@sideport/schemas';
import { operationCheck, type About } from '../check.ts';
import { differs, differsFromVerified, implantedLens, isOtherLens, plannedLens, sameName } from '../support/lenses.ts';
import { related } from '../support/place.ts';

export const implantedLensDiffersFromPlan = operationCheck({
  id: 'implanted-lens-differs-from-plan',
  group: 'agreement',
  summary: 'Another lens was implanted than planned, and no reason is given.',
  severity: 'error',
  allowable: true,
  run: (note, say) => {
    const [lens, planned] = [implantedLens(note), plannedLens(note)];
    if (lens === undefined || planned === undefined || lens['changed-because'] !== undefined) return;
    if (!isOtherLens(note) || differsFromVerified(note)) return;
    const key = differs(planned.model, lens.model, sameName)
      ? 'model'
      : differs(planned.maker, lens.maker, sameName)
        ? 'maker'
        : 'kind';
    const [at, other] = [lens[key], planned[key]];
    if (at === undefined || other === undefined) return;
    say({
      at,
      message: `Lens: ${nameOf(lens, key)} was implanted, but ${nameOf(planned, key)} was planned, and no reason is given.${spareHint(note)}`,
      related: [related(`planned: ${nameOf(planned, key)}`, other)],
    });
  },
});

export const aboutImplantedLensDiffersFromPlan: About = () => ({
  why: 'Either the lens was changed on purpose, as after a capsule tear, and then the reason belongs in the record, or a wrong lens is in the eye.',
  whatToDo: 'Compare with the label of the box. If the lens was changed on purpose, say why in “changed-because”.',
  source: 'IOL quality standard (RCOphth and UKOA 2018)',
  since: '1.0',
  faulty: { note: 'plan:\n  lens:\n    model: HX-3' },
  sound: {
    note: 'plan:\n  lens:\n    model: HX-3\nlens:\n  changed-because: HX-3 of this power was not in stock',
  },
});

type Named = Pick<NonNullable<Operation['lens']>, 'maker' | 'model' | 'kind' | 'power'>;

function nameOf(lens: Named, key: 'maker' | 'model' | 'kind'): string {
  return [lens[key]?.text, lens.power?.text].filter((text) => text !== undefined).join(' ');
}

function spareHint(note: Operation): string {
  const spare = note.plan?.['spare-lens'];
  return spare?.model !== undefined &&
    note.lens?.model !== undefined &&
    sameName(spare.model.value, note.lens.model.value)
    ? ' It is the spare lens of the plan.'
    : '';
}
