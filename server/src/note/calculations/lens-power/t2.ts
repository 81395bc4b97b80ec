import { CITATIONS } from '../sources.ts';
import { lensFormula, MEASUREMENTS } from './formula.ts';
import { A_CONSTANT, srkOptics, type SrkTEye } from './srk-t.ts';

export const t2 = lensFormula<SrkTEye>({
  title: 'T2',
  slug: 't2',
  inputs: { ...MEASUREMENTS, aConstant: A_CONSTANT },
  domain: 'As SRK/T, whose clamp in long steep eyes it does away with. Takes the constant of SRK/T.',
  method: 'SRK/T with corneal height -10.326 + 0.32630 L + 0.13533 K',
  source: { citation: CITATIONS.sheard2010, status: 'from memory' },
  hyperopicInLongEyes: true,
  example: {
    eye: { axialLengthMm: 30, meanKeratometryD: 43, aConstant: 118.4 },
    targetD: -1,
    gives: 5.102175,
    powerD: 5.102175,
    leaves: -1,
    position: 7.160118,
  },
  read: (eye) => srkOptics(eye, -10.326 + 0.3263 * eye.axialLengthMm + 0.13533 * eye.meanKeratometryD, []),
});
