// The check cases come from an independent implementation in another language; each is run through the public functions.
import { expect, test } from 'vitest';
import {
  acuityDecimal,
  acuityLetters,
  acuityLogmar,
  snellenDenominator,
  type Acuity,
} from '../../server/src/note/calculations/acuity/logmar.ts';
import { flatteningEffect, torque } from '../../server/src/note/calculations/astigmatism/at-the-incision.ts';
import {
  expectedCornealAstigmatism,
  expectedInducedAstigmatism,
} from '../../server/src/note/calculations/astigmatism/expected.ts';
import { inducedAstigmatism } from '../../server/src/note/calculations/astigmatism/induced.ts';
import {
  meridionalPolarValue,
  torsionalPolarValue,
} from '../../server/src/note/calculations/astigmatism/polar-values.ts';
import * as treatment from '../../server/src/note/calculations/astigmatism/treatment.ts';
import {
  apparentDepth,
  capsuleMagnification,
  diameterUnderMark,
} from '../../server/src/note/calculations/capsulotomy/corneal-mark.ts';
import * as overlap from '../../server/src/note/calculations/capsulotomy/overlap.ts';
import { capsularBagDiameter, capsularBagRegression } from '../../server/src/note/calculations/eye/capsular-bag.ts';
import { ruptureOdds, ruptureRisk, type RiskFactors } from '../../server/src/note/calculations/eye/rupture-risk.ts';
import { astigmatismKind } from '../../server/src/note/calculations/keratometry/astigmatism-kind.ts';
import {
  cornealAstigmatism,
  keratometryAwayFromSquare,
} from '../../server/src/note/calculations/keratometry/corneal-astigmatism.ts';
import { meanKeratometry } from '../../server/src/note/calculations/keratometry/mean.ts';
import {
  cornealPowerFromRadius,
  cornealRadiusFromPower,
} from '../../server/src/note/calculations/keratometry/radius.ts';
import {
  adjustedAxialLength,
  segmentedAxialLength,
} from '../../server/src/note/calculations/lens-power/axial-length-adjustment.ts';
import * as constants from '../../server/src/note/calculations/lens-power/constants.ts';
import { haigis } from '../../server/src/note/calculations/lens-power/haigis.ts';
import { hofferQ } from '../../server/src/note/calculations/lens-power/hoffer-q.ts';
import { holladay1 } from '../../server/src/note/calculations/lens-power/holladay-1.ts';
import { srk2 } from '../../server/src/note/calculations/lens-power/srk-2.ts';
import { srkT } from '../../server/src/note/calculations/lens-power/srk-t.ts';
import { t2 } from '../../server/src/note/calculations/lens-power/t2.ts';
import { dissipatedEnergy, effectivePhacoTime } from '../../server/src/note/calculations/machine/energy.ts';
import { infusionPressure } from '../../server/src/note/calculations/machine/pressure.ts';
import { clockHourOfPosition, positionOfClockHour } from '../../server/src/note/calculations/position/clock-hour.ts';
import { incisionMeridian } from '../../server/src/note/calculations/position/incision.ts';
import { positionOfSite, siteOfPosition, type Site } from '../../server/src/note/calculations/position/site.ts';
import { positionFromSurgeonsView } from '../../server/src/note/calculations/position/surgeons-view.ts';
import type { Refraction, Vector } from '../../server/src/note/calculations/quantities.ts';
import { blurStrength, powerVector } from '../../server/src/note/calculations/refraction/power-vector.ts';
import { sphericalEquivalent } from '../../server/src/note/calculations/refraction/spherical-equivalent.ts';
import { transposition } from '../../server/src/note/calculations/refraction/transposition.ts';
import { powerAtCornea } from '../../server/src/note/calculations/refraction/vertex.ts';
import * as change from '../../server/src/note/calculations/refraction/whole-change.ts';
import {
  lensPlaneCylinder,
  toricRatio,
  toricRatioOfSmallCylinder,
} from '../../server/src/note/calculations/toric/lens-plane.ts';
import { residualAstigmatism } from '../../server/src/note/calculations/toric/residual.ts';
import { rotationShare } from '../../server/src/note/calculations/toric/rotation.ts';
import { answer, unlike } from './answer.ts';
import cases from './check-cases.json' with { type: 'json' };

