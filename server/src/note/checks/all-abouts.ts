import { aboutReaderChecks } from './about-reader-checks.ts';
import type { About } from './check.ts';
import { aboutAmendmentOfOtherEye } from './side/amendment-of-other-eye.ts';
import { aboutAmendmentOfOtherPatient } from './side/amendment-of-other-patient.ts';
import { aboutBiometryOfOtherEye } from './side/biometry-of-other-eye.ts';
import { aboutCodeForOtherEye } from './side/code-for-other-eye.ts';
import { aboutConsentForOtherEye } from './side/consent-for-other-eye.ts';
import { aboutDiagnosedEyeDiffers } from './side/diagnosed-eye-differs.ts';
import { aboutEyeMissing } from './side/eye-missing.ts';
import { aboutFileNameNamesOtherEye } from './side/file-name-names-other-eye.ts';
import { aboutImplantedLensDiffersFromVerified } from './side/implanted-lens-differs-from-verified.ts';
import { aboutIncisionMirrored } from './side/incision-mirrored.ts';
import { aboutLabelDiffersFromFields } from './side/label-differs-from-fields.ts';
import { aboutLabelOfAnotherModel } from './side/label-of-another-model.ts';
import { aboutLensVerifiedForOtherEye } from './side/lens-verified-for-other-eye.ts';
import { aboutMarkedEyeDiffers } from './side/marked-eye-differs.ts';
import { aboutOperatedEyeDiffersFromAll } from './side/operated-eye-differs-from-all.ts';
import { aboutPlannedEyeDiffers } from './side/planned-eye-differs.ts';
import { aboutVisitOfOtherEye } from './side/visit-of-other-eye.ts';
import { aboutVisitOfOtherPatient } from './side/visit-of-other-patient.ts';
import { aboutVisitReportsOtherLens } from './side/visit-reports-other-lens.ts';
import { aboutAdjunctsNotRecorded } from './completeness/adjuncts-not-recorded.ts';
import { aboutAfterCareIncomplete } from './completeness/after-care-incomplete.ts';
import { aboutAmendmentIncomplete } from './completeness/amendment-incomplete.ts';
import { aboutAnaesthesiaIncomplete } from './completeness/anaesthesia-incomplete.ts';
import { aboutAntibioticNotRecorded } from './completeness/antibiotic-not-recorded.ts';
import { aboutAntisepsisMissing } from './completeness/antisepsis-missing.ts';
import { aboutBiometryIncomplete } from './completeness/biometry-incomplete.ts';
import { aboutCapsuleStateIncomplete } from './completeness/capsule-state-incomplete.ts';
import { aboutCapsulotomyIncomplete } from './completeness/capsulotomy-incomplete.ts';
import { aboutChamberFieldsMissing } from './completeness/chamber-fields-missing.ts';
import { aboutClosureIncomplete } from './completeness/closure-incomplete.ts';
import { aboutComplicationIncomplete } from './completeness/complication-incomplete.ts';
import { aboutComplicationsNotRecorded } from './completeness/complications-not-recorded.ts';
import { aboutDiagnosisIncomplete } from './completeness/diagnosis-incomplete.ts';
import { aboutDrugIncomplete } from './completeness/drug-incomplete.ts';
import { aboutEssentialNotRecorded } from './completeness/essential-not-recorded.ts';
import { aboutExaminationIncomplete } from './completeness/examination-incomplete.ts';
import { aboutFindingsIncomplete } from './completeness/findings-incomplete.ts';
import { aboutHeadIncomplete } from './completeness/head-incomplete.ts';
import { aboutIncisionIncomplete } from './completeness/incision-incomplete.ts';
import { aboutIndicationMissing } from './completeness/indication-missing.ts';
import { aboutKeratometryWithoutMeridian } from './completeness/keratometry-without-meridian.ts';
import { aboutLensIncomplete } from './completeness/lens-incomplete.ts';
import { aboutLensRemovalIncomplete } from './completeness/lens-removal-incomplete.ts';
import { aboutPatientIncomplete } from './completeness/patient-incomplete.ts';
import { aboutPlanIncomplete } from './completeness/plan-incomplete.ts';
import { aboutRequiredFieldMissing } from './completeness/required-field-missing.ts';
import { aboutRingIncomplete } from './completeness/ring-incomplete.ts';
import { aboutRiskFactorsNotRecorded } from './completeness/risk-factors-not-recorded.ts';
import { aboutSafetyChecksIncomplete } from './completeness/safety-checks-incomplete.ts';
import { aboutSafetyChecksWithoutDetail } from './completeness/safety-checks-without-detail.ts';
import { aboutSignatureMissing } from './completeness/signature-missing.ts';
import { aboutTeamIncomplete } from './completeness/team-incomplete.ts';
import { aboutToricLensIncomplete } from './completeness/toric-lens-incomplete.ts';
import { aboutTraineeWithoutSupervisor } from './completeness/trainee-without-supervisor.ts';
import { aboutVisitIncomplete } from './completeness/visit-incomplete.ts';
import { aboutAnaesthesiaDiffersFromPlan } from './agreement/anaesthesia-differs-from-plan.ts';
import { aboutBottleHigherThanPlanned } from './agreement/bottle-higher-than-planned.ts';
import { aboutCapsulotomyOutcomeDisagrees } from './agreement/capsulotomy-outcome-disagrees.ts';
import { aboutComplicationWithoutFinding } from './agreement/complication-without-finding.ts';
import { aboutCylinderCrossedWithCornea } from './agreement/cylinder-crossed-with-cornea.ts';
import { aboutCylinderOnNonToricLens } from './agreement/cylinder-on-non-toric-lens.ts';
import { aboutExcludedComplicationRecorded } from './agreement/excluded-complication-recorded.ts';
import { aboutEyesDifferInKeratometry } from './agreement/eyes-differ-in-keratometry.ts';
import { aboutEyesDifferInLength } from './agreement/eyes-differ-in-length.ts';
import { aboutHighMyopiaDisagreesWithLength } from './agreement/high-myopia-disagrees-with-length.ts';
import { aboutImplantedLensDiffersFromPlan } from './agreement/implanted-lens-differs-from-plan.ts';
import { aboutCylinderDiffersFromPlan } from './agreement/cylinder-differs-from-plan.ts';
import { aboutPredictionDiffersFromComputed } from './agreement/prediction-differs-from-computed.ts';
import { aboutImplantedPowerDiffersFromPlan } from './agreement/implanted-power-differs-from-plan.ts';
import { aboutIncisionAwayFromSeat } from './agreement/incision-away-from-seat.ts';
import { aboutIncisionDiffersFromPlan } from './agreement/incision-differs-from-plan.ts';
import { aboutIncisionNotOnSteepMeridian } from './agreement/incision-not-on-steep-meridian.ts';
import { aboutKeratometricIndexDiffers } from './agreement/keratometric-index-differs.ts';
import { aboutKeratometryMeridiansNotSquare } from './agreement/keratometry-meridians-not-square.ts';
import { aboutLensDiffersFromList } from './agreement/lens-differs-from-list.ts';
import { aboutLensNotInList } from './agreement/lens-not-in-list.ts';
import { aboutLensWiderThanWound } from './agreement/lens-wider-than-wound.ts';
import { aboutLiesFlatDisagrees } from './agreement/lies-flat-disagrees.ts';
import { aboutNoteDiffersFromDictation } from './agreement/note-differs-from-dictation.ts';
import { aboutPersonNotInStaffList } from './agreement/person-not-in-staff-list.ts';
import { aboutPlacementNotForLens } from './agreement/placement-not-for-lens.ts';
import { aboutPowerNotMade } from './agreement/power-not-made.ts';
import { aboutPredictedFarFromTarget } from './agreement/predicted-far-from-target.ts';
import { aboutPredictionByOtherFormula } from './agreement/prediction-by-other-formula.ts';
import { aboutProcedureDisagreesWithLens } from './agreement/procedure-disagrees-with-lens.ts';
import { aboutPurposeNotOfDrug } from './agreement/purpose-not-of-drug.ts';
import { aboutRefractionSignDisagreesWithLength } from './agreement/refraction-sign-disagrees-with-length.ts';
import { aboutRingDescribedButNotUsed } from './agreement/ring-described-but-not-used.ts';
import { aboutRingDiffersFromPlan } from './agreement/ring-differs-from-plan.ts';
import { aboutRingReasonDisagrees } from './agreement/ring-reason-disagrees.ts';
import { aboutSignerMayNotSign } from './agreement/signer-may-not-sign.ts';
import { aboutSuturesDisagree } from './agreement/sutures-disagree.ts';
import { aboutToricAxisDiffersFromPlan } from './agreement/toric-axis-differs-from-plan.ts';
import { aboutToricAxisOffSteepMeridian } from './agreement/toric-axis-off-steep-meridian.ts';
import { aboutTornButNoComplication } from './agreement/torn-but-no-complication.ts';
import { aboutVisitFindingNotListed } from './agreement/visit-finding-not-listed.ts';
import { aboutVitrectomyHistoryDisagrees } from './agreement/vitrectomy-history-disagrees.ts';
import { aboutZonuleDefectWithoutRupture } from './agreement/zonule-defect-without-rupture.ts';
import { aboutBirthYearImpossible } from './plausibility/birth-year-impossible.ts';
import { aboutCapsulotomyDoesNotCoverOptic } from './plausibility/capsulotomy-does-not-cover-optic.ts';
import { aboutCapsulotomyNotSmallerThanOptic } from './plausibility/capsulotomy-not-smaller-than-optic.ts';
import { aboutCornealAstigmatismUnusual } from './plausibility/corneal-astigmatism-unusual.ts';
import { aboutDateInFuture } from './plausibility/date-in-future.ts';
import { aboutDoseImplausible } from './plausibility/dose-implausible.ts';
import { aboutDropsTooOften } from './plausibility/drops-too-often.ts';
import { aboutDurationUnusual } from './plausibility/duration-unusual.ts';
import { aboutFellowEyeSame } from './plausibility/fellow-eye-same.ts';
import { aboutIncisionsInOnePlace } from './plausibility/incisions-in-one-place.ts';
import { aboutFormulaAfterRefractiveSurgery } from './plausibility/formula-after-refractive-surgery.ts';
import { aboutKeratometryInMixedUnits } from './plausibility/keratometry-in-mixed-units.ts';
import { aboutLensPowerUnusualForEye } from './plausibility/lens-power-unusual-for-eye.ts';
import { aboutLongEyeFormulaUnadjusted } from './plausibility/long-eye-formula-unadjusted.ts';
import { aboutMarkerDisagreesWithCapsulotomy } from './plausibility/marker-disagrees-with-capsulotomy.ts';
import { aboutMinusLensWithoutOwnConstants } from './plausibility/minus-lens-without-own-constants.ts';
import { aboutRingSizeUnusualForEye } from './plausibility/ring-size-unusual-for-eye.ts';
import { aboutSpareLensPowerUnusual } from './plausibility/spare-lens-power-unusual.ts';
import { aboutUncorrectedBetterThanCorrected } from './plausibility/uncorrected-better-than-corrected.ts';
import { aboutUnusualValue } from './plausibility/unusual-value.ts';
import { aboutAlphaBlockerWithoutPrecaution } from './sequence/alpha-blocker-without-precaution.ts';
import { aboutBagPowerInSulcus } from './sequence/bag-power-in-sulcus.ts';
import { aboutBiometryDateImplausible } from './sequence/biometry-date-implausible.ts';
import { aboutComplicationFoundOutsideCourse } from './sequence/complication-found-outside-course.ts';
import { aboutConsentAfterOperation } from './sequence/consent-after-operation.ts';
import { aboutDrugAgainstAllergy } from './sequence/drug-against-allergy.ts';
import { aboutEarlyRingWithIntactZonule } from './sequence/early-ring-with-intact-zonule.ts';
import { aboutEyeLeftWithoutLens } from './sequence/eye-left-without-lens.ts';
import { aboutFragmentWithoutReferral } from './sequence/fragment-without-referral.ts';
import { aboutGeneralAnaesthesiaWithoutAnaesthetist } from './sequence/general-anaesthesia-without-anaesthetist.ts';
import { aboutHighPressureUntreated } from './sequence/high-pressure-untreated.ts';
import { aboutHydrodissectionOfPosteriorPolar } from './sequence/hydrodissection-of-posterior-polar.ts';
import { aboutLeakLeftAtEnd } from './sequence/leak-left-at-end.ts';
import { aboutLongEyePeripheryNotExamined } from './sequence/long-eye-periphery-not-examined.ts';
import { aboutLongEyeWithoutBlockPrecaution } from './sequence/long-eye-without-block-precaution.ts';
import { aboutLongEyeWithoutCounselling } from './sequence/long-eye-without-counselling.ts';
import { aboutLongEyeWithoutRetinalReview } from './sequence/long-eye-without-retinal-review.ts';
import { aboutNeedleBlockRisky } from './sequence/needle-block-risky.ts';
import { aboutOnePieceLensInSulcus } from './sequence/one-piece-lens-in-sulcus.ts';
import { aboutOperationDateDisagrees } from './sequence/operation-date-disagrees.ts';
import { aboutPlannedButOperated } from './sequence/planned-but-operated.ts';
import { aboutRefractiveSurpriseUnexplained } from './sequence/refractive-surprise-unexplained.ts';
import { aboutReviewBeforeOperation } from './sequence/review-before-operation.ts';
import { aboutReviewBeforeVisit } from './sequence/review-before-visit.ts';
import { aboutReviewsOutOfOrder } from './sequence/reviews-out-of-order.ts';
import { aboutRingAfterUncontainedTear } from './sequence/ring-after-uncontained-tear.ts';
import { aboutRotatedLensNotListed } from './sequence/rotated-lens-not-listed.ts';
import { aboutRuptureWithoutEarlyReview } from './sequence/rupture-without-early-review.ts';
import { aboutScheduledReviewMissing } from './sequence/scheduled-review-missing.ts';
import { aboutSignedBeforeFinish } from './sequence/signed-before-finish.ts';
import { aboutSignedBeforeVisit } from './sequence/signed-before-visit.ts';
import { aboutSignedBeforeWritten } from './sequence/signed-before-written.ts';
import { aboutSignedLate } from './sequence/signed-late.ts';
import { aboutSmallPupilWithoutAid } from './sequence/small-pupil-without-aid.ts';
import { aboutSutureRemovalBeforeOperation } from './sequence/suture-removal-before-operation.ts';
import { aboutSutureWithoutRemovalDate } from './sequence/suture-without-removal-date.ts';
import { aboutTimesOutOfOrder } from './sequence/times-out-of-order.ts';
import { aboutToricLensInTornBag } from './sequence/toric-lens-in-torn-bag.ts';
import { aboutTornCapsuleLensInBagWithoutAccount } from './sequence/torn-capsule-lens-in-bag-without-account.ts';
import { aboutViscoelasticLeftBehindLens } from './sequence/viscoelastic-left-behind-lens.ts';
import { aboutVisitBeforeOperation } from './sequence/visit-before-operation.ts';
import { aboutVisitNameDisagreesWithDate } from './sequence/visit-name-disagrees-with-date.ts';
import { aboutVitrectomyWithoutReason } from './sequence/vitrectomy-without-reason.ts';
import { aboutVitreousLeftInWound } from './sequence/vitreous-left-in-wound.ts';
import { aboutVitreousLossWithoutRetinalReview } from './sequence/vitreous-loss-without-retinal-review.ts';
import { aboutVitreousWithoutVitrectomy } from './sequence/vitreous-without-vitrectomy.ts';
import { aboutWhiteCataractWithoutDye } from './sequence/white-cataract-without-dye.ts';
import { aboutCodeShapeWrong } from './traceability/code-shape-wrong.ts';
import { aboutExpiryBeforeOperation } from './traceability/expiry-before-operation.ts';
import { aboutLabelNotValid } from './traceability/label-not-valid.ts';
import { aboutLensWithoutSerialOrLot } from './traceability/lens-without-serial-or-lot.ts';
import { aboutReferenceNotInPattern } from './traceability/reference-not-in-pattern.ts';
import { aboutSerialSameAsLot } from './traceability/serial-same-as-lot.ts';
import { aboutWordsBesideLicensedCode } from './traceability/words-beside-licensed-code.ts';
import { aboutDissipatedEnergyDisagrees } from './arithmetic/dissipated-energy-disagrees.ts';
import { aboutDoseDisagreesWithItsStrength } from './arithmetic/dose-disagrees-with-its-strength.ts';
import { aboutMeanPowerAboveSteps } from './arithmetic/mean-power-above-steps.ts';
import { aboutStatedAgeDisagrees } from './arithmetic/stated-age-disagrees.ts';
import { aboutStatedDurationDisagrees } from './arithmetic/stated-duration-disagrees.ts';
import { aboutStatedEquivalentDisagrees } from './arithmetic/stated-equivalent-disagrees.ts';
import { aboutStatedMeanKeratometryDisagrees } from './arithmetic/stated-mean-keratometry-disagrees.ts';
import { aboutStatedOverlapDisagrees } from './arithmetic/stated-overlap-disagrees.ts';
import { aboutUltrasoundLongerThanOperation } from './arithmetic/ultrasound-longer-than-operation.ts';
import { aboutAmbiguousAbbreviation } from './writing/ambiguous-abbreviation.ts';
import { aboutAxisWrittenZero } from './writing/axis-written-zero.ts';
import { aboutClockHourOrDegrees } from './writing/clock-hour-or-degrees.ts';
import { aboutNumberInQuotes } from './writing/number-in-quotes.ts';
import { aboutPlaceholderLeft } from './writing/placeholder-left.ts';
import { aboutDictatedWordsInNoField } from './writing/dictated-words-in-no-field.ts';
import { aboutDictationContradictsItself } from './writing/dictation-contradicts-itself.ts';
import { aboutProposalNotTaken } from './writing/proposal-not-taken.ts';
import { aboutProseNamesOtherEye } from './writing/prose-names-other-eye.ts';
import { aboutProseNamesOtherPower } from './writing/prose-names-other-power.ts';
import { aboutProseNamesOtherSite } from './writing/prose-names-other-site.ts';
import { aboutProseTellsOfAdjunct } from './writing/prose-tells-of-adjunct.ts';
import { aboutProseTellsOfComplication } from './writing/prose-tells-of-complication.ts';
import { aboutUnsafeDecimalInDose } from './writing/unsafe-decimal-in-dose.ts';
import { aboutValueAwaitsConfirmation } from './writing/value-awaits-confirmation.ts';
import { aboutBirthDateInNote } from './privacy/birth-date-in-note.ts';
import { aboutHomeFolderInNote } from './privacy/home-folder-in-note.ts';
import { aboutHospitalNumberInNote } from './privacy/hospital-number-in-note.ts';
import { aboutIdentifyingFileName } from './privacy/identifying-file-name.ts';
import { aboutMailAddressInNote } from './privacy/mail-address-in-note.ts';
import { aboutNameInsteadOfReference } from './privacy/name-instead-of-reference.ts';
import { aboutNationalNumberInNote } from './privacy/national-number-in-note.ts';
import { aboutPersonNamed } from './privacy/person-named.ts';
import { aboutPhoneNumberInNote } from './privacy/phone-number-in-note.ts';
import { aboutPictureInNote } from './privacy/picture-in-note.ts';
import { aboutPostCodeInNote } from './privacy/post-code-in-note.ts';
import { aboutWebAddressInNote } from './privacy/web-address-in-note.ts';
import { aboutAmendedFieldUnknown } from './set/amended-field-unknown.ts';
import { aboutAmendedValueDiffers } from './set/amended-value-differs.ts';
import { aboutAmendedValueSame } from './set/amended-value-same.ts';
import { aboutAmendedValueUnreadable } from './set/amended-value-unreadable.ts';
import { aboutAmendmentBeforeNote } from './set/amendment-before-note.ts';
import { aboutAmendmentOfUnfinishedNote } from './set/amendment-of-unfinished-note.ts';
import { aboutAmendmentsOutOfOrder } from './set/amendments-out-of-order.ts';
import { aboutEyeOrderDisagrees } from './set/eye-order-disagrees.ts';
import { aboutIdUsedTwice } from './set/id-used-twice.ts';
import { aboutLotOfTwoModels } from './set/lot-of-two-models.ts';
import { aboutOperationNotFound } from './set/operation-not-found.ts';
import { aboutPatientDataDiffer } from './set/patient-data-differ.ts';
import { aboutSameEyeOperatedTwice } from './set/same-eye-operated-twice.ts';
import { aboutSameNarrativeAsAnother } from './set/same-narrative-as-another.ts';
import { aboutSerialImplantedTwice } from './set/serial-implanted-twice.ts';
import { aboutConstantsDisagree } from './department/constants-disagree.ts';
import { aboutDepartmentVersionMissing } from './department/department-version-missing.ts';
import { aboutDeviceIdentifierNotValid } from './department/device-identifier-not-valid.ts';
import { aboutEntryGivenTwice } from './department/entry-given-twice.ts';
import { aboutIncisionEffectDoubtful } from './department/incision-effect-doubtful.ts';
import { aboutIncisionEffectIncomplete } from './department/incision-effect-incomplete.ts';
import { aboutLensEntryIncomplete } from './department/lens-entry-incomplete.ts';
import { aboutLensWithoutUsableConstant } from './department/lens-without-usable-constant.ts';
import { aboutPatternWithoutPlaces } from './department/pattern-without-places.ts';
import { aboutPowersDisagree } from './department/powers-disagree.ts';
import { aboutRequiredFieldUnknown } from './department/required-field-unknown.ts';
import { aboutSettingOfFixedCheck } from './department/setting-of-fixed-check.ts';
import { aboutSettingOfUnknownCheck } from './department/setting-of-unknown-check.ts';
import { aboutSettingWithoutReason } from './department/setting-without-reason.ts';
import { aboutStaffEntryIncomplete } from './department/staff-entry-incomplete.ts';
import { aboutStaffReferenceNotInPattern } from './department/staff-reference-not-in-pattern.ts';

