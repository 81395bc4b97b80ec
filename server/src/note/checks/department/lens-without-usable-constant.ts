import { departmentCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';
import { listed } from '../support/words.ts';

/** The constant that each published formula takes. */
const constantOf: Readonly<Record<string, 'a' | 'sf' | 'pacd' | 'a0'>> = {
  'SRK/T': 'a',
  T2: 'a',
  'Holladay 1': 'sf',
  'Hoffer Q': 'pacd',
  Haigis: 'a0',
};

export const lensWithoutUsableConstant = departmentCheck({
  id: 'lens-without-usable-constant',
  group: 'department file',
  summary: 'A listed lens has no constant of its own for any of the preferred formulas.',
  severity: 'warning',
  allowable: true,
  run: ({ formulas, lenses }, say) => {
    const preferred = (formulas?.items ?? []).flatMap(({ value }) => (constantOf[value] === undefined ? [] : [value]));
    if (formulas === undefined || preferred.length === 0) return;
    for (const { constants, model } of lenses?.items ?? []) {
      if (constants === undefined || preferred.some((formula) => constants[constantOf[formula] ?? 'a'] !== undefined))
        continue;
      say({
        at: model ?? constants.$,
        message: `Constants: ${model?.text ?? 'a lens'} has none of its own for ${listed(preferred, 'or')}, which ${preferred.length === 1 ? 'is' : 'are'} preferred.`,
        related: [related(`preferred: ${listed(preferred)}`, formulas.$)],
      });
    }
  },
});

export const aboutLensWithoutUsableConstant: About = () => ({
  why: 'A constant converted from another formula is a starting value only; predictions with it are worse.',
  whatToDo: 'Enter the constant optimised for this lens and this biometry, or prefer a formula it has one for.',
  source:
    'Hoffer et al., Am J Ophthalmol 2015;160:403-5 (optimised constants); constants must not be mixed between formulas',
  since: '1.0',
  faulty: {
    base: 'department',
    note: 'formulas: [Hoffer Q, Holladay 1]\nlenses:\n  - maker: Halden Optics\n    model: HX-1\n    kind: monofocal\n    optic-diameter: 6.0 mm\n    constants:\n      a: 118.9',
  },
  sound: {
    base: 'department',
    note: 'formulas: [SRK/T, Hoffer Q]\nlenses:\n  - maker: Halden Optics\n    model: HX-1\n    kind: monofocal\n    optic-diameter: 6.0 mm\n    constants:\n      a: 118.9',
  },
});