type Numbers = readonly number[];
type Eye = 'right' | 'left';
const eyeOf = (letters: string): Eye => (letters === 'OD' ? 'right' : 'left');
const vector = (magnitude: number, axis: number | null): Vector => ({ magnitude, axis });
const pair = ({ magnitude, axis }: Vector): (number | null)[] => [magnitude, axis];
const toRefraction = ([sphere = NaN, cylinder = NaN, axis = NaN]: Numbers): Refraction => ({ sphere, cylinder, axis });
const triple = ({ sphere, cylinder, axis }: Refraction): (number | null)[] => [sphere, cylinder, axis];

function keratometry([p1 = NaN, a1 = NaN, p2 = NaN, a2 = NaN]: Numbers) {
  const given = { k1: { power: p1, axis: a1 }, k2: { power: p2, axis: a2 } };
  const corneal = answer(cornealAstigmatism(given));
  const mean = answer(meanKeratometry({ k1D: p1, k2D: p2 }));
  return {
    k_steep: mean + corneal.magnitude / 2,
    steep_axis: corneal.axis,
    k_flat: mean - corneal.magnitude / 2,
    flat_axis: answer(incisionMeridian({ position: (corneal.axis ?? NaN) + 90 })),
    k_mean: mean,
    cyl: corneal.magnitude,
    non_orthogonality: answer(keratometryAwayFromSquare(given)),
    rule: answer(astigmatismKind({ corneal })),
  };
}

function alpins([[m1 = NaN, a1 = NaN], [m2 = NaN, a2 = NaN], [m3 = NaN, a3 = NaN]]: readonly [
  Numbers,
  Numbers,
  Numbers,
]) {
  const [pre, aim, post] = [vector(m1, a1), vector(m2, a2), vector(m3, a3)];
  const aimed = answer(treatment.targetInducedAstigmatism({ before: pre, target: aim }));
  const induced = answer(inducedAstigmatism({ before: pre, after: post }));
  const difference = answer(treatment.differenceVector({ target: aim, after: post }));
  const meridian = (aimed.axis ?? NaN) + 90;
  return {
    TIA: pair(aimed),
    SIA: pair(induced),
    DV: pair(difference),
    ME: answer(treatment.magnitudeOfError({ induced, aimed })),
    AE: answer(treatment.angleOfError({ induced, aimed })),
    CI: answer(treatment.correctionIndex({ induced, aimed })),
    IOS: answer(treatment.indexOfSuccess({ difference, aimed })),
    FE: answer(flatteningEffect({ induced, meridian })),
    FI: answer(treatment.flatteningIndex({ induced, aimed })),
    torque: answer(torque({ induced, meridian })),
  };
}

function wholeChange([before, after]: readonly [Numbers, Numbers]) {
  const given = { before: toRefraction(before), after: toRefraction(after), vertexMm: 12 };
  const total = answer(change.refractiveChange(given));
  const { m, j0, j45 } = answer(change.refractiveChangeVector(given));
  const atWound = { change: total, wound: 90 };
  return [
    triple(total),
    [m, j0, j45],
    [answer(change.changeWithTheWound(atWound)), answer(change.changeAgainstTheWound(atWound))],
  ];
}