/** The page of every check, by its id. Kept apart from the checks, so that what runs while a note is written does not carry them. */
export const allAbouts: Readonly<Record<string, About>> = {
  ...aboutReaderChecks,
  'amendment-of-other-eye': aboutAmendmentOfOtherEye,
  'amendment-of-other-patient': aboutAmendmentOfOtherPatient,
  'biometry-of-other-eye': aboutBiometryOfOtherEye,
  'code-for-other-eye': aboutCodeForOtherEye,
  'consent-for-other-eye': aboutConsentForOtherEye,
  'diagnosed-eye-differs': aboutDiagnosedEyeDiffers,
  'eye-missing': aboutEyeMissing,
  'file-name-names-other-eye': aboutFileNameNamesOtherEye,
  'implanted-lens-differs-from-verified': aboutImplantedLensDiffersFromVerified,
  'incision-mirrored': aboutIncisionMirrored,
  'label-differs-from-fields': aboutLabelDiffersFromFields,
  'label-of-another-model': aboutLabelOfAnotherModel,
  'lens-verified-for-other-eye': aboutLensVerifiedForOtherEye,
  'marked-eye-differs': aboutMarkedEyeDiffers,
  'operated-eye-differs-from-all': aboutOperatedEyeDiffersFromAll,
  'planned-eye-differs': aboutPlannedEyeDiffers,
  'visit-of-other-eye': aboutVisitOfOtherEye,
  'visit-of-other-patient': aboutVisitOfOtherPatient,
  'visit-reports-other-lens': aboutVisitReportsOtherLens,
  'adjuncts-not-recorded': aboutAdjunctsNotRecorded,
  'after-care-incomplete': aboutAfterCareIncomplete,
  'amendment-incomplete': aboutAmendmentIncomplete,
  'anaesthesia-incomplete': aboutAnaesthesiaIncomplete,
  'antibiotic-not-recorded': aboutAntibioticNotRecorded,
  'antisepsis-missing': aboutAntisepsisMissing,
  'biometry-incomplete': aboutBiometryIncomplete,
  'capsule-state-incomplete': aboutCapsuleStateIncomplete,
  'capsulotomy-incomplete': aboutCapsulotomyIncomplete,
  'chamber-fields-missing': aboutChamberFieldsMissing,
  'closure-incomplete': aboutClosureIncomplete,
  'complication-incomplete': aboutComplicationIncomplete,
  'complications-not-recorded': aboutComplicationsNotRecorded,
  'diagnosis-incomplete': aboutDiagnosisIncomplete,
  'drug-incomplete': aboutDrugIncomplete,
  'essential-not-recorded': aboutEssentialNotRecorded,
  'examination-incomplete': aboutExaminationIncomplete,
  'findings-incomplete': aboutFindingsIncomplete,
  'head-incomplete': aboutHeadIncomplete,
  'incision-incomplete': aboutIncisionIncomplete,
  'indication-missing': aboutIndicationMissing,
  'keratometry-without-meridian': aboutKeratometryWithoutMeridian,
  'lens-incomplete': aboutLensIncomplete,
  'lens-removal-incomplete': aboutLensRemovalIncomplete,
  'patient-incomplete': aboutPatientIncomplete,
  'plan-incomplete': aboutPlanIncomplete,
  'required-field-missing': aboutRequiredFieldMissing,
  'ring-incomplete': aboutRingIncomplete,
  'risk-factors-not-recorded': aboutRiskFactorsNotRecorded,
  'safety-checks-incomplete': aboutSafetyChecksIncomplete,
  'safety-checks-without-detail': aboutSafetyChecksWithoutDetail,
  'signature-missing': aboutSignatureMissing,
  'team-incomplete': aboutTeamIncomplete,
  'toric-lens-incomplete': aboutToricLensIncomplete,
  'trainee-without-supervisor': aboutTraineeWithoutSupervisor,
  'visit-incomplete': aboutVisitIncomplete,
  'anaesthesia-differs-from-plan': aboutAnaesthesiaDiffersFromPlan,
  'bottle-higher-than-planned': aboutBottleHigherThanPlanned,
  'capsulotomy-outcome-disagrees': aboutCapsulotomyOutcomeDisagrees,
  'complication-without-finding': aboutComplicationWithoutFinding,
  'cylinder-crossed-with-cornea': aboutCylinderCrossedWithCornea,
  'cylinder-on-non-toric-lens': aboutCylinderOnNonToricLens,
  'excluded-complication-recorded': aboutExcludedComplicationRecorded,
  'eyes-differ-in-keratometry': aboutEyesDifferInKeratometry,
  'eyes-differ-in-length': aboutEyesDifferInLength,
  'high-myopia-disagrees-with-length': aboutHighMyopiaDisagreesWithLength,
  'implanted-lens-differs-from-plan': aboutImplantedLensDiffersFromPlan,
  'cylinder-differs-from-plan': aboutCylinderDiffersFromPlan,
  'prediction-differs-from-computed': aboutPredictionDiffersFromComputed,
  'implanted-power-differs-from-plan': aboutImplantedPowerDiffersFromPlan,
  'incision-away-from-seat': aboutIncisionAwayFromSeat,
  'incision-differs-from-plan': aboutIncisionDiffersFromPlan,
  'incision-not-on-steep-meridian': aboutIncisionNotOnSteepMeridian,
  'keratometric-index-differs': aboutKeratometricIndexDiffers,
  'keratometry-meridians-not-square': aboutKeratometryMeridiansNotSquare,
  'lens-differs-from-list': aboutLensDiffersFromList,
  'lens-not-in-list': aboutLensNotInList,
  'lens-wider-than-wound': aboutLensWiderThanWound,
  'lies-flat-disagrees': aboutLiesFlatDisagrees,
  'note-differs-from-dictation': aboutNoteDiffersFromDictation,
  'person-not-in-staff-list': aboutPersonNotInStaffList,
  'placement-not-for-lens': aboutPlacementNotForLens,
  'power-not-made': aboutPowerNotMade,
  'predicted-far-from-target': aboutPredictedFarFromTarget,
  'prediction-by-other-formula': aboutPredictionByOtherFormula,
  'procedure-disagrees-with-lens': aboutProcedureDisagreesWithLens,
  'purpose-not-of-drug': aboutPurposeNotOfDrug,
  'refraction-sign-disagrees-with-length': aboutRefractionSignDisagreesWithLength,
  'ring-described-but-not-used': aboutRingDescribedButNotUsed,
  'ring-differs-from-plan': aboutRingDiffersFromPlan,
  'ring-reason-disagrees': aboutRingReasonDisagrees,
  'signer-may-not-sign': aboutSignerMayNotSign,
  'sutures-disagree': aboutSuturesDisagree,
  'toric-axis-differs-from-plan': aboutToricAxisDiffersFromPlan,
  'toric-axis-off-steep-meridian': aboutToricAxisOffSteepMeridian,
  'torn-but-no-complication': aboutTornButNoComplication,
  'visit-finding-not-listed': aboutVisitFindingNotListed,
  'vitrectomy-history-disagrees': aboutVitrectomyHistoryDisagrees,
  'zonule-defect-without-rupture': aboutZonuleDefectWithoutRupture,
  'birth-year-impossible': aboutBirthYearImpossible,
  'capsulotomy-does-not-cover-optic': aboutCapsulotomyDoesNotCoverOptic,
  'capsulotomy-not-smaller-than-optic': aboutCapsulotomyNotSmallerThanOptic,
  'corneal-astigmatism-unusual': aboutCornealAstigmatismUnusual,
  'date-in-future': aboutDateInFuture,
  'dose-implausible': aboutDoseImplausible,
  'drops-too-often': aboutDropsTooOften,
  'duration-unusual': aboutDurationUnusual,
  'fellow-eye-same': aboutFellowEyeSame,
  'formula-after-refractive-surgery': aboutFormulaAfterRefractiveSurgery,
  'incisions-in-one-place': aboutIncisionsInOnePlace,
  'keratometry-in-mixed-units': aboutKeratometryInMixedUnits,
  'lens-power-unusual-for-eye': aboutLensPowerUnusualForEye,
  'long-eye-formula-unadjusted': aboutLongEyeFormulaUnadjusted,
  'marker-disagrees-with-capsulotomy': aboutMarkerDisagreesWithCapsulotomy,
  'minus-lens-without-own-constants': aboutMinusLensWithoutOwnConstants,
  'ring-size-unusual-for-eye': aboutRingSizeUnusualForEye,
  'spare-lens-power-unusual': aboutSpareLensPowerUnusual,
  'uncorrected-better-than-corrected': aboutUncorrectedBetterThanCorrected,
  'unusual-value': aboutUnusualValue,
  'alpha-blocker-without-precaution': aboutAlphaBlockerWithoutPrecaution,
  'bag-power-in-sulcus': aboutBagPowerInSulcus,
  'biometry-date-implausible': aboutBiometryDateImplausible,
  'complication-found-outside-course': aboutComplicationFoundOutsideCourse,
  'consent-after-operation': aboutConsentAfterOperation,
  'drug-against-allergy': aboutDrugAgainstAllergy,
  'early-ring-with-intact-zonule': aboutEarlyRingWithIntactZonule,
  'eye-left-without-lens': aboutEyeLeftWithoutLens,
  'fragment-without-referral': aboutFragmentWithoutReferral,
  'general-anaesthesia-without-anaesthetist': aboutGeneralAnaesthesiaWithoutAnaesthetist,
  'high-pressure-untreated': aboutHighPressureUntreated,
  'hydrodissection-of-posterior-polar': aboutHydrodissectionOfPosteriorPolar,
  'leak-left-at-end': aboutLeakLeftAtEnd,
  'long-eye-periphery-not-examined': aboutLongEyePeripheryNotExamined,
  'long-eye-without-block-precaution': aboutLongEyeWithoutBlockPrecaution,
  'long-eye-without-counselling': aboutLongEyeWithoutCounselling,
  'long-eye-without-retinal-review': aboutLongEyeWithoutRetinalReview,
  'needle-block-risky': aboutNeedleBlockRisky,
  'one-piece-lens-in-sulcus': aboutOnePieceLensInSulcus,
  'operation-date-disagrees': aboutOperationDateDisagrees,
  'planned-but-operated': aboutPlannedButOperated,
  'refractive-surprise-unexplained': aboutRefractiveSurpriseUnexplained,
  'review-before-operation': aboutReviewBeforeOperation,
  'review-before-visit': aboutReviewBeforeVisit,
  'reviews-out-of-order': aboutReviewsOutOfOrder,
  'ring-after-uncontained-tear': aboutRingAfterUncontainedTear,
  'rotated-lens-not-listed': aboutRotatedLensNotListed,
  'rupture-without-early-review': aboutRuptureWithoutEarlyReview,
  'scheduled-review-missing': aboutScheduledReviewMissing,
  'signed-before-finish': aboutSignedBeforeFinish,
  'signed-before-visit': aboutSignedBeforeVisit,
  'signed-before-written': aboutSignedBeforeWritten,
  'signed-late': aboutSignedLate,
  'small-pupil-without-aid': aboutSmallPupilWithoutAid,
  'suture-removal-before-operation': aboutSutureRemovalBeforeOperation,
  'suture-without-removal-date': aboutSutureWithoutRemovalDate,
  'times-out-of-order': aboutTimesOutOfOrder,
  'toric-lens-in-torn-bag': aboutToricLensInTornBag,
  'torn-capsule-lens-in-bag-without-account': aboutTornCapsuleLensInBagWithoutAccount,
  'viscoelastic-left-behind-lens': aboutViscoelasticLeftBehindLens,
  'visit-before-operation': aboutVisitBeforeOperation,
  'visit-name-disagrees-with-date': aboutVisitNameDisagreesWithDate,
  'vitrectomy-without-reason': aboutVitrectomyWithoutReason,
  'vitreous-left-in-wound': aboutVitreousLeftInWound,
  'vitreous-loss-without-retinal-review': aboutVitreousLossWithoutRetinalReview,
  'vitreous-without-vitrectomy': aboutVitreousWithoutVitrectomy,
  'white-cataract-without-dye': aboutWhiteCataractWithoutDye,
  'code-shape-wrong': aboutCodeShapeWrong,
  'words-beside-licensed-code': aboutWordsBesideLicensedCode,
  'expiry-before-operation': aboutExpiryBeforeOperation,
  'label-not-valid': aboutLabelNotValid,
  'lens-without-serial-or-lot': aboutLensWithoutSerialOrLot,
  'reference-not-in-pattern': aboutReferenceNotInPattern,
  'serial-same-as-lot': aboutSerialSameAsLot,
  'dissipated-energy-disagrees': aboutDissipatedEnergyDisagrees,
  'dose-disagrees-with-its-strength': aboutDoseDisagreesWithItsStrength,
  'mean-power-above-steps': aboutMeanPowerAboveSteps,
  'stated-age-disagrees': aboutStatedAgeDisagrees,
  'stated-duration-disagrees': aboutStatedDurationDisagrees,
  'stated-equivalent-disagrees': aboutStatedEquivalentDisagrees,
  'stated-mean-keratometry-disagrees': aboutStatedMeanKeratometryDisagrees,
  'stated-overlap-disagrees': aboutStatedOverlapDisagrees,
  'ultrasound-longer-than-operation': aboutUltrasoundLongerThanOperation,
  'ambiguous-abbreviation': aboutAmbiguousAbbreviation,
  'axis-written-zero': aboutAxisWrittenZero,
  'clock-hour-or-degrees': aboutClockHourOrDegrees,
  'dictated-words-in-no-field': aboutDictatedWordsInNoField,
  'dictation-contradicts-itself': aboutDictationContradictsItself,
  'number-in-quotes': aboutNumberInQuotes,
  'placeholder-left': aboutPlaceholderLeft,
  'proposal-not-taken': aboutProposalNotTaken,
  'prose-names-other-eye': aboutProseNamesOtherEye,
  'prose-names-other-power': aboutProseNamesOtherPower,
  'prose-names-other-site': aboutProseNamesOtherSite,
  'prose-tells-of-adjunct': aboutProseTellsOfAdjunct,
  'prose-tells-of-complication': aboutProseTellsOfComplication,
  'unsafe-decimal-in-dose': aboutUnsafeDecimalInDose,
  'value-awaits-confirmation': aboutValueAwaitsConfirmation,
  'birth-date-in-note': aboutBirthDateInNote,
  'home-folder-in-note': aboutHomeFolderInNote,
  'hospital-number-in-note': aboutHospitalNumberInNote,
  'identifying-file-name': aboutIdentifyingFileName,
  'mail-address-in-note': aboutMailAddressInNote,
  'name-instead-of-reference': aboutNameInsteadOfReference,
  'national-number-in-note': aboutNationalNumberInNote,
  'person-named': aboutPersonNamed,
  'phone-number-in-note': aboutPhoneNumberInNote,
  'picture-in-note': aboutPictureInNote,
  'post-code-in-note': aboutPostCodeInNote,
  'web-address-in-note': aboutWebAddressInNote,
  'amended-field-unknown': aboutAmendedFieldUnknown,
  'amended-value-differs': aboutAmendedValueDiffers,
  'amended-value-same': aboutAmendedValueSame,
  'amended-value-unreadable': aboutAmendedValueUnreadable,
  'amendment-before-note': aboutAmendmentBeforeNote,
  'amendment-of-unfinished-note': aboutAmendmentOfUnfinishedNote,
  'amendments-out-of-order': aboutAmendmentsOutOfOrder,
  'eye-order-disagrees': aboutEyeOrderDisagrees,
  'id-used-twice': aboutIdUsedTwice,
  'lot-of-two-models': aboutLotOfTwoModels,
  'operation-not-found': aboutOperationNotFound,
  'patient-data-differ': aboutPatientDataDiffer,
  'same-eye-operated-twice': aboutSameEyeOperatedTwice,
  'same-narrative-as-another': aboutSameNarrativeAsAnother,
  'serial-implanted-twice': aboutSerialImplantedTwice,
  'constants-disagree': aboutConstantsDisagree,
  'department-version-missing': aboutDepartmentVersionMissing,
  'device-identifier-not-valid': aboutDeviceIdentifierNotValid,
  'entry-given-twice': aboutEntryGivenTwice,
  'incision-effect-doubtful': aboutIncisionEffectDoubtful,
  'incision-effect-incomplete': aboutIncisionEffectIncomplete,
  'lens-entry-incomplete': aboutLensEntryIncomplete,
  'lens-without-usable-constant': aboutLensWithoutUsableConstant,
  'pattern-without-places': aboutPatternWithoutPlaces,
  'powers-disagree': aboutPowersDisagree,
  'required-field-unknown': aboutRequiredFieldUnknown,
  'setting-of-fixed-check': aboutSettingOfFixedCheck,
  'setting-of-unknown-check': aboutSettingOfUnknownCheck,
  'setting-without-reason': aboutSettingWithoutReason,
  'staff-entry-incomplete': aboutStaffEntryIncomplete,
  'staff-reference-not-in-pattern': aboutStaffReferenceNotInPattern,
};
