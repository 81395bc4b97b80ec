import type { Field, Keratometry } from '@sideport/schemas';
import { meridionalPolarValue, torsionalPolarValue } from '../../calculations/astigmatism/polar-values.ts';
import { astigmatismKind } from '../../calculations/keratometry/astigmatism-kind.ts';
import { cornealAstigmatism, keratometryAwayFromSquare } from '../../calculations/keratometry/corneal-astigmatism.ts';
import { meanKeratometry } from '../../calculations/keratometry/mean.ts';
import type { Meridian } from '../../calculations/keratometry/meridians.ts';
import { cornealPowerFromRadius, cornealRadiusFromPower } from '../../calculations/keratometry/radius.ts';
import { cornealPowerVector } from '../../calculations/refraction/power-vector.ts';
import type { Cornea } from '../corneas.ts';
import type { Definition } from '../definition.ts';
import type { FollowUpFacts } from '../follow-up-facts.ts';
import { from, known, type Known } from '../known.ts';
import type { OperationFacts } from '../operation-facts.ts';
import { result, spotOf, type Result, type Spot } from '../result.ts';

interface CorneaPlace {
  readonly cornea: Cornea;
  readonly k1: Field<Keratometry> | undefined;
  readonly k2: Field<Keratometry> | undefined;
  /** Where values stand when neither power is written. */
  readonly otherwise: Spot;
  readonly incision: Known<number>;
}

const names = [
  'mean-keratometry',
  'corneal-power',
  'corneal-radius',
  'corneal-astigmatism',
  'astigmatism-kind',
  'keratometry-away-from-square',
  'corneal-power-vector',
  'meridional-polar-value',
  'torsional-polar-value',
] as const;

/** The other way of writing one meridian: a power for a radius, a radius for a power. */
function conversion(field: Field<Keratometry> | undefined, meridian: Known<Meridian>, index: number): Result[] {
  if (field === undefined || !meridian.ok) return [];
  const at = spotOf(field);
  const indexInput = known(index, 'the keratometric index');
  if (field.value.unit === 'mm') {
    const inputs = { radius: known(field.value.amount, 'the radius', 'mm'), index: indexInput };
    return [
      result('corneal-power', at, inputs, (given) =>
        cornealPowerFromRadius({ radiusMm: given.radius, index: given.index }),
      ),
    ];
  }
  const inputs = { power: known(field.value.amount, 'the power', 'D'), index: indexInput };
  return [
    result('corneal-radius', at, inputs, (given) =>
      cornealRadiusFromPower({ powerD: given.power, index: given.index }),
    ),
  ];
}

/** Everything that one keratometry says. */
function corneaResults({ cornea, k1: first, k2: second, otherwise, incision }: CorneaPlace): readonly Result[] {
  const { k1, k2, astigmatism } = cornea;
  const index = known(cornea.index, 'the keratometric index');
  const mean = first === undefined ? otherwise : spotOf(first);
  const at = second === undefined ? mean : spotOf(second);
  const polar = { 'corneal-astigmatism': astigmatism, 'incision-position': incision };
  const steep = from({ astigmatism }, (given) => known(given.astigmatism.axis ?? undefined, 'a steep meridian', '°'));
  const values: Result[] = [
    result('mean-keratometry', mean, { k1, k2, index }, (k) => meanKeratometry({ k1D: k.k1.power, k2D: k.k2.power })),
    result('corneal-astigmatism', at, { k1, k2, index }, cornealAstigmatism),
    result('astigmatism-kind', at, { 'corneal-astigmatism': astigmatism }, (given) =>
      astigmatismKind({ corneal: given['corneal-astigmatism'] }),
    ),
    ...conversion(first, k1, cornea.index),
    ...conversion(second, k2, cornea.index),
  ];
  // What follows says nothing that the three values above have not already said to be missing.
  if (!astigmatism.ok) return values;
  if (k1.ok && k2.ok && k1.value.axis !== null && k2.value.axis !== null)
    values.push(result('keratometry-away-from-square', at, { k1, k2 }, keratometryAwayFromSquare));
  if (steep.ok)
    values.push(
      result('corneal-power-vector', at, { k1, k2, 'steep-meridian': steep }, (k) =>
        cornealPowerVector({ k1D: k.k1.power, k2D: k.k2.power, steepMeridian: k['steep-meridian'] }),
      ),
    );
  if (incision.ok)
    values.push(
      result('meridional-polar-value', at, polar, (given) =>
        meridionalPolarValue({ corneal: given['corneal-astigmatism'], reference: given['incision-position'] }),
      ),
      result('torsional-polar-value', at, polar, (given) =>
        torsionalPolarValue({ corneal: given['corneal-astigmatism'], reference: given['incision-position'] }),
      ),
    );
  return values;
}

export const keratometryBefore: Definition<OperationFacts> = {
  names,
  compute: ({ note, cornea, mainIncision, spot }) => {
    const biometry = note.preop?.biometry;
    return corneaResults({
      cornea,
      k1: biometry?.k1,
      k2: biometry?.k2,
      otherwise: spot(biometry?.$, note.preop?.$),
      incision: mainIncision?.position ?? { ok: false, because: 'no main incision is recorded' },
    });
  },
};

export const keratometryAtVisit: Definition<FollowUpFacts> = {
  names,
  compute: ({ note, cornea, operation }) =>
    note.keratometry === undefined
      ? []
      : corneaResults({
          cornea,
          k1: note.keratometry.k1,
          k2: note.keratometry.k2,
          otherwise: spotOf(note.keratometry.$),
          incision: operation?.mainIncision?.position ?? { ok: false, because: 'no main incision is recorded' },
        }),
};