type LensCase = Readonly<Record<'AL' | 'K' | 'ACD' | 'A' | 'SF' | 'pACD' | 'a0' | 'a1' | 'a2', number>>;
function formulaEyes({ AL, K, ACD, A, SF, pACD, a0, a1, a2 }: LensCase) {
  const eye = { axialLengthMm: AL, meanKeratometryD: K };
  return {
    srk: { ...eye, aConstant: A },
    holladay: { ...eye, surgeonFactor: SF },
    hoffer: { ...eye, pAcd: pACD },
    haigis: { ...eye, chamberDepthMm: ACD, a0, a1, a2 },
  };
}

function lensPowers(given: LensCase & { target: number }) {
  const eyes = formulaEyes(given);
  const targetD = given.target;
  const positionT = answer(srkT.position(eyes.srk));
  const chamber = answer(constants.chamberConstantFromA({ aConstant: given.A }));
  return {
    'SRK/T': answer(srkT.power({ ...eyes.srk, targetD })),
    Holladay1: answer(holladay1.power({ ...eyes.holladay, targetD })),
    HofferQ: answer(hofferQ.power({ ...eyes.hoffer, targetD })),
    Haigis: answer(haigis.power({ ...eyes.haigis, targetD })),
    T2: answer(t2.power({ ...eyes.srk, targetD })),
    SRK2: answer(srk2({ ...eyes.srk, targetD })),
    'SRK/T_ACDest': positionT,
    'SRK/T_H': positionT - chamber + 3.336,
    Holladay1_ELP: answer(holladay1.position(eyes.holladay)),
    // The case counts the depth without the formula's own 0.05 mm.
    HofferQ_ACD: answer(hofferQ.position(eyes.hoffer)) - 0.05,
    Haigis_d: answer(haigis.position(eyes.haigis)),
  };
}

function refractions(given: LensCase & { power: number }) {
  const eyes = formulaEyes(given);
  const powerD = given.power;
  return {
    'SRK/T': answer(srkT.refraction({ ...eyes.srk, powerD })),
    Holladay1: answer(holladay1.refraction({ ...eyes.holladay, powerD })),
    HofferQ: answer(hofferQ.refraction({ ...eyes.hoffer, powerD })),
    Haigis: answer(haigis.refraction({ ...eyes.haigis, powerD })),
  };
}

function adjusted(axialLengthMm: number) {
  const by = (regression: 'wang-2011' | 'wang-koch-2018', formula: 'holladay-1' | 'srk-t' | 'hoffer-q' | 'haigis') =>
    answer(adjustedAxialLength({ axialLengthMm, regression, formula }));
  return [
    by('wang-2011', 'holladay-1'),
    by('wang-2011', 'srk-t'),
    by('wang-2011', 'hoffer-q'),
    by('wang-2011', 'haigis'),
    by('wang-koch-2018', 'holladay-1'),
    by('wang-koch-2018', 'srk-t'),
    answer(segmentedAxialLength({ axialLengthMm, lensThicknessMm: 4.5 })),
  ];
}

function overlaps([capsulotomyMm = NaN, opticMm = NaN, offsetMm = NaN]: Numbers) {
  const circles = { capsulotomyMm, opticMm, offsetMm };
  const least = answer(overlap.leastOverlap(circles));
  return {
    min_overlap: least,
    max_overlap: answer(overlap.mostOverlap(circles)),
    covered_edge_fraction: answer(overlap.coveredShare(circles)),
    complete: least >= 0,
    mean_nominal: answer(overlap.meanOverlap({ capsulotomyMm, opticMm })),
    max_offset_for_complete: answer(overlap.largestOffset({ capsulotomyMm, opticMm })),
  };
}

