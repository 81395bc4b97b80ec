import { operationCheck, type About } from '../check.ts';
import { biometryLasts, dateInDoubt, isBiometryOld } from '../support/operation-date.ts';
import { related } from '../support/place.ts';
import { counted } from '../support/words.ts';

export const biometryDateImplausible = operationCheck({
  id: 'biometry-date-implausible',
  group: 'sequence and consequence',
  summary: 'The biometry was done after the operation, or long before it.',
  severity: 'warning',
  allowable: true,
  run: (note, say, context) => {
    const { date, preop } = note;
    const measured = preop?.biometry?.date;
    if (measured === undefined || date === undefined || dateInDoubt(note, context)) return;
    const spot = { at: measured, related: [related(`the operation: ${date.text}`, date)] };
    if (measured.value > date.value) {
      say({
        ...spot,
        severity: 'error',
        message: `Biometry: it is dated ${measured.text}, after the operation of ${date.text}.`,
      });
      return;
    }
    if (!isBiometryOld(measured.value, date.value, context)) return;
    const { age } = biometryLasts(measured.value, context);
    say({
      ...spot,
      message: `Biometry: it is dated ${measured.text}, more than ${counted(age.count, age.unit)} before the operation of ${date.text}. Is there a newer one?`,
    });
  },
});

export const aboutBiometryDateImplausible: About = () => ({
  why: 'Old measurements may be of another state of the eye; where two sets are in the notes, the wrong one is easily taken.',
  whatToDo: 'Compare the date with the print-out. Measure again when it is old, or allow the remark with the reason.',
  source:
    'IOL quality standard (RCOphth and UKOA 2018: take care when two sets of biometry are in the notes); limit of 12 months common practice, no source',
  since: '1.0',
  faulty: { note: 'preop:\n  biometry:\n    date: 2031-05-03' },
  sound: { note: 'preop:\n  biometry:\n    date: 2031-03-03' },
});
