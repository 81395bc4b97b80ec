import type { Definition } from './definition.ts';
import type { FollowUpFacts } from './follow-up-facts.ts';
import type { OperationFacts } from './operation-facts.ts';
import { acuityAtVisit, acuityBefore, acuityGained } from './values/acuity.ts';
import { capsuleRupture, riskOfRupture } from './values/capsule-rupture.ts';
import { capsulotomyOnOptic, cornealMark } from './values/capsulotomy.ts';
import { lengthOfEye, maculopathy } from './values/eye.ts';
import { incisionEffect, incisionPlaces } from './values/incisions.ts';
import { keratometryAtVisit, keratometryBefore } from './values/keratometry.ts';
import {
  adjustedLengths,
  lensPowers,
  predictedRefractions,
  printOutComparison,
  repeatedBiometry,
} from './values/lens-power.ts';
import { infusionPressures, ultrasound } from './values/machine.ts';
import { changeOfCornea, treatmentOfAstigmatism } from './values/outcome-of-cornea.ts';
import { changeOfRefraction, refractiveOutcome } from './values/outcome-of-refraction.ts';
import { toricAtVisit } from './values/outcome-of-toric.ts';
import { refractionAtVisit, refractionBefore } from './values/refraction.ts';
import { reviews } from './values/reviews.ts';
import { ageAndDuration } from './values/time.ts';
import { toricLenses } from './values/toric.ts';
import { dayOfVisit } from './values/visit.ts';

/** Every value computed of an operation, in the order of a note. */
export const operationValues: readonly Definition<OperationFacts>[] = [
  ageAndDuration,
  riskOfRupture,
  acuityBefore,
  refractionBefore,
  lengthOfEye,
  adjustedLengths,
  repeatedBiometry,
  keratometryBefore,
  maculopathy,
  lensPowers,
  printOutComparison,
  predictedRefractions,
  toricLenses,
  incisionPlaces,
  incisionEffect,
  capsulotomyOnOptic,
  cornealMark,
  infusionPressures,
  ultrasound,
  capsuleRupture,
  reviews,
];

/** Every value computed of a follow-up together with its operation. */
export const followUpValues: readonly Definition<FollowUpFacts>[] = [
  dayOfVisit,
  acuityAtVisit,
  acuityGained,
  refractionAtVisit,
  refractiveOutcome,
  changeOfRefraction,
  keratometryAtVisit,
  changeOfCornea,
  treatmentOfAstigmatism,
  toricAtVisit,
];
