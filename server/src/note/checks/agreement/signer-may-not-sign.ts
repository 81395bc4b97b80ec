import { textCheck, type About } from '../check.ts';
import { inDepartment } from '../support/place.ts';

export const signerMayNotSign = textCheck({
  id: 'signer-may-not-sign',
  group: 'agreement',
  summary: 'The author of the signature may not sign notes alone.',
  severity: 'error',
  allowable: false,
  run: (reading, say, context) => {
    const { department } = context;
    if (reading.kind === null || reading.kind === 'department') return;
    const signatures = reading.note.signed?.items ?? [];
    const rightOf = (ref: string | undefined) =>
      department?.staff?.items.find((person) => person.ref?.value === ref)?.['may-sign'];
    if (signatures.some(({ by }) => rightOf(by?.value)?.value === true)) return;
    for (const { by } of signatures) {
      const right = rightOf(by?.value);
      if (by === undefined || right?.value !== false) continue;
      say({
        at: by,
        message: `Signature: ${by.text} may not sign notes alone, as the department lists it. A supervisor has to sign as well.`,
        related: inDepartment('the list of staff: may not sign', right, context),
      });
      return;
    }
  },
});

export const aboutSignerMayNotSign: About = () => ({
  why: 'A note signed by somebody without the right to sign is not signed.',
  whatToDo: 'Have it signed by somebody who may, as supervisor beside the author.',
  source: 'RCS Good Surgical Practice 2014, 1.3 (signature; named senior surgeon); 42 CFR 482.24(c)(1)',
  since: '1.0',
  faulty: {
    note: 'signed:\n  - by: S-07\n    meaning: author\n    at: 2031-04-08T10:48+01:00',
    files: { 'sideport.yaml': '' },
  },
  sound: {
    note: 'signed:\n  - by: S-07\n    meaning: author\n    at: 2031-04-08T10:48+01:00\n  - by: S-02\n    meaning: supervisor\n    at: 2031-04-08T11:10+01:00',
    files: { 'sideport.yaml': '' },
  },
});
