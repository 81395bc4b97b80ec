import { codeSets } from '@sideport/schemas/codes/table.ts';
import { operationCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';
import { certainEye } from '../support/sides.ts';

const plain = (code: string): string => code.replace('.', '').toUpperCase();

let known: ReadonlyMap<string, 'right' | 'left'> | undefined;

/** The side that a code is for, where the code tells one, by system and code without its dot. */
function sidesOfCodes(): ReadonlyMap<string, 'right' | 'left'> {
  if (known !== undefined) return known;
  const sides = new Map<string, 'right' | 'left'>();
  for (const { diagnoses, procedures } of Object.values(codeSets)) {
    for (const { system, codes } of [diagnoses, procedures]) {
      for (const { right, left } of codes) {
        if (right === left) continue;
        sides.set(`${system} ${plain(right)}`, 'right');
        sides.set(`${system} ${plain(left)}`, 'left');
      }
    }
  }
  known = sides;
  return sides;
}

export const codeForOtherEye = operationCheck({
  id: 'code-for-other-eye',
  group: 'side and identity',
  summary: 'A code is for the other eye.',
  severity: 'error',
  allowable: false,
  run: (note, say) => {
    const eye = certainEye(note);
    if (eye === undefined || note.eye === undefined) return;
    for (const { system, code } of note.codes?.items ?? []) {
      if (system === undefined || code === undefined) continue;
      const side = sidesOfCodes().get(`${system.value} ${plain(code.value)}`);
      if (side === undefined || side === eye) continue;
      say({
        at: code,
        message: `Side: ${code.value} is a code of the ${side} eye, but this note is about the ${eye} eye.`,
        related: [related(`the note: ${eye}`, note.eye)],
      });
    }
  },
});

export const aboutCodeForOtherEye: About = () => ({
  why: 'Codes of the two eyes differ in one character; a bill or a register then shows an operation on the wrong eye.',
  whatToDo: 'Look the code up for the side of the note.',
  source: 'ICD-10-CM and ICD-10-PCS tables (US government, yearly); OPCS-4.11 site codes Z94.2 and Z94.3',
  since: '1.0',
  faulty: { note: 'codes:\n  - system: ICD-10-PCS\n    code: 08RK3JZ' },
  sound: { note: 'codes:\n  - system: ICD-10-PCS\n    code: 08RJ3JZ' },
});
