import type { Department } from '@sideport/schemas';
import type { PresentConstants } from './constants.ts';
import type { PresentEffect } from './incision-effects.ts';
import type { PresentDepartment } from './learn.ts';

type Staff = NonNullable<Department['staff']>['items'][number];

function effectsOf({ ref, 'incision-effect': effects }: Staff): readonly PresentEffect[] {
  return (effects?.items ?? []).flatMap(({ site, width, flattening }) => {
    const where = site?.value;
    // Only sector words can be compared with the groups of the audit.
    if (ref === undefined || where?.kind !== 'word' || width === undefined || flattening === undefined) return [];
    return [
      { surgeon: ref.value, site: where.word, widthMm: width.value.amount, flatteningD: flattening.value.amount },
    ];
  });
}

const CONSTANTS = ['a', 'sf', 'pacd', 'a0'] as const;

/** What a department file says of incision effects and lens constants. */
export function presentIn(department: Department | null): PresentDepartment {
  const lenses = (department?.lenses?.items ?? []).flatMap(({ model, constants }) => {
    if (model === undefined || constants === undefined) return [];
    const own = CONSTANTS.flatMap((key) => {
      const amount = constants[key]?.value.amount;
      return amount === undefined ? [] : [[key, amount] as const];
    });
    return [[model.value, Object.fromEntries(own)] as const];
  });
  const constants: PresentConstants = Object.fromEntries(lenses);
  return { effects: (department?.staff?.items ?? []).flatMap(effectsOf), constants };
}
