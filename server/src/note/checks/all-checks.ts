import type { Check } from './check.ts';
import { biometryOfOtherEye } from './side/biometry-of-other-eye.ts';
import { codeForOtherEye } from './side/code-for-other-eye.ts';
import { consentForOtherEye } from './side/consent-for-other-eye.ts';
import { diagnosedEyeDiffers } from './side/diagnosed-eye-differs.ts';
import { eyeMissing } from './side/eye-missing.ts';
import { implantedLensDiffersFromVerified } from './side/implanted-lens-differs-from-verified.ts';
import { lensVerifiedForOtherEye } from './side/lens-verified-for-other-eye.ts';
import { markedEyeDiffers } from './side/marked-eye-differs.ts';
import { operatedEyeDiffersFromAll } from './side/operated-eye-differs-from-all.ts';
import { plannedEyeDiffers } from './side/planned-eye-differs.ts';
import { adjunctsNotRecorded } from './completeness/adjuncts-not-recorded.ts';
import { afterCareIncomplete } from './completeness/after-care-incomplete.ts';
import { anaesthesiaIncomplete } from './completeness/anaesthesia-incomplete.ts';
import { antisepsisMissing } from './completeness/antisepsis-missing.ts';
import { biometryIncomplete } from './completeness/biometry-incomplete.ts';
import { capsuleStateIncomplete } from './completeness/capsule-state-incomplete.ts';
import { capsulotomyIncomplete } from './completeness/capsulotomy-incomplete.ts';
import { chamberFieldsMissing } from './completeness/chamber-fields-missing.ts';
import { closureIncomplete } from './completeness/closure-incomplete.ts';
import { complicationsNotRecorded } from './completeness/complications-not-recorded.ts';
import { diagnosisIncomplete } from './completeness/diagnosis-incomplete.ts';
import { examinationIncomplete } from './completeness/examination-incomplete.ts';
import { findingsIncomplete } from './completeness/findings-incomplete.ts';
import { headIncomplete } from './completeness/head-incomplete.ts';
import { indicationMissing } from './completeness/indication-missing.ts';
import { lensIncomplete } from './completeness/lens-incomplete.ts';
import { lensRemovalIncomplete } from './completeness/lens-removal-incomplete.ts';
import { patientIncomplete } from './completeness/patient-incomplete.ts';
import { planIncomplete } from './completeness/plan-incomplete.ts';
import { ringIncomplete } from './completeness/ring-incomplete.ts';
import { riskFactorsNotRecorded } from './completeness/risk-factors-not-recorded.ts';
import { safetyChecksIncomplete } from './completeness/safety-checks-incomplete.ts';
import { safetyChecksWithoutDetail } from './completeness/safety-checks-without-detail.ts';
import { implantedLensDiffersFromPlan } from './agreement/implanted-lens-differs-from-plan.ts';
import { implantedPowerDiffersFromPlan } from './agreement/implanted-power-differs-from-plan.ts';
import { incisionNotOnSteepMeridian } from './agreement/incision-not-on-steep-meridian.ts';
import { keratometryMeridiansNotSquare } from './agreement/keratometry-meridians-not-square.ts';
import { capsulotomyDoesNotCoverOptic } from './plausibility/capsulotomy-does-not-cover-optic.ts';
import { capsulotomyNotSmallerThanOptic } from './plausibility/capsulotomy-not-smaller-than-optic.ts';
import { reviewBeforeOperation } from './sequence/review-before-operation.ts';
import { reviewsOutOfOrder } from './sequence/reviews-out-of-order.ts';
import { tornCapsuleLensInBagWithoutAccount } from './sequence/torn-capsule-lens-in-bag-without-account.ts';
import { vitreousWithoutVitrectomy } from './sequence/vitreous-without-vitrectomy.ts';
import { expiryBeforeOperation } from './traceability/expiry-before-operation.ts';
import { lensWithoutSerialOrLot } from './traceability/lens-without-serial-or-lot.ts';

/** Every check, in the order in which `explain` lists their groups. */
export const allChecks: readonly Check[] = [
  // side and identity
  biometryOfOtherEye,
  codeForOtherEye,
  consentForOtherEye,
  diagnosedEyeDiffers,
  eyeMissing,
  implantedLensDiffersFromVerified,
  lensVerifiedForOtherEye,
  markedEyeDiffers,
  operatedEyeDiffersFromAll,
  plannedEyeDiffers,
  // completeness
  adjunctsNotRecorded,
  afterCareIncomplete,
  anaesthesiaIncomplete,
  antisepsisMissing,
  biometryIncomplete,
  capsuleStateIncomplete,
  capsulotomyIncomplete,
  chamberFieldsMissing,
  closureIncomplete,
  complicationsNotRecorded,
  diagnosisIncomplete,
  examinationIncomplete,
  findingsIncomplete,
  headIncomplete,
  indicationMissing,
  lensIncomplete,
  lensRemovalIncomplete,
  patientIncomplete,
  planIncomplete,
  ringIncomplete,
  riskFactorsNotRecorded,
  safetyChecksIncomplete,
  safetyChecksWithoutDetail,
  // agreement
  implantedLensDiffersFromPlan,
  implantedPowerDiffersFromPlan,
  incisionNotOnSteepMeridian,
  keratometryMeridiansNotSquare,
  // plausibility
  capsulotomyDoesNotCoverOptic,
  capsulotomyNotSmallerThanOptic,
  // sequence and consequence
  reviewBeforeOperation,
  reviewsOutOfOrder,
  tornCapsuleLensInBagWithoutAccount,
  vitreousWithoutVitrectomy,
  // traceability
  expiryBeforeOperation,
  lensWithoutSerialOrLot,
];
