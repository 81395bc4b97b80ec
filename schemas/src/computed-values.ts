/** The published lens formulas, as names of computed values write them. */
export const formulaSlugs = ['srk-t', 'holladay-1', 'hoffer-q', 'haigis', 't2'] as const;
export type FormulaSlug = (typeof formulaSlugs)[number];

/** The formulas as the trade writes them. */
export const formulaTitles: Readonly<Record<FormulaSlug, string>> = {
  'srk-t': 'SRK/T',
  'holladay-1': 'Holladay 1',
  'hoffer-q': 'Hoffer Q',
  haigis: 'Haigis',
  t2: 'T2',
};

export type ComputedGroup =
  | 'keratometry'
  | 'incision'
  | 'refraction'
  | 'lens power'
  | 'toric lens'
  | 'capsulotomy'
  | 'machine'
  | 'acuity'
  | 'eye'
  | 'time'
  | 'outcome';

/** What is said of a computed value beside its numbers. Names are a contract: scripts and exports rely on them. */
export interface ComputedValueGuide {
  /** Kebab-case. */
  readonly name: string;
  readonly group: ComputedGroup;
  /** A word or two to stand before the value, behind the line. */
  readonly label: string;
  /** Unit of the number or of every number in it; empty for words, counts and ratios. */
  readonly unit: string;
  readonly meaning: string;
  /** Whether it is worth a place behind the line, or only in the explanation of the field. */
  readonly inline: boolean;
}

const behindLine = <N extends string>(
  name: N,
  group: ComputedGroup,
  label: string,
  unit: string,
  meaning: string,
): ComputedValueGuide & { readonly name: N } => ({ name, group, label, unit, meaning, inline: true });

const explained = <N extends string>(
  name: N,
  group: ComputedGroup,
  label: string,
  unit: string,
  meaning: string,
): ComputedValueGuide & { readonly name: N } => ({ name, group, label, unit, meaning, inline: false });

const cornea = [
  behindLine('mean-keratometry', 'keratometry', 'mean K', 'D', 'Mean of the two corneal powers, in dioptres.'),
  behindLine('corneal-power', 'keratometry', 'power', 'D', 'Power of a meridian written as a radius.'),
  explained('corneal-radius', 'keratometry', 'radius', 'mm', 'Radius of a meridian written as a power.'),
  behindLine(
    'corneal-astigmatism',
    'keratometry',
    'astigmatism',
    'D',
    'Difference of the two powers, at the steep meridian.',
  ),
  behindLine('astigmatism-kind', 'keratometry', '', '', 'With the rule, against the rule or oblique.'),
  explained(
    'keratometry-away-from-square',
    'keratometry',
    'away from square',
    '°',
    'How far the two recorded meridians are from 90 degrees apart.',
  ),
  explained(
    'corneal-power-vector',
    'keratometry',
    'power vector',
    'D',
    'Corneal power as M, J0 and J45; signs of the cornea, not of a correcting lens.',
  ),
  explained(
    'meridional-polar-value',
    'keratometry',
    'polar value',
    'D',
    'Corneal astigmatism along the meridian of the main incision; positive is steeper there.',
  ),
  explained(
    'torsional-polar-value',
    'keratometry',
    'torsional polar value',
    'D',
    'Corneal astigmatism at 45 degrees to the meridian of the main incision.',
  ),
] as const;

const incision = [
  behindLine(
    'incision-position',
    'incision',
    '',
    '°',
    'Position of an incision on the whole dial, 0 to 360, as seen by a person facing the eye.',
  ),
  explained('incision-meridian', 'incision', 'meridian', '°', 'Meridian of an incision, 1 to 180.'),
  explained('incision-site', 'incision', '', '', 'The sector word nearest to an incision.'),
  behindLine(
    'expected-induced-astigmatism',
    'incision',
    'expected change',
    'D',
    'What the main incision is expected to add, from this surgeon’s own centroid; axis = meridian that steepens.',
  ),
  behindLine(
    'expected-corneal-astigmatism',
    'incision',
    'cornea expected',
    'D',
    'Corneal astigmatism expected after the operation, at the steep meridian.',
  ),
] as const;

const refraction = [
  behindLine('spherical-equivalent', 'refraction', 'SE', 'D', 'Sphere plus half the cylinder.'),
  explained('power-vector', 'refraction', 'power vector', 'D', 'The refraction as M, J0 and J45.'),
  explained('transposed-refraction', 'refraction', 'transposed', 'D', 'The refraction in the other cylinder form.'),
  explained(
    'refraction-at-cornea',
    'refraction',
    'at the cornea',
    'D',
    'The refraction at the corneal plane, by the vertex distance stated.',
  ),
] as const;

