import type { ComputedName } from '@sideport/schemas';
import type { ComputedValue } from '../computing/computed.ts';
import type { ComputedLine } from './document.ts';
import { join, longDate } from './english.ts';

/**
 * The computed values that a colleague reads in a record, in the words of a letter. All the others, with inputs and
 * sources, are for whoever asks for them: a letter with fifty numbers is not read.
 */
const IN_THE_RECORD: Partial<Readonly<Record<ComputedName, string>>> = {
  'age-at-operation': 'Age',
  'operation-duration': 'Duration',
  'spherical-equivalent': 'Spherical equivalent',
  'axial-length-class': 'Length of the eye',
  'corneal-astigmatism': 'Corneal astigmatism',
  'astigmatism-kind': 'Kind of corneal astigmatism',
  'expected-corneal-astigmatism': 'Corneal astigmatism expected after the operation',
  'myopic-maculopathy-meaning': 'Meaning of the category of myopic maculopathy',
  'formula-spread': 'Lens powers of the published formulas differ by',
  'prediction-difference': 'Prediction of the print-out less that of the same published formula',
  'residual-astigmatism': 'Astigmatism expected to be left with the lens at this axis',
  'lens-rotation': 'Lens turned from the axis meant',
  'effective-phaco-time': 'Effective ultrasound time',
  'capsulotomy-overlap-least': 'Narrowest overlap of the capsule on the optic',
  'capsulotomy-overlap-most': 'Widest overlap of the capsule on the optic',
  'capsulotomy-covered-share': 'Share of the edge of the capsulotomy that lies on the optic',
  'posterior-capsule-rupture': 'Counts as posterior capsule rupture in the national audit',
  'review-date': 'Review due',
  'days-after-operation': 'Time since the operation',
  'acuity-logmar': 'Acuity',
  'lines-gained': 'Gained since before the operation',
  'prediction-error': 'Refraction achieved less predicted',
  'difference-from-target': 'Refraction achieved less target',
  'induced-astigmatism': 'Corneal astigmatism induced by the operation',
};

/** Said at the foot wherever computed values are shown. */
export const MORE_VALUES =
  'Values marked as computed are a choice; all of them, with inputs, methods and sources, are given by the command compute.';

/** The last step of a path, where it tells two values of one name apart. */
const BY_FIELD: Readonly<Record<string, string>> = {
  uncorrected: 'without correction',
  corrected: 'with the best correction',
  pinhole: 'through a pinhole',
};

/**
 * The computed values that belong in a record, as lines with their cautions.
 * @param reviews what each review of the note looks at, in its order
 */
export function recordedLines(
  values: readonly ComputedValue[],
  reviews: readonly (string | undefined)[] = [],
): readonly ComputedLine[] {
  const names = new Map<string, string | undefined>(Object.entries(IN_THE_RECORD));
  return values.flatMap(({ name, path, display, cautions }) => {
    const words = names.get(name);
    if (words === undefined) return [];
    const field = BY_FIELD[String(path.at(-1))];
    if (name !== 'review-date') return [{ name: join([words, field]), text: display, cautions }];
    const what = typeof path[1] === 'number' ? reviews[path[1]] : undefined;
    return [{ name: join([words, what && `(${what})`]), text: longDate(display), cautions }];
  });
}
