import type { ListedCalculation } from './calculation.ts';
import { linesGained, lettersGained } from './acuity/gain.ts';
import { acuityDecimal, acuityLogmar, acuityLetters, snellenDenominator } from './acuity/logmar.ts';
import { flatteningEffect, torque } from './astigmatism/at-the-incision.ts';
import { expectedInducedAstigmatism, expectedCornealAstigmatism } from './astigmatism/expected.ts';
import { inducedAstigmatism } from './astigmatism/induced.ts';
import { meridionalPolarValue, torsionalPolarValue } from './astigmatism/polar-values.ts';
import {
  targetInducedAstigmatism,
  differenceVector,
  magnitudeOfError,
  angleOfError,
  correctionIndex,
  flatteningIndex,
  indexOfSuccess,
} from './astigmatism/treatment.ts';
import { capsuleMagnification, apparentDepth, diameterUnderMark, markForDiameter } from './capsulotomy/corneal-mark.ts';
import { leastOverlap, mostOverlap, meanOverlap, coveredShare, largestOffset } from './capsulotomy/overlap.ts';
import { axialLengthClass } from './eye/axial-length-class.ts';
import { capsularBagDiameter, capsularBagRegression } from './eye/capsular-bag.ts';
import { maculopathyMeaning, pathologicMyopia } from './eye/maculopathy.ts';
import { posteriorCapsuleRupture } from './eye/posterior-capsule-rupture.ts';
import { retinalDetachmentContext } from './eye/retinal-detachment.ts';
import { ringSizeAdvice } from './eye/ring-size.ts';
import { ruptureOdds, ruptureRisk } from './eye/rupture-risk.ts';
import { astigmatismKind } from './keratometry/astigmatism-kind.ts';
import { cornealAstigmatism, keratometryAwayFromSquare } from './keratometry/corneal-astigmatism.ts';
import { meanKeratometry } from './keratometry/mean.ts';
import { powerAtMeridian } from './refraction/power-at-meridian.ts';
import { cornealPowerFromRadius, cornealRadiusFromPower } from './keratometry/radius.ts';
import { adjustedAxialLength, segmentedAxialLength } from './lens-power/axial-length-adjustment.ts';
import {
  chamberConstantFromA,
  surgeonFactorFromA,
  personalAcdFromA,
  haigisA0FromA,
  surgeonFactorFromPersonalAcd,
} from './lens-power/constants.ts';
import { haigis } from './lens-power/haigis.ts';
import { hofferQ } from './lens-power/hoffer-q.ts';
import { holladay1 } from './lens-power/holladay-1.ts';
import { repeatPrompts } from './lens-power/repeat-prompts.ts';
import { formulaSpread } from './lens-power/spread.ts';
import { srk2 } from './lens-power/srk-2.ts';
import { srkT } from './lens-power/srk-t.ts';
import { t2 } from './lens-power/t2.ts';
import { effectivePhacoTime, dissipatedEnergy } from './machine/energy.ts';
import { infusionPressure, setInfusionPressure, bottleHeightForPressure } from './machine/pressure.ts';
import { positionOfClockHour, clockHourOfPosition } from './position/clock-hour.ts';
import { incisionPosition, incisionMeridian } from './position/incision.ts';
import { positionOfSite, siteOfPosition } from './position/site.ts';
import { positionFromSurgeonsView, surgeonsViewHour } from './position/surgeons-view.ts';
import { powerVector, refractionFromPowerVector, blurStrength, cornealPowerVector } from './refraction/power-vector.ts';
import { differenceFromTarget, predictionDifference, predictionError } from './refraction/prediction-error.ts';
import { refractiveAstigmatism } from './refraction/refractive-astigmatism.ts';
import { sphericalEquivalent } from './refraction/spherical-equivalent.ts';
import { transposition } from './refraction/transposition.ts';
import { powerAtCornea, powerAtSpectacles, refractionAtCornea } from './refraction/vertex.ts';
import {
  refractiveChangeVector,
  refractiveChange,
  changeWithTheWound,
  changeAgainstTheWound,
} from './refraction/whole-change.ts';
import { ageAtOperation } from './time/age.ts';
import { operationDuration } from './time/duration.ts';
import { reviewDate } from './time/review-date.ts';
import { daysAfterOperation, overdueReviews, reviewDates } from './time/reviews.ts';
import { lensPlaneCylinder, toricRatio, toricRatioOfSmallCylinder, cornealPlaneCylinder } from './toric/lens-plane.ts';
import { residualAstigmatism } from './toric/residual.ts';
import { rotationShare, rotationEffect, annullingRotation, lensRotation } from './toric/rotation.ts';

const formulas = [haigis, hofferQ, holladay1, srkT, t2];

/** Every calculation, in the order of the page that documents them. */
export const CALCULATIONS: readonly ListedCalculation[] = [
  astigmatismKind,
  cornealAstigmatism,
  keratometryAwayFromSquare,
  meanKeratometry,
  powerAtMeridian,
  cornealPowerFromRadius,
  cornealRadiusFromPower,
  positionOfClockHour,
  clockHourOfPosition,
  incisionPosition,
  incisionMeridian,
  positionOfSite,
  siteOfPosition,
  positionFromSurgeonsView,
  surgeonsViewHour,
  flatteningEffect,
  torque,
  expectedInducedAstigmatism,
  expectedCornealAstigmatism,
  inducedAstigmatism,
  meridionalPolarValue,
  torsionalPolarValue,
  targetInducedAstigmatism,
  differenceVector,
  magnitudeOfError,
  angleOfError,
  correctionIndex,
  flatteningIndex,
  indexOfSuccess,
  powerVector,
  refractionFromPowerVector,
  blurStrength,
  cornealPowerVector,
  predictionError,
  predictionDifference,
  differenceFromTarget,
  refractiveAstigmatism,
  sphericalEquivalent,
  transposition,
  powerAtCornea,
  powerAtSpectacles,
  refractionAtCornea,
  refractiveChangeVector,
  refractiveChange,
  changeWithTheWound,
  changeAgainstTheWound,
  adjustedAxialLength,
  segmentedAxialLength,
  chamberConstantFromA,
  surgeonFactorFromA,
  personalAcdFromA,
  haigisA0FromA,
  surgeonFactorFromPersonalAcd,
  repeatPrompts,
  formulaSpread,
  srk2,
  ...formulas.flatMap(({ power, refraction, position }) => [power, refraction, position]),
  lensPlaneCylinder,
  toricRatio,
  toricRatioOfSmallCylinder,
  cornealPlaneCylinder,
  residualAstigmatism,
  rotationShare,
  rotationEffect,
  annullingRotation,
  lensRotation,
  capsuleMagnification,
  apparentDepth,
  diameterUnderMark,
  markForDiameter,
  leastOverlap,
  mostOverlap,
  meanOverlap,
  coveredShare,
  largestOffset,
  effectivePhacoTime,
  dissipatedEnergy,
  infusionPressure,
  setInfusionPressure,
  bottleHeightForPressure,
  linesGained,
  lettersGained,
  acuityDecimal,
  acuityLogmar,
  acuityLetters,
  snellenDenominator,
  axialLengthClass,
  capsularBagDiameter,
  capsularBagRegression,
  maculopathyMeaning,
  pathologicMyopia,
  posteriorCapsuleRupture,
  retinalDetachmentContext,
  ringSizeAdvice,
  ruptureOdds,
  ruptureRisk,
  ageAtOperation,
  operationDuration,
  reviewDate,
  reviewDates,
  overdueReviews,
  daysAfterOperation,
];