interface RiskCase {
  readonly age?: string;
  readonly male?: true;
  readonly glaucoma?: true;
  readonly pxf?: true;
  readonly brunescent?: true;
  readonly no_view?: true;
  readonly doxazosin?: true;
  readonly lie_flat_unable?: true;
  readonly pupil?: 'medium';
  readonly al?: number;
}
function risk(given: RiskCase) {
  const factors: RiskFactors = {
    ...(given.age === undefined ? {} : { ageYears: Number.parseInt(given.age, 10) }),
    male: given.male ?? false,
    glaucoma: given.glaucoma ?? false,
    pseudoexfoliationOrPhacodonesis: given.pxf ?? false,
    brunescentOrWhite: given.brunescent ?? false,
    noFundalView: given.no_view ?? false,
    doxazosin: given.doxazosin ?? false,
    cannotLieFlat: given.lie_flat_unable ?? false,
    pupil: given.pupil ?? 'large',
    ...(given.al === undefined ? {} : { axialLengthMm: given.al }),
  };
  return [answer(ruptureOdds(factors)), answer(ruptureRisk(factors))];
}

function fraction(text: string) {
  const [numerator = NaN, denominator = NaN] = text.split('/').map(Number);
  const acuity: Acuity = { kind: 'fraction', numerator, denominator };
  return [
    answer(acuityDecimal({ acuity })),
    answer(acuityLogmar({ acuity })),
    answer(snellenDenominator({ acuity, numerator: 20 })),
    answer(snellenDenominator({ acuity, numerator: 6 })),
    answer(acuityLetters({ acuity })),
  ];
}

