import type { Check } from './check.ts';
import { amendmentOfOtherEye } from './side/amendment-of-other-eye.ts';
import { amendmentOfOtherPatient } from './side/amendment-of-other-patient.ts';
import { biometryOfOtherEye } from './side/biometry-of-other-eye.ts';
import { codeForOtherEye } from './side/code-for-other-eye.ts';
import { consentForOtherEye } from './side/consent-for-other-eye.ts';
import { diagnosedEyeDiffers } from './side/diagnosed-eye-differs.ts';
import { eyeMissing } from './side/eye-missing.ts';
import { fileNameNamesOtherEye } from './side/file-name-names-other-eye.ts';
import { implantedLensDiffersFromVerified } from './side/implanted-lens-differs-from-verified.ts';
import { incisionMirrored } from './side/incision-mirrored.ts';
import { labelDiffersFromFields } from './side/label-differs-from-fields.ts';
import { labelOfAnotherModel } from './side/label-of-another-model.ts';
import { lensVerifiedForOtherEye } from './side/lens-verified-for-other-eye.ts';
import { markedEyeDiffers } from './side/marked-eye-differs.ts';
import { operatedEyeDiffersFromAll } from './side/operated-eye-differs-from-all.ts';
import { plannedEyeDiffers } from './side/planned-eye-differs.ts';
import { visitOfOtherEye } from './side/visit-of-other-eye.ts';
import { visitOfOtherPatient } from './side/visit-of-other-patient.ts';
import { visitReportsOtherLens } from './side/visit-reports-other-lens.ts';
import { adjunctsNotRecorded } from './completeness/adjuncts-not-recorded.ts';
import { afterCareIncomplete } from './completeness/after-care-incomplete.ts';
import { amendmentIncomplete } from './completeness/amendment-incomplete.ts';
import { anaesthesiaIncomplete } from './completeness/anaesthesia-incomplete.ts';
import { antibioticNotRecorded } from './completeness/antibiotic-not-recorded.ts';
import { antisepsisMissing } from './completeness/antisepsis-missing.ts';
import { biometryIncomplete } from './completeness/biometry-incomplete.ts';
import { capsuleStateIncomplete } from './completeness/capsule-state-incomplete.ts';
import { capsulotomyIncomplete } from './completeness/capsulotomy-incomplete.ts';
import { chamberFieldsMissing } from './completeness/chamber-fields-missing.ts';
import { closureIncomplete } from './completeness/closure-incomplete.ts';
import { complicationIncomplete } from './completeness/complication-incomplete.ts';
import { complicationsNotRecorded } from './completeness/complications-not-recorded.ts';
import { diagnosisIncomplete } from './completeness/diagnosis-incomplete.ts';
import { drugIncomplete } from './completeness/drug-incomplete.ts';
import { essentialNotRecorded } from './completeness/essential-not-recorded.ts';
import { examinationIncomplete } from './completeness/examination-incomplete.ts';
import { findingsIncomplete } from './completeness/findings-incomplete.ts';
import { headIncomplete } from './completeness/head-incomplete.ts';
import { incisionIncomplete } from './completeness/incision-incomplete.ts';
import { indicationMissing } from './completeness/indication-missing.ts';
import { keratometryWithoutMeridian } from './completeness/keratometry-without-meridian.ts';
import { lensIncomplete } from './completeness/lens-incomplete.ts';
import { lensRemovalIncomplete } from './completeness/lens-removal-incomplete.ts';
import { patientIncomplete } from './completeness/patient-incomplete.ts';
import { planIncomplete } from './completeness/plan-incomplete.ts';
import { requiredFieldMissing } from './completeness/required-field-missing.ts';
import { ringIncomplete } from './completeness/ring-incomplete.ts';
import { riskFactorsNotRecorded } from './completeness/risk-factors-not-recorded.ts';
import { safetyChecksIncomplete } from './completeness/safety-checks-incomplete.ts';
import { safetyChecksWithoutDetail } from './completeness/safety-checks-without-detail.ts';
import { signatureMissing } from './completeness/signature-missing.ts';
import { teamIncomplete } from './completeness/team-incomplete.ts';
import { toricLensIncomplete } from './completeness/toric-lens-incomplete.ts';
import { traineeWithoutSupervisor } from './completeness/trainee-without-supervisor.ts';
import { visitIncomplete } from './completeness/visit-incomplete.ts';
import { anaesthesiaDiffersFromPlan } from './agreement/anaesthesia-differs-from-plan.ts';
import { bottleHigherThanPlanned } from './agreement/bottle-higher-than-planned.ts';
import { capsulotomyOutcomeDisagrees } from './agreement/capsulotomy-outcome-disagrees.ts';
import { complicationWithoutFinding } from './agreement/complication-without-finding.ts';
import { cylinderCrossedWithCornea } from './agreement/cylinder-crossed-with-cornea.ts';
import { cylinderOnNonToricLens } from './agreement/cylinder-on-non-toric-lens.ts';
import { excludedComplicationRecorded } from './agreement/excluded-complication-recorded.ts';
import { eyesDifferInKeratometry } from './agreement/eyes-differ-in-keratometry.ts';
import { eyesDifferInLength } from './agreement/eyes-differ-in-length.ts';
import { highMyopiaDisagreesWithLength } from './agreement/high-myopia-disagrees-with-length.ts';
import { implantedLensDiffersFromPlan } from './agreement/implanted-lens-differs-from-plan.ts';
import { cylinderDiffersFromPlan } from './agreement/cylinder-differs-from-plan.ts';
import { predictionDiffersFromComputed } from './agreement/prediction-differs-from-computed.ts';
import { implantedPowerDiffersFromPlan } from './agreement/implanted-power-differs-from-plan.ts';
import { incisionAwayFromSeat } from './agreement/incision-away-from-seat.ts';
import { incisionDiffersFromPlan } from './agreement/incision-differs-from-plan.ts';
import { incisionNotOnSteepMeridian } from './agreement/incision-not-on-steep-meridian.ts';
import { keratometricIndexDiffers } from './agreement/keratometric-index-differs.ts';
import { keratometryMeridiansNotSquare } from './agreement/keratometry-meridians-not-square.ts';
import { lensDiffersFromList } from './agreement/lens-differs-from-list.ts';
import { lensNotInList } from './agreement/lens-not-in-list.ts';
import { lensWiderThanWound } from './agreement/lens-wider-than-wound.ts';
import { liesFlatDisagrees } from './agreement/lies-flat-disagrees.ts';
import { noteDiffersFromDictation } from './agreement/note-differs-from-dictation.ts';
import { personNotInStaffList } from './agreement/person-not-in-staff-list.ts';
import { placementNotForLens } from './agreement/placement-not-for-lens.ts';
import { powerNotMade } from './agreement/power-not-made.ts';
import { predictedFarFromTarget } from './agreement/predicted-far-from-target.ts';
import { predictionByOtherFormula } from './agreement/prediction-by-other-formula.ts';
import { procedureDisagreesWithLens } from './agreement/procedure-disagrees-with-lens.ts';
import { purposeNotOfDrug } from './agreement/purpose-not-of-drug.ts';
import { refractionSignDisagreesWithLength } from './agreement/refraction-sign-disagrees-with-length.ts';
import { ringDescribedButNotUsed } from './agreement/ring-described-but-not-used.ts';
import { ringDiffersFromPlan } from './agreement/ring-differs-from-plan.ts';
import { ringReasonDisagrees } from './agreement/ring-reason-disagrees.ts';
import { signerMayNotSign } from './agreement/signer-may-not-sign.ts';
import { suturesDisagree } from './agreement/sutures-disagree.ts';
import { toricAxisDiffersFromPlan } from './agreement/toric-axis-differs-from-plan.ts';
import { toricAxisOffSteepMeridian } from './agreement/toric-axis-off-steep-meridian.ts';
import { tornButNoComplication } from './agreement/torn-but-no-complication.ts';
import { visitFindingNotListed } from './agreement/visit-finding-not-listed.ts';
import { vitrectomyHistoryDisagrees } from './agreement/vitrectomy-history-disagrees.ts';
import { zonuleDefectWithoutRupture } from './agreement/zonule-defect-without-rupture.ts';
import { birthYearImpossible } from './plausibility/birth-year-impossible.ts';
import { capsulotomyDoesNotCoverOptic } from './plausibility/capsulotomy-does-not-cover-optic.ts';
import { capsulotomyNotSmallerThanOptic } from './plausibility/capsulotomy-not-smaller-than-optic.ts';
import { cornealAstigmatismUnusual } from './plausibility/corneal-astigmatism-unusual.ts';
import { dateInFuture } from './plausibility/date-in-future.ts';
import { doseImplausible } from './plausibility/dose-implausible.ts';
import { dropsTooOften } from './plausibility/drops-too-often.ts';
import { durationUnusual } from './plausibility/duration-unusual.ts';
import { fellowEyeSame } from './plausibility/fellow-eye-same.ts';
import { incisionsInOnePlace } from './plausibility/incisions-in-one-place.ts';
import { formulaAfterRefractiveSurgery } from './plausibility/formula-after-refractive-surgery.ts';
import { keratometryInMixedUnits } from './plausibility/keratometry-in-mixed-units.ts';
import { lensPowerUnusualForEye } from './plausibility/lens-power-unusual-for-eye.ts';
import { longEyeFormulaUnadjusted } from './plausibility/long-eye-formula-unadjusted.ts';
import { markerDisagreesWithCapsulotomy } from './plausibility/marker-disagrees-with-capsulotomy.ts';
import { minusLensWithoutOwnConstants } from './plausibility/minus-lens-without-own-constants.ts';
import { ringSizeUnusualForEye } from './plausibility/ring-size-unusual-for-eye.ts';
import { spareLensPowerUnusual } from './plausibility/spare-lens-power-unusual.ts';
import { uncorrectedBetterThanCorrected } from './plausibility/uncorrected-better-than-corrected.ts';
import { unusualValue } from './plausibility/unusual-value.ts';
import { alphaBlockerWithoutPrecaution } from './sequence/alpha-blocker-without-precaution.ts';
import { bagPowerInSulcus } from './sequence/bag-power-in-sulcus.ts';
import { biometryDateImplausible } from './sequence/biometry-date-implausible.ts';
import { complicationFoundOutsideCourse } from './sequence/complication-found-outside-course.ts';
import { consentAfterOperation } from './sequence/consent-after-operation.ts';
import { drugAgainstAllergy } from './sequence/drug-against-allergy.ts';
import { earlyRingWithIntactZonule } from './sequence/early-ring-with-intact-zonule.ts';
import { eyeLeftWithoutLens } from './sequence/eye-left-without-lens.ts';
import { fragmentWithoutReferral } from './sequence/fragment-without-referral.ts';
import { generalAnaesthesiaWithoutAnaesthetist } from './sequence/general-anaesthesia-without-anaesthetist.ts';
import { highPressureUntreated } from './sequence/high-pressure-untreated.ts';
import { hydrodissectionOfPosteriorPolar } from './sequence/hydrodissection-of-posterior-polar.ts';
import { leakLeftAtEnd } from './sequence/leak-left-at-end.ts';
import { longEyePeripheryNotExamined } from './sequence/long-eye-periphery-not-examined.ts';
import { longEyeWithoutBlockPrecaution } from './sequence/long-eye-without-block-precaution.ts';
import { longEyeWithoutCounselling } from './sequence/long-eye-without-counselling.ts';
import { longEyeWithoutRetinalReview } from './sequence/long-eye-without-retinal-review.ts';
import { needleBlockRisky } from './sequence/needle-block-risky.ts';
import { onePieceLensInSulcus } from './sequence/one-piece-lens-in-sulcus.ts';
import { operationDateDisagrees } from './sequence/operation-date-disagrees.ts';
import { plannedButOperated } from './sequence/planned-but-operated.ts';
import { refractiveSurpriseUnexplained } from './sequence/refractive-surprise-unexplained.ts';
import { reviewBeforeOperation } from './sequence/review-before-operation.ts';
import { reviewBeforeVisit } from './sequence/review-before-visit.ts';
import { reviewsOutOfOrder } from './sequence/reviews-out-of-order.ts';
import { ringAfterUncontainedTear } from './sequence/ring-after-uncontained-tear.ts';
import { rotatedLensNotListed } from './sequence/rotated-lens-not-listed.ts';
import { ruptureWithoutEarlyReview } from './sequence/rupture-without-early-review.ts';
import { scheduledReviewMissing } from './sequence/scheduled-review-missing.ts';
import { signedBeforeFinish } from './sequence/signed-before-finish.ts';
import { signedBeforeVisit } from './sequence/signed-before-visit.ts';
import { signedBeforeWritten } from './sequence/signed-before-written.ts';
import { signedLate } from './sequence/signed-late.ts';
import { smallPupilWithoutAid } from './sequence/small-pupil-without-aid.ts';
import { sutureRemovalBeforeOperation } from './sequence/suture-removal-before-operation.ts';
import { sutureWithoutRemovalDate } from './sequence/suture-without-removal-date.ts';
import { timesOutOfOrder } from './sequence/times-out-of-order.ts';
import { toricLensInTornBag } from './sequence/toric-lens-in-torn-bag.ts';
import { tornCapsuleLensInBagWithoutAccount } from './sequence/torn-capsule-lens-in-bag-without-account.ts';
import { viscoelasticLeftBehindLens } from './sequence/viscoelastic-left-behind-lens.ts';
import { visitBeforeOperation } from './sequence/visit-before-operation.ts';
import { visitNameDisagreesWithDate } from './sequence/visit-name-disagrees-with-date.ts';
import { vitrectomyWithoutReason } from './sequence/vitrectomy-without-reason.ts';
import { vitreousLeftInWound } from './sequence/vitreous-left-in-wound.ts';
import { vitreousLossWithoutRetinalReview } from './sequence/vitreous-loss-without-retinal-review.ts';
import { vitreousWithoutVitrectomy } from './sequence/vitreous-without-vitrectomy.ts';
import { whiteCataractWithoutDye } from './sequence/white-cataract-without-dye.ts';
import { codeShapeWrong } from './traceability/code-shape-wrong.ts';
import { expiryBeforeOperation } from './traceability/expiry-before-operation.ts';
import { labelNotValid } from './traceability/label-not-valid.ts';
import { lensWithoutSerialOrLot } from './traceability/lens-without-serial-or-lot.ts';
import { referenceNotInPattern } from './traceability/reference-not-in-pattern.ts';
import { serialSameAsLot } from './traceability/serial-same-as-lot.ts';
import { wordsBesideLicensedCode } from './traceability/words-beside-licensed-code.ts';
import { dissipatedEnergyDisagrees } from './arithmetic/dissipated-energy-disagrees.ts';
import { doseDisagreesWithItsStrength } from './arithmetic/dose-disagrees-with-its-strength.ts';
import { meanPowerAboveSteps } from './arithmetic/mean-power-above-steps.ts';
import { statedAgeDisagrees } from './arithmetic/stated-age-disagrees.ts';
import { statedDurationDisagrees } from './arithmetic/stated-duration-disagrees.ts';
import { statedEquivalentDisagrees } from './arithmetic/stated-equivalent-disagrees.ts';
import { statedMeanKeratometryDisagrees } from './arithmetic/stated-mean-keratometry-disagrees.ts';
import { statedOverlapDisagrees } from './arithmetic/stated-overlap-disagrees.ts';
import { ultrasoundLongerThanOperation } from './arithmetic/ultrasound-longer-than-operation.ts';
import { ambiguousAbbreviation } from './writing/ambiguous-abbreviation.ts';
import { axisWrittenZero } from './writing/axis-written-zero.ts';
import { clockHourOrDegrees } from './writing/clock-hour-or-degrees.ts';
import { numberInQuotes } from './writing/number-in-quotes.ts';
import { placeholderLeft } from './writing/placeholder-left.ts';
import { dictatedWordsInNoField } from './writing/dictated-words-in-no-field.ts';
import { dictationContradictsItself } from './writing/dictation-contradicts-itself.ts';
import { proposalNotTaken } from './writing/proposal-not-taken.ts';
import { proseNamesOtherEye } from './writing/prose-names-other-eye.ts';
import { proseNamesOtherPower } from './writing/prose-names-other-power.ts';
import { proseNamesOtherSite } from './writing/prose-names-other-site.ts';
import { proseTellsOfAdjunct } from './writing/prose-tells-of-adjunct.ts';
import { proseTellsOfComplication } from './writing/prose-tells-of-complication.ts';
import { unsafeDecimalInDose } from './writing/unsafe-decimal-in-dose.ts';
import { valueAwaitsConfirmation } from './writing/value-awaits-confirmation.ts';
import { birthDateInNote } from './privacy/birth-date-in-note.ts';
import { homeFolderInNote } from './privacy/home-folder-in-note.ts';
import { hospitalNumberInNote } from './privacy/hospital-number-in-note.ts';
import { identifyingFileName } from './privacy/identifying-file-name.ts';
import { mailAddressInNote } from './privacy/mail-address-in-note.ts';
import { nameInsteadOfReference } from './privacy/name-instead-of-reference.ts';
import { nationalNumberInNote } from './privacy/national-number-in-note.ts';
import { personNamed } from './privacy/person-named.ts';
import { phoneNumberInNote } from './privacy/phone-number-in-note.ts';
import { pictureInNote } from './privacy/picture-in-note.ts';
import { postCodeInNote } from './privacy/post-code-in-note.ts';
import { webAddressInNote } from './privacy/web-address-in-note.ts';
import { amendedFieldUnknown } from './set/amended-field-unknown.ts';
import { amendedValueDiffers } from './set/amended-value-differs.ts';
import { amendedValueSame } from './set/amended-value-same.ts';
import { amendedValueUnreadable } from './set/amended-value-unreadable.ts';
import { amendmentBeforeNote } from './set/amendment-before-note.ts';
import { amendmentOfUnfinishedNote } from './set/amendment-of-unfinished-note.ts';
import { amendmentsOutOfOrder } from './set/amendments-out-of-order.ts';
import { eyeOrderDisagrees } from './set/eye-order-disagrees.ts';
import { idUsedTwice } from './set/id-used-twice.ts';
import { lotOfTwoModels } from './set/lot-of-two-models.ts';
import { operationNotFound } from './set/operation-not-found.ts';
import { patientDataDiffer } from './set/patient-data-differ.ts';
import { sameEyeOperatedTwice } from './set/same-eye-operated-twice.ts';
import { sameNarrativeAsAnother } from './set/same-narrative-as-another.ts';
import { serialImplantedTwice } from './set/serial-implanted-twice.ts';
import { constantsDisagree } from './department/constants-disagree.ts';
import { departmentVersionMissing } from './department/department-version-missing.ts';
import { deviceIdentifierNotValid } from './department/device-identifier-not-valid.ts';
import { entryGivenTwice } from './department/entry-given-twice.ts';
import { incisionEffectDoubtful } from './department/incision-effect-doubtful.ts';
import { incisionEffectIncomplete } from './department/incision-effect-incomplete.ts';
import { lensEntryIncomplete } from './department/lens-entry-incomplete.ts';
import { lensWithoutUsableConstant } from './department/lens-without-usable-constant.ts';
import { patternWithoutPlaces } from './department/pattern-without-places.ts';
import { powersDisagree } from './department/powers-disagree.ts';
import { requiredFieldUnknown } from './department/required-field-unknown.ts';
import { settingOfFixedCheck } from './department/setting-of-fixed-check.ts';
import { settingOfUnknownCheck } from './department/setting-of-unknown-check.ts';
import { settingWithoutReason } from './department/setting-without-reason.ts';
import { staffEntryIncomplete } from './department/staff-entry-incomplete.ts';
import { staffReferenceNotInPattern } from './department/staff-reference-not-in-pattern.ts';

