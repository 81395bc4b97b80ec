import { calculation } from '../calculation.ts';
import { choice, optional, quantity } from '../fields.ts';
import { found } from '../outcome.ts';
import { AXIAL_LENGTH } from '../lens-power/formula.ts';
import { CITATIONS } from '../sources.ts';

/** A figure from a publication that bears on an eye like this one. */
export type CitedFigure = {
  readonly figure: string;
  readonly citation: string;
};

interface Eye {
  readonly axialLengthMm: number;
  readonly ageYears?: number;
  readonly posteriorCapsuleTorn?: boolean;
  readonly vitreousLost?: boolean;
}

const cite = (citation: string, figure: string): CitedFigure => ({ figure, citation: `${citation} (seen)` });

function figures({ axialLengthMm, ageYears, posteriorCapsuleTorn, vitreousLost }: Eye): CitedFigure[] {
  const list = [cite(CITATIONS.petousis2016, '18 065 eyes of any length: 0.067 % at 3 months, 0.30 % at 7 years')];
  if (axialLengthMm > 25)
    list.push(cite(CITATIONS.petousis2016, 'axial length over 25 mm: hazard ratio 3.98 against 23 to 25 mm'));
  if (axialLengthMm >= 25 && axialLengthMm <= 28.9)
    list.push(
      cite(CITATIONS.laube2017, 'aged under 61, 25 to 28.9 mm: 10.2 % (677 eyes of all lengths, mean 45 months)'),
    );
  if (ageYears !== undefined && ageYears < 61)
    list.push(cite(CITATIONS.laube2017, 'aged under 61: 3.55 % (mean 45 months); hazard ratio 1.42 for each mm'));
  if (ageYears !== undefined && ageYears < 60)
    list.push(cite(CITATIONS.petousis2016, 'aged under 60: hazard ratio 5.12'));
  if (ageYears !== undefined && ageYears > 80)
    list.push(cite(CITATIONS.petousis2016, 'aged over 80: hazard ratio 0.16'));
  if (posteriorCapsuleTorn === true)
    list.push(
      cite(CITATIONS.day2015, 'posterior capsule rupture: surgery for detachment within 3 months 42 times as often'),
    );
  if (vitreousLost === true)
    list.push(cite(CITATIONS.petousis2016, 'posterior capsule rupture with vitreous loss: hazard ratio 12.83'));
  return list;
}

export const retinalDetachmentContext = calculation<Eye, readonly CitedFigure[]>({
  name: 'retinal-detachment-context',
  topic: 'Eye',
  definition: 'Published figures on retinal detachment after cataract surgery in eyes like this one.',
  inputs: {
    axialLengthMm: AXIAL_LENGTH,
    ageYears: optional(quantity('age', 'years', 0, 115)),
    posteriorCapsuleTorn: optional(choice('posterior capsule torn', [true, false])),
    vitreousLost: optional(choice('vitreous lost', [true, false])),
  },
  unit: '',
  domain: 'Figures of groups as published, side by side; they are not multiplied into a personal risk.',
  method: 'the published figures whose group this eye belongs to',
  source: { citation: `${CITATIONS.petousis2016}; ${CITATIONS.laube2017}; ${CITATIONS.day2015}`, status: 'seen' },
  cautions: ['Context for counselling and for planning review of the retina; not the risk of this person.'],
  example: {
    input: { axialLengthMm: 23.5 },
    gives: [
      {
        figure: '18 065 eyes of any length: 0.067 % at 3 months, 0.30 % at 7 years',
        citation: 'Petousis et al., Br J Ophthalmol 2016;100:1461 (seen)',
      },
    ],
  },
  compute: (eye) => found<readonly CitedFigure[]>(figures(eye)),
});