const lensPower = [
  explained(
    'adjusted-axial-length',
    'lens power',
    'adjusted length',
    'mm',
    'Axial length of a long eye by the named adjustment, for one formula.',
  ),
  explained(
    'biometry-to-repeat',
    'lens power',
    'measure again',
    '',
    'Reasons to measure again before choosing a lens; an empty list when there is none.',
  ),
  behindLine(
    'formula-spread',
    'lens power',
    'formulas differ by',
    'D',
    'Highest less lowest lens power of the formulas that could be computed, unadjusted.',
  ),
  behindLine(
    'prediction-difference',
    'lens power',
    'print-out less computed',
    'D',
    'The recorded prediction less the one computed by the same formula for the planned lens.',
  ),
] as const;

const toric = [
  explained('lens-plane-cylinder', 'toric lens', 'neutralising', 'D', 'Cylinder at the lens that would neutralise.'),
  explained('toric-ratio', 'toric lens', 'ratio', '', 'Cylinder at the lens over cylinder at the cornea, this eye.'),
  behindLine(
    'corneal-plane-cylinder',
    'toric lens',
    'at the cornea',
    'D',
    'What the cylinder of the lens corrects at the corneal plane, by the eye’s own ratio.',
  ),
  behindLine(
    'residual-astigmatism',
    'toric lens',
    'left',
    'D',
    'Astigmatism left at the corneal plane with the lens at this axis; axis = steep meridian.',
  ),
  behindLine('lens-rotation', 'toric lens', 'turned', '°', 'Axis found less axis meant; counter-clockwise positive.'),
  explained('rotation-effect', 'toric lens', 'by rotation', 'D', 'Astigmatism that the turn of the lens alone adds.'),
] as const;

const capsulotomy = [
  behindLine('capsulotomy-overlap-least', 'capsulotomy', 'overlap', 'mm', 'Capsule over the optic, narrowest.'),
  behindLine('capsulotomy-overlap-most', 'capsulotomy', 'to', 'mm', 'Capsule over the optic, widest.'),
  explained('capsulotomy-overlap-centred', 'capsulotomy', 'if centred', 'mm', 'Overlap if both were centred.'),
  behindLine('capsulotomy-covered-share', 'capsulotomy', 'edge covered', '', 'Share of the edge on the optic, 0 to 1.'),
  explained('capsulotomy-largest-offset', 'capsulotomy', 'covers up to', 'mm', 'Largest offset that still covers.'),
  behindLine(
    'capsulotomy-under-marker',
    'capsulotomy',
    'on the capsule',
    'mm',
    'Diameter on the capsule that the corneal mark encloses.',
  ),
  explained(
    'marker-for-capsulotomy',
    'capsulotomy',
    'mark needed',
    'mm',
    'Diameter of the corneal mark that encloses the capsulotomy aimed at.',
  ),
] as const;

const machine = [
  behindLine('infusion-pressure', 'machine', '', 'mmHg', 'Static infusion pressure of a step.'),
  behindLine('effective-phaco-time', 'machine', 'effective', 's', 'Ultrasound time reckoned at full power.'),
  behindLine('dissipated-energy', 'machine', 'energy', 's', 'Weighted ultrasound; bound to the device.'),
] as const;

const acuity = [
  behindLine('acuity-logmar', 'acuity', '', 'logMAR', 'Acuity as logMAR; categories by a named scheme.'),
  explained('acuity-decimal', 'acuity', 'decimal', '', 'Acuity as a decimal.'),
  explained('acuity-letters', 'acuity', 'about', 'letters', 'Approximate ETDRS letters.'),
  behindLine('lines-gained', 'acuity', 'gained', 'lines', 'Lines gained since before the operation; minus is lost.'),
  explained('letters-gained', 'acuity', 'gained', 'letters', 'Letters gained since before the operation.'),
] as const;

const eye = [
  behindLine('axial-length-class', 'eye', '', '', 'Short, average, medium long, long or extreme.'),
  explained('capsular-bag-diameter', 'eye', 'bag', 'mm', 'Expected diameter of the capsular bag.'),
  behindLine('ring-size-advice', 'eye', 'usual ring', 'mm', 'Usual tension ring for this length; common practice.'),
  behindLine('myopic-maculopathy-meaning', 'eye', '', '', 'What the category of myopic maculopathy means.'),
  explained('pathologic-myopia', 'eye', 'pathologic myopia', '', 'Category 2 or more, or a posterior staphyloma.'),
  behindLine('rupture-risk', 'eye', 'rupture risk', '', 'Probability by the model of 2009, 0 to 1.'),
  explained('rupture-risk-odds', 'eye', 'composite odds ratio', '', 'Product of the odds ratios of that model.'),
  explained(
    'retinal-detachment-context',
    'eye',
    'retinal detachment',
    '',
    'Published figures for eyes like this one, each cited; never multiplied into a personal risk.',
  ),
  behindLine(
    'posterior-capsule-rupture',
    'eye',
    'counts as rupture',
    '',
    'Whether the recorded facts meet the audit definition of posterior capsule rupture.',
  ),
] as const;

