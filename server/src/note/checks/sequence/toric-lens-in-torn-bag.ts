import { operationCheck, type About } from '../check.ts';
import { isToric } from '../support/course.ts';
import { isContradicted } from '../support/torn.ts';
import { related } from '../support/place.ts';

const torn =
  'complications:\n  - what: anterior capsule tear\n    when: capsulotomy\n    account: the edge ran out to the equator\n    action: none possible\n    told: yes';
const toric =
  'preop:\n  biometry:\n    k1: 42.00 D @ 178\n    k2: 44.50 D @ 88\nplan:\n  lens:\n    kind: toric\n    cylinder: +3.00 D\n    axis: 88°\nlens:\n  kind: toric\n  cylinder: +3.00 D\n  axis: 88°';

export const toricLensInTornBag = operationCheck({
  id: 'toric-lens-in-torn-bag',
  group: 'sequence and consequence',
  summary: 'A toric lens was implanted although the capsule does not hold it firmly.',
  severity: 'warning',
  allowable: true,
  run: (note, say) => {
    const { lens, 'capsule-state': state } = note;
    if (lens?.kind === undefined || !isToric(lens.kind.value)) return;
    const against = [
      state?.posterior?.value === 'torn' && !isContradicted(note, 'posterior capsule rupture')
        ? ['the posterior capsule is torn', state.posterior]
        : undefined,
      state?.anterior?.value === 'torn, uncontained' && !isContradicted(note, 'anterior capsule tear')
        ? ['the anterior capsule is torn, uncontained', state.anterior]
        : undefined,
      lens.placed?.value === 'sulcus' ? ['it lies in the sulcus', lens.placed] : undefined,
    ].find((reason) => reason !== undefined) as readonly [string, NonNullable<typeof lens.placed>] | undefined;
    if (against === undefined) return;
    say({
      at: lens.kind,
      message: `Toric lens: it was implanted although ${against[0]}. Will the axis hold?`,
      related: [related(against[0], against[1])],
    });
  },
});

export const aboutToricLensInTornBag: About = () => ({
  why: 'A toric lens corrects only as long as it does not turn; in a torn bag or in the sulcus it turns.',
  whatToDo: 'Correct the one that is wrong, or say why the axis is expected to hold.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: { note: `capsule-state:\n  anterior: torn, uncontained\n${torn}\n${toric}` },
  sound: { note: `capsule-state:\n  anterior: torn, contained\n${torn}\n${toric}` },
});
