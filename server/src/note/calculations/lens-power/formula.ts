import { calculation, type Calculation, type Example } from '../calculation.ts';
import { choice, optional, quantity, type Field } from '../fields.ts';
import { found, refused, type Answer, type Source } from '../outcome.ts';
import { powerForRefraction, refractionForPower, type ThinLensEye } from './vergence.ts';

/** What every formula needs: axial length (mm) and mean keratometry (D, index 1.3375). */
export interface MeasuredEye {
  readonly axialLengthMm: number;
  readonly meanKeratometryD: number;
  /** The length given is one adjusted for long eyes, not the measured one. */
  readonly lengthAdjusted?: boolean;
  /** The constant given is one published for minus powers. */
  readonly constantForMinus?: boolean;
}

/** A formula's reading of one eye, with what must be said of it. */
export interface Reading extends ThinLensEye {
  readonly cautions: readonly string[];
}

export interface LensFormula<E extends MeasuredEye> {
  /** As the trade writes it, for instance `SRK/T`. */
  readonly title: string;
  /** As names of computed values write it, for instance `srk-t`. */
  readonly slug: string;
  readonly power: Calculation<E & { targetD: number }, number>;
  readonly refraction: Calculation<E & { powerD: number }, number>;
  readonly position: Calculation<E, number>;
}

export interface FormulaDefinition<E extends MeasuredEye> {
  readonly title: string;
  readonly slug: string;
  /** The measurements, the constants and whatever else this formula needs. */
  readonly inputs: Readonly<Record<keyof E & string, Field>>;
  readonly domain: string;
  /** The algebra, written out. */
  readonly method: string;
  readonly source: Source;
  /** Whether eyes over 26 mm tend to be left hyperopic without an adjusted axial length. */
  readonly hyperopicInLongEyes: boolean;
  readonly example: {
    readonly eye: E;
    readonly targetD: number;
    readonly gives: number;
    readonly powerD: number;
    readonly leaves: number;
    readonly position: number;
  };
  readonly read: (eye: E) => Reading;
}

export const AXIAL_LENGTH = quantity('axial length', 'mm', 14, 40);
export const MEAN_KERATOMETRY = quantity('mean keratometry', 'D', 30, 60);
export const LENS_POWER = quantity('lens power', 'D', -30, 60);
/** The inputs of a MeasuredEye. */
export const MEASUREMENTS = {
  axialLengthMm: AXIAL_LENGTH,
  meanKeratometryD: MEAN_KERATOMETRY,
  lengthAdjusted: optional(choice('length adjusted for long eyes', [true, false])),
  constantForMinus: optional(choice('constant for minus powers', [true, false])),
};
const TARGET = quantity('target refraction', 'D', -20, 10);
const LONG_EYE = 26;
const LOW_POWER = 6;
/** mm behind the cornea; an A constant near 104, as published for minus powers, reaches to about -3 in SRK/T. */
const NEAREST_FOR_MINUS = -10;

function powerCautions(powerD: number, forMinus: boolean): string[] {
  if (forMinus)
    return powerD < 0
      ? ['Computed with the constant for minus powers.']
      : ['The constant is one for minus powers, but the power is not minus.'];
  if (powerD < 0)
    return ['Minus power: constants made for plus lenses do not apply; use the constants published for minus lenses.'];
  if (powerD < LOW_POWER)
    return [
      'Power below 6 D: ordinary constants fit such lenses poorly; published series used separate constants or aimed 1 to 1.75 D more myopic.',
    ];
  return [];
}

/** Makes the three calculations of one thin-lens formula from its way of reading the eye. */
export function lensFormula<E extends MeasuredEye>(definition: FormulaDefinition<E>): LensFormula<E> {
  const { title, slug, example, source, method, read, inputs } = definition;
  const common = {
    topic: 'Lens power',
    domain: definition.domain,
    method: `${title}, thin-lens vergence, vertex 12 mm`,
    inFull: method,
    source,
  };
  const standing = [
    'Compare with the biometry print-out and the lens box; constants are yours to answer for and are never mixed between formulas or kinds of biometry.',
  ];

  const answer = (eye: E, make: (reading: Reading) => { value: number; powerD: number }): Answer<number> => {
    const reading = read(eye);
    // A constant for minus powers is fitted to refractions alone: it may put the lens before the cornea.
    const nearest = eye.constantForMinus === true ? NEAREST_FOR_MINUS : 0;
    if (reading.lensPosition <= nearest || reading.lensPosition >= reading.opticalLength)
      return refused(`the constant puts the lens ${reading.lensPosition.toFixed(2)} mm behind the cornea`);
    const { value, powerD } = make(reading);
    const long =
      definition.hyperopicInLongEyes && eye.axialLengthMm > LONG_EYE && eye.lengthAdjusted !== true
        ? [`Over ${LONG_EYE} mm ${title} tends to leave the eye hyperopic; compare with the adjusted axial length.`]
        : [];
    return found(value, [...reading.cautions, ...long, ...powerCautions(powerD, eye.constantForMinus === true)]);
  };

  return {
    title,
    slug,
    power: calculation<E & { targetD: number }, number>({
      ...common,
      name: `lens-power-${slug}`,
      definition: `Lens power that ${title} gives for a target refraction.`,
      inputs: { ...inputs, targetD: TARGET },
      unit: 'D',
      cautions: standing,
      example: { input: { ...example.eye, targetD: example.targetD }, gives: example.gives, within: 0.002 },
      compute: (given) =>
        answer(given, (reading) => {
          const value = powerForRefraction(reading, given.targetD);
          return { value, powerD: value };
        }),
    }),
    refraction: calculation<E & { powerD: number }, number>({
      ...common,
      name: `predicted-refraction-${slug}`,
      definition: `Spectacle refraction that ${title} predicts for a lens power.`,
      inputs: { ...inputs, powerD: LENS_POWER },
      unit: 'D',
      cautions: standing,
      example: { input: { ...example.eye, powerD: example.powerD }, gives: example.leaves, within: 0.002 },
      compute: (given) =>
        answer(given, (reading) => ({ value: refractionForPower(reading, given.powerD), powerD: given.powerD })),
    }),
    position: calculation<E, number>({
      ...common,
      name: `lens-position-${slug}`,
      definition: `Distance from cornea to lens that ${title} reckons with.`,
      inputs,
      unit: 'mm',
      cautions: ['A distance inside the formula, fitted to refractions; not where a scan will find the lens.'],
      example: { input: example.eye, gives: example.position, within: 0.002 } satisfies Example<E, number>,
      compute: (eye) => found(read(eye).lensPosition, read(eye).cautions),
    }),
  };
}
