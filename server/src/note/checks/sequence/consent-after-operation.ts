import { operationCheck, type About } from '../check.ts';
import { dateInDoubt } from '../support/operation-date.ts';
import { related } from '../support/place.ts';

export const consentAfterOperation = operationCheck({
  id: 'consent-after-operation',
  group: 'sequence and consequence',
  summary: 'The consent is dated after the operation.',
  severity: 'error',
  allowable: false,
  run: (note, say, context) => {
    const { date, safety } = note;
    const consent = safety?.consent?.date;
    if (consent === undefined || date === undefined || consent.value <= date.value) return;
    if (dateInDoubt(note, context)) return;
    say({
      at: consent,
      message: `Consent: it is dated ${consent.text}, after the operation of ${date.text}.`,
      related: [related(`the operation: ${date.text}`, date)],
    });
  },
});

export const aboutConsentAfterOperation: About = () => ({
  why: 'A consent given afterwards is none.',
  whatToDo: 'Compare with the signed form and correct the date.',
  source: 'WHO Surgical Safety Checklist 2009 (consent confirmed at sign-in)',
  since: '1.0',
  faulty: { note: 'safety:\n  consent:\n    date: 2031-05-03' },
  sound: { note: 'safety:\n  consent:\n    date: 2031-04-08' },
});
