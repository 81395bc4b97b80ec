import { haigisA0FromA, personalAcdFromA, surgeonFactorFromA } from '../../calculations/lens-power/constants.ts';
import type { Department } from '@sideport/schemas';
import { departmentCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';
import { rounded } from '../support/words.ts';

const APART = 1.2;
type Constants = NonNullable<NonNullable<Department['lenses']>['items'][number]['constants']>;

export const constantsDisagree = departmentCheck({
  id: 'constants-disagree',
  group: 'department file',
  summary: 'The constants of one lens are far from each other.',
  severity: 'warning',
  allowable: true,
  run: ({ lenses }, say) => {
    for (const { constants, model } of lenses?.items ?? []) {
      const { a } = constants ?? {};
      if (constants === undefined || a === undefined) continue;
      for (const { field, name, value } of expectedFrom(constants, a.value.amount)) {
        if (Math.abs(field.value.amount - value) <= APART) continue;
        say({
          at: field,
          message: `Constants: ${name} ${field.text} of ${model?.text ?? 'this lens'} does not fit its A constant ${a.text}, which stands for about ${rounded(value, 2)}.`,
          related: [related(`A constant: ${a.text}`, a)],
        });
      }
    }
  },
});

export const aboutConstantsDisagree: About = () => ({
  why: 'Constants of the same lens belong to the same position in the eye: a wide gap is a slip of a digit or of the lens.',
  whatToDo: 'Compare all of them with their source. Constants are the responsibility of whoever enters them.',
  source:
    'conversions between constants (Holladay 1988 and others, from memory): SF = 0.5663 A - 65.60, pACD = 0.58357 A - 63.896, a0 = 0.62467 A - 72.434; margin of 1.2 common practice, no source',
  since: '1.0',
  faulty: {
    base: 'department',
    note: 'lenses:\n  - maker: Halden Optics\n    model: HX-1\n    kind: monofocal\n    optic-diameter: 6.0 mm\n    constants:\n      a: 118.9\n      pacd: 8.55\n      a0: 1.10',
  },
  sound: {
    base: 'department',
    note: 'lenses:\n  - maker: Halden Optics\n    model: HX-1\n    kind: monofocal\n    optic-diameter: 6.0 mm\n    constants:\n      a: 118.9\n      pacd: 5.55\n      a0: 1.10',
  },
});

function expectedFrom(constants: Constants, aConstant: number) {
  // With other values of a1 and a2, a0 is another number for the same lens.
  const usualHaigis = (constants.a1?.value.amount ?? 0.4) === 0.4 && (constants.a2?.value.amount ?? 0.1) === 0.1;
  const compared = [
    { field: constants.sf, name: 'the surgeon factor', outcome: surgeonFactorFromA({ aConstant }) },
    { field: constants.pacd, name: 'the pACD', outcome: personalAcdFromA({ aConstant }) },
    { field: usualHaigis ? constants.a0 : undefined, name: 'a0', outcome: haigisA0FromA({ aConstant }) },
  ];
  return compared.flatMap(({ field, name, outcome }) =>
    field === undefined || !outcome.ok ? [] : [{ field, name, value: outcome.value }],
  );
}