const time = [
  behindLine('age-at-operation', 'time', '', 'years', 'Year of the operation less year of birth.'),
  behindLine('operation-duration', 'time', '', 'min', 'From start to finish.'),
  behindLine('review-date', 'time', '', '', 'Date on which a review of the note is due.'),
  explained(
    'review-dates',
    'time',
    'reviews',
    '',
    'Every review due: those of the note and those of the department’s schedule for such an eye.',
  ),
  behindLine('overdue-reviews', 'time', 'overdue', '', 'Reviews whose day has passed without a visit.'),
  behindLine('days-after-operation', 'time', 'day', 'days', 'Days from the operation to the visit.'),
] as const;

const outcome = [
  behindLine(
    'prediction-error',
    'outcome',
    'prediction error',
    'D',
    'Achieved less predicted spherical equivalent, predicted for the lens implanted; minus is more myopic.',
  ),
  explained('difference-from-target', 'outcome', 'from target', 'D', 'Achieved spherical equivalent less target.'),
  behindLine(
    'induced-astigmatism',
    'outcome',
    'induced',
    'D',
    'What the operation added to the corneal astigmatism; axis = meridian that steepened.',
  ),
  behindLine('flattening-effect', 'outcome', 'flattening', 'D', 'Flattening along the meridian of the main incision.'),
  explained('torque', 'outcome', 'torque', 'D', 'Turning part of the change at the main incision.'),
  explained(
    'target-induced-astigmatism',
    'outcome',
    'intended change',
    'D',
    'The change that would have left no astigmatism.',
  ),
  explained('difference-vector', 'outcome', 'still to correct', 'D', 'The change still needed to reach the target.'),
  explained('magnitude-of-error', 'outcome', 'error of magnitude', 'D', 'Induced less intended magnitude.'),
  explained('angle-of-error', 'outcome', 'error of angle', '°', 'Induced less intended axis.'),
  explained('correction-index', 'outcome', 'correction index', '', 'Induced over intended change; 1 is ideal.'),
  explained('flattening-index', 'outcome', 'flattening index', '', 'Share of the intended change that acted there.'),
  explained('index-of-success', 'outcome', 'index of success', '', 'Left over intended; 0 is ideal.'),
  explained(
    'refractive-change',
    'outcome',
    'refraction changed by',
    'D',
    'Whole change of the refraction at the corneal plane, sphere included.',
  ),
  explained('refractive-change-vector', 'outcome', 'as power vector', 'D', 'The same change as M, J0 and J45.'),
  explained('change-with-the-wound', 'outcome', 'with the wound', 'D', 'That change along the incision’s meridian.'),
  explained('change-against-the-wound', 'outcome', 'against the wound', 'D', 'That change at 90 degrees to it.'),
] as const;

type FormulaValue =
  | `lens-power-${FormulaSlug}`
  | `lens-power-${FormulaSlug}-adjusted`
  | `predicted-refraction-${FormulaSlug}`
  | `predicted-refraction-${FormulaSlug}-adjusted`;

function ofFormula(slug: FormulaSlug): readonly (ComputedValueGuide & { readonly name: FormulaValue })[] {
  const title = formulaTitles[slug];
  const adjusted = 'with the named adjustment of a long axial length';
  return [
    explained(`lens-power-${slug}`, 'lens power', title, 'D', `Lens power of ${title} for the target.`),
    explained(
      `lens-power-${slug}-adjusted`,
      'lens power',
      `${title} adjusted`,
      'D',
      `Lens power of ${title} for the target, ${adjusted}.`,
    ),
    explained(
      `predicted-refraction-${slug}`,
      'lens power',
      `${title} predicts`,
      'D',
      `Refraction that ${title} predicts for the planned or the implanted lens, beside whose power it stands.`,
    ),
    explained(
      `predicted-refraction-${slug}-adjusted`,
      'lens power',
      `${title} adjusted predicts`,
      'D',
      `Refraction that ${title} predicts for the lens, ${adjusted}.`,
    ),
  ];
}

const plain = [
  ...cornea,
  ...incision,
  ...refraction,
  ...lensPower,
  ...toric,
  ...capsulotomy,
  ...machine,
  ...acuity,
  ...eye,
  ...time,
  ...outcome,
] as const;

export type ComputedName = (typeof plain)[number]['name'] | FormulaValue;

/** Every computed value of a note, by group. */
export const computedValues: readonly (ComputedValueGuide & { readonly name: ComputedName })[] = [
  ...plain,
  ...formulaSlugs.flatMap(ofFormula),
];
