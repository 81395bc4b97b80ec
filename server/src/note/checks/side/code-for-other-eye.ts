import { sideOfCode } from '@sideport/schemas/codes/sides.ts';
import { operationCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';
import { certainEye } from '../support/sides.ts';

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
      const side = sideOfCode(system.value, code.value);
      // A code of both eyes can be right: for the diagnosis at the first of two operations (ICD-10-CM, I.B.13).
      if (side === undefined || side === 'both' || side === eye) continue;
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