/** Every check, in the order in which `explain` lists their groups. */
export const allChecks: readonly Check[] = [
  // side and identity
  amendmentOfOtherEye,
  amendmentOfOtherPatient,
  biometryOfOtherEye,
  codeForOtherEye,
  consentForOtherEye,
  diagnosedEyeDiffers,
  eyeMissing,
  fileNameNamesOtherEye,
  implantedLensDiffersFromVerified,
  incisionMirrored,
  labelDiffersFromFields,
  labelOfAnotherModel,
  lensVerifiedForOtherEye,
  markedEyeDiffers,
  operatedEyeDiffersFromAll,
  plannedEyeDiffers,
  visitOfOtherEye,
  visitOfOtherPatient,
  visitReportsOtherLens,
  // completeness
  adjunctsNotRecorded,
  afterCareIncomplete,
  amendmentIncomplete,
  anaesthesiaIncomplete,
  antibioticNotRecorded,
  antisepsisMissing,
  biometryIncomplete,
  capsuleStateIncomplete,
  capsulotomyIncomplete,
  chamberFieldsMissing,
  closureIncomplete,
  complicationIncomplete,
  complicationsNotRecorded,
  diagnosisIncomplete,
  drugIncomplete,
  essentialNotRecorded,
  examinationIncomplete,
  findingsIncomplete,
  headIncomplete,
  incisionIncomplete,
  indicationMissing,
  keratometryWithoutMeridian,
  lensIncomplete,
  lensRemovalIncomplete,
  patientIncomplete,
  planIncomplete,
  requiredFieldMissing,
  ringIncomplete,
  riskFactorsNotRecorded,
  safetyChecksIncomplete,
  safetyChecksWithoutDetail,
  signatureMissing,
  teamIncomplete,
  toricLensIncomplete,
  traineeWithoutSupervisor,
  visitIncomplete,
  // agreement
  anaesthesiaDiffersFromPlan,
  bottleHigherThanPlanned,
  capsulotomyOutcomeDisagrees,
  complicationWithoutFinding,
  cylinderCrossedWithCornea,
  cylinderOnNonToricLens,
  excludedComplicationRecorded,
  eyesDifferInKeratometry,
  eyesDifferInLength,
  highMyopiaDisagreesWithLength,
  implantedLensDiffersFromPlan,
  cylinderDiffersFromPlan,
  predictionDiffersFromComputed,
  implantedPowerDiffersFromPlan,
  incisionAwayFromSeat,
  incisionDiffersFromPlan,
  incisionNotOnSteepMeridian,
  keratometricIndexDiffers,
  keratometryMeridiansNotSquare,
  lensDiffersFromList,
  lensNotInList,
  lensWiderThanWound,
  liesFlatDisagrees,
  noteDiffersFromDictation,
  personNotInStaffList,
  placementNotForLens,
  powerNotMade,
  predictedFarFromTarget,
  predictionByOtherFormula,
  procedureDisagreesWithLens,
  purposeNotOfDrug,
  refractionSignDisagreesWithLength,
  ringDescribedButNotUsed,
  ringDiffersFromPlan,
  ringReasonDisagrees,
  signerMayNotSign,
  suturesDisagree,
  toricAxisDiffersFromPlan,
  toricAxisOffSteepMeridian,
  tornButNoComplication,
  visitFindingNotListed,
  vitrectomyHistoryDisagrees,
  zonuleDefectWithoutRupture,
  // plausibility
  birthYearImpossible,
  capsulotomyDoesNotCoverOptic,
  capsulotomyNotSmallerThanOptic,
  cornealAstigmatismUnusual,
  dateInFuture,
  doseImplausible,
  dropsTooOften,
  durationUnusual,
  fellowEyeSame,
  formulaAfterRefractiveSurgery,
  incisionsInOnePlace,
  keratometryInMixedUnits,
  lensPowerUnusualForEye,
  longEyeFormulaUnadjusted,
  markerDisagreesWithCapsulotomy,
  minusLensWithoutOwnConstants,
  ringSizeUnusualForEye,
  spareLensPowerUnusual,
  uncorrectedBetterThanCorrected,
  unusualValue,
  // sequence and consequence
  alphaBlockerWithoutPrecaution,
  bagPowerInSulcus,
  biometryDateImplausible,
  complicationFoundOutsideCourse,
  consentAfterOperation,
  drugAgainstAllergy,
  earlyRingWithIntactZonule,
  eyeLeftWithoutLens,
  fragmentWithoutReferral,
  generalAnaesthesiaWithoutAnaesthetist,
  highPressureUntreated,
  hydrodissectionOfPosteriorPolar,
  leakLeftAtEnd,
  longEyePeripheryNotExamined,
  longEyeWithoutBlockPrecaution,
  longEyeWithoutCounselling,
  longEyeWithoutRetinalReview,
  needleBlockRisky,
  onePieceLensInSulcus,
  operationDateDisagrees,
  plannedButOperated,
  refractiveSurpriseUnexplained,
  reviewBeforeOperation,
  reviewBeforeVisit,
  reviewsOutOfOrder,
  ringAfterUncontainedTear,
  rotatedLensNotListed,
  ruptureWithoutEarlyReview,
  scheduledReviewMissing,
  signedBeforeFinish,
  signedBeforeVisit,
  signedBeforeWritten,
  signedLate,
  smallPupilWithoutAid,
  sutureRemovalBeforeOperation,
  sutureWithoutRemovalDate,
  timesOutOfOrder,
  toricLensInTornBag,
  tornCapsuleLensInBagWithoutAccount,
  viscoelasticLeftBehindLens,
  visitBeforeOperation,
  visitNameDisagreesWithDate,
  vitrectomyWithoutReason,
  vitreousLeftInWound,
  vitreousLossWithoutRetinalReview,
  vitreousWithoutVitrectomy,
  whiteCataractWithoutDye,
  // traceability
  codeShapeWrong,
  wordsBesideLicensedCode,
  expiryBeforeOperation,
  labelNotValid,
  lensWithoutSerialOrLot,
  referenceNotInPattern,
  serialSameAsLot,
  // arithmetic
  dissipatedEnergyDisagrees,
  doseDisagreesWithItsStrength,
  meanPowerAboveSteps,
  statedAgeDisagrees,
  statedDurationDisagrees,
  statedEquivalentDisagrees,
  statedMeanKeratometryDisagrees,
  statedOverlapDisagrees,
  ultrasoundLongerThanOperation,
  // writing
  ambiguousAbbreviation,
  axisWrittenZero,
  clockHourOrDegrees,
  dictatedWordsInNoField,
  dictationContradictsItself,
  numberInQuotes,
  placeholderLeft,
  proposalNotTaken,
  proseNamesOtherEye,
  proseNamesOtherPower,
  proseNamesOtherSite,
  proseTellsOfAdjunct,
  proseTellsOfComplication,
  unsafeDecimalInDose,
  valueAwaitsConfirmation,
  // privacy
  birthDateInNote,
  homeFolderInNote,
  hospitalNumberInNote,
  identifyingFileName,
  mailAddressInNote,
  nameInsteadOfReference,
  nationalNumberInNote,
  personNamed,
  phoneNumberInNote,
  pictureInNote,
  postCodeInNote,
  webAddressInNote,
  // across notes
  amendedFieldUnknown,
  amendedValueDiffers,
  amendedValueSame,
  amendedValueUnreadable,
  amendmentBeforeNote,
  amendmentOfUnfinishedNote,
  amendmentsOutOfOrder,
  eyeOrderDisagrees,
  idUsedTwice,
  lotOfTwoModels,
  operationNotFound,
  patientDataDiffer,
  sameEyeOperatedTwice,
  sameNarrativeAsAnother,
  serialImplantedTwice,
  // department file
  constantsDisagree,
  departmentVersionMissing,
  deviceIdentifierNotValid,
  entryGivenTwice,
  incisionEffectDoubtful,
  incisionEffectIncomplete,
  lensEntryIncomplete,
  lensWithoutUsableConstant,
  patternWithoutPlaces,
  powersDisagree,
  requiredFieldUnknown,
  settingOfFixedCheck,
  settingOfUnknownCheck,
  settingWithoutReason,
  staffEntryIncomplete,
  staffReferenceNotInPattern,
];