/** What each kind of case asks, through public functions. */
const RUN: Readonly<Record<string, (given: never) => unknown>> = {
  'radius mm -> D, index 1.3375': (radiusMm: number) => answer(cornealPowerFromRadius({ radiusMm })),
  'D -> radius mm': (powerD: number) => answer(cornealRadiusFromPower({ powerD })),
  'K summary (K1,axis1,K2,axis2)': keratometry,
  'anatomical clock hour -> dial deg, site, meridian': ([hour, letters]: readonly [number, string]) => {
    const position = answer(positionOfClockHour({ hour }));
    return [
      position,
      answer(siteOfPosition({ position, eye: eyeOf(letters) })),
      answer(incisionMeridian({ position })),
    ];
  },
  "surgeon's-view clock hour (eye, seat, hour) -> dial deg, anatomical hour, site": ([letters, site, hour]: readonly [
    string,
    Site,
    number,
  ]) => {
    const eye = eyeOf(letters);
    const seat = answer(positionOfSite({ site, eye }));
    const position = answer(positionFromSurgeonsView({ hour, seat }));
    return [position, answer(clockHourOfPosition({ position })), answer(siteOfPosition({ position, eye }))];
  },
  'power vector M,J0,J45,B; transposed; SE': (numbers: Numbers) => {
    const refraction = toRefraction(numbers);
    const { m, j0, j45 } = answer(powerVector({ refraction }));
    return [
      [m, j0, j45],
      answer(blurStrength({ refraction })),
      triple(answer(transposition({ refraction }))),
      answer(sphericalEquivalent({ refraction })),
    ];
  },
  'SIA (pre mag, steep, post mag, steep) -> magnitude, axis': ([m1, a1, m2, a2]: readonly [
    number,
    number,
    number,
    number | null,
  ]) => pair(answer(inducedAstigmatism({ before: vector(m1, a1), after: vector(m2, a2) }))),
  'expected post-op corneal astigmatism (pre mag, steep, flattening, incision meridian)': ([m, a, f, at]: readonly [
    number,
    number,
    number,
    number,
  ]) => {
    const induced = answer(expectedInducedAstigmatism({ flatteningD: f, incision: at }));
    return pair(answer(expectedCornealAstigmatism({ before: vector(m, a), induced })));
  },
  'Alpins (pre, target, post)': alpins,
  'polar values KP(ref), KP(ref+45) of (mag, steep, ref)': ([m, a, reference]: readonly [number, number, number]) => {
    const given = { corneal: vector(m, a), reference };
    return [answer(meridionalPolarValue(given)), answer(torsionalPolarValue(given))];
  },
  'refractive change at cornea, vertex 12 mm (pre, post) -> S,C,axis ; dM,dJ0,dJ45 ; WTW/ATW at 90': wholeChange,
  'vertex 12 mm spectacle -> cornea': (powerD: number) => answer(powerAtCornea({ powerD, vertexMm: 12 })),
  'IOL power D for target (AL, K, ACD, target)': lensPowers,
  'predicted spectacle refraction D (AL, K, ACD, implanted power)': refractions,
  'adjusted AL (WK2011 H1, SRK/T, HofferQ, Haigis; WK2018 H1, SRK/T; CMAL with LT=4.5)': adjusted,
  'constant conversions A-> ACD(SRK/T), SF, pACD, a0': (aConstant: number) => [
    answer(constants.chamberConstantFromA({ aConstant })),
    answer(constants.surgeonFactorFromA({ aConstant })),
    answer(constants.personalAcdFromA({ aConstant })),
    answer(constants.haigisA0FromA({ aConstant })),
  ],
  'toric: IOL-plane cylinder for (Kflat, Ksteep, ELP); exact ratio; small-cyl ratio at mean K': ([
    flatD,
    steepD,
    lensPositionMm,
  ]: readonly [number, number, number]) => {
    const eye = { flatD, steepD, lensPositionMm };
    return [
      answer(lensPlaneCylinder(eye)),
      answer(toricRatio(eye)),
      answer(toricRatioOfSmallCylinder({ meanD: (flatD + steepD) / 2, lensPositionMm })),
    ];
  },
  'rotation deg -> residual fraction 2 sin': (rotation: number) => answer(rotationShare({ rotation })),
  'residual (corneal mag, steep, lens cyl at cornea, lens axis)': ([m, a, lensCylinderD, markAxis]: readonly [
    number,
    number,
    number,
    number,
  ]) => pair(answer(residualAstigmatism({ corneal: vector(m, a), lensCylinderD, markAxis }))),
  'magnification at depth mm, K; apparent depth; true diameter under a 6.0 mm mark': ([
    depthMm,
    meanKeratometryD,
  ]: readonly [number, number]) => {
    const eye = { depthMm, meanKeratometryD };
    return [
      answer(capsuleMagnification(eye)),
      answer(apparentDepth(eye)),
      answer(diameterUnderMark({ ...eye, markMm: 6 })),
    ];
  },
  'overlap (capsulotomy d, optic d, offset)': overlaps,
  'cmH2O -> mmHg': (bottleHeightCm: number) => answer(infusionPressure({ bottleHeightCm })),
  'CDE (long s, long %, tors s, tors %) k=0.4; EPT of longitudinal part': ([ls, lp, ts, tp]: readonly [
    number,
    number,
    number,
    number,
  ]) => [
    answer(
      dissipatedEnergy({
        longitudinalSeconds: ls,
        longitudinalPercent: lp,
        torsionalSeconds: ts,
        torsionalPercent: tp,
      }),
    ),
    answer(effectivePhacoTime({ ultrasoundSeconds: ls, meanPowerPercent: lp })),
  ],
  'acuity -> decimal, logMAR, 20/x, 6/x, ETDRS letters': fraction,
  'capsular bag diameter (AL, K)': ([axialLengthMm, meanKeratometryD]: readonly [number, number]) => {
    const eye = { axialLengthMm, meanKeratometryD };
    const guarded = capsularBagDiameter(eye);
    // Beyond 28 mm the estimate is refused; the case is met by the printed regression, which says that it is no estimate.
    return guarded.ok ? guarded.value : answer(capsularBagRegression(eye));
  },
  'PCR/VL composite OR and probability (baseline 0.75 %)': risk,
};

test.each(cases.map((one) => [one.id, one.what, one] as const))('%s: %s', (_id, what, { in: given, out, tol }) => {
  const run = RUN[what];
  if (run === undefined) throw new Error(`no function answers "${what}"`);
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the cases are data of many shapes
  expect(unlike(run(given as never), out, tol)).toBeUndefined();
});
