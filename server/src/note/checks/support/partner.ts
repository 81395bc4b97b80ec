import type { Field } from '@sideport/schemas';
import { textCheck, type Check, type CheckContext, type CheckInfo } from '../check.ts';
import { nameOf } from './amended.ts';
import { related } from './place.ts';

interface PartnerCheck extends Pick<CheckInfo, 'id' | 'summary'> {
  readonly record: 'follow-up' | 'amendment';
  readonly what: 'eye' | 'patient';
}

/** A follow-up or an amendment must be about the eye and the patient of the operation it points to. */
export function partnerCheck({ record, what, ...info }: PartnerCheck): Check {
  const document = record === 'follow-up' ? 'visit' : 'amendment';
  return textCheck({
    ...info,
    group: 'side and identity',
    severity: 'error',
    allowable: false,
    run: (reading, say, { operation, operationFile, amended }: CheckContext) => {
      if (reading.kind !== record) return;
      const partner = record === 'amendment' ? amended?.note : operation;
      if (partner === null || partner === undefined) return;
      const name = record === 'amendment' ? nameOf(amended) : 'operation';
      const file = record === 'amendment' ? amended?.file : operationFile;
      const [here, there]: readonly (Field<string> | undefined)[] =
        what === 'eye' ? [reading.note.eye, partner.eye] : [reading.note.patient?.ref, partner.patient?.ref];
      if (here === undefined || there === undefined || here.value === there.value) return;
      const message =
        what === 'eye'
          ? `Side: this ${document} is about the ${here.value} eye, but the ${name} it points to was ${name === 'visit' ? 'about' : 'on'} the ${there.value} eye.`
          : `Patient: this ${document} is of ${here.value}, but the ${name} it points to is of ${there.value}.`;
      say({ at: here, message, related: [related(`the ${name}: ${there.value}`, there, file)] });
    },
  });
}
