import type { Operation } from '@sideport/schemas';
import type { Grade, RiskFactors } from '../calculations/eye/rupture-risk.ts';
import { either, hasOne, wordsOf } from './words.ts';

const GRADE: Readonly<Record<string, Grade>> = {
  consultant: 'consultant',
  'career grade': 'associate-specialist',
  fellow: 'fellow',
  'senior trainee': 'specialist-registrar',
  'junior trainee': 'senior-house-officer',
};

/** Limits of the dilated pupil, mm; common practice, since the model counted sizes in words. */
const SMALL_PUPIL = 4;
const MEDIUM_PUPIL = 6;

function pupilOf(note: Operation, smallByWord: boolean | undefined): RiskFactors['pupil'] {
  if (smallByWord === true) return 'small';
  const diameter = note.preop?.pupil?.value.amount;
  if (diameter === undefined) return undefined;
  if (diameter < SMALL_PUPIL) return 'small';
  return diameter <= MEDIUM_PUPIL ? 'medium' : 'large';
}

/** What the note says of the factors of the risk model; a factor that is not recorded is left out, not taken as no. */
export function riskFactorsOf(note: Operation, ageYears: number, axialLengthMm: number | undefined): RiskFactors {
  const { patient, preop } = note;
  const comorbidity = wordsOf(note.comorbidity, 'comorbidity', note.$);
  const difficulty = wordsOf(note.difficulty, 'difficulty', note.$);
  const cataract = note.diagnosis?.cataract?.items.map((item) => item.value);
  const sex = patient?.sex?.value;
  const view = preop?.fundus?.view?.value;
  const fundusHidden = view === undefined ? undefined : view === 'no view';
  const liesFlat = patient?.['lies-flat']?.value;
  const grade = note.team?.items.find((member) => member.role?.value === 'surgeon')?.grade?.value;
  return given({
    ageYears,
    male: sex === 'male' ? true : sex === 'female' ? false : undefined,
    glaucoma: hasOne(comorbidity, 'glaucoma'),
    diabeticRetinopathy: hasOne(comorbidity, 'diabetic retinopathy', 'diabetic macular oedema'),
    brunescentOrWhite: either(
      hasOne(cataract, 'brunescent', 'white', 'hypermature'),
      hasOne(difficulty, 'brunescent or white lens'),
    ),
    noFundalView: either(fundusHidden, hasOne(difficulty, 'no view of the fundus')),
    pseudoexfoliationOrPhacodonesis: either(
      hasOne(comorbidity, 'pseudoexfoliation', 'phacodonesis'),
      // Where it is written among the difficulties, its term is the zonule's.
      note.difficulty?.items.some(({ text }) => /phacodonesis/iu.test(text)),
    ),
    pupil: pupilOf(note, hasOne(difficulty, 'small pupil')),
    axialLengthMm,
    // The model knows doxazosin; the note knows the class of drugs.
    doxazosin: patient?.['alpha-blocker'] && patient['alpha-blocker'].value === 'now',
    cannotLieFlat: either(liesFlat === undefined ? undefined : !liesFlat, hasOne(difficulty, 'unable to lie flat')),
    grade: grade === undefined ? undefined : GRADE[grade],
  });
}

type Loose = { readonly [K in keyof RiskFactors]: RiskFactors[K] | undefined };

/** Leaves out what is undefined. */
function given(factors: Loose): RiskFactors {
  return Object.fromEntries(Object.entries(factors).filter(([, value]) => value !== undefined));
}
