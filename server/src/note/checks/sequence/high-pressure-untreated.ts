import type { Due, Field, Quantity } from '@sideport/schemas';
import { dueAfter } from '../support/reviews.ts';
import { textCheck, type CheckContext, type About } from '../check.ts';

const HIGH = 30;

export const highPressureUntreated = textCheck({
  id: 'high-pressure-untreated',
  group: 'sequence and consequence',
  summary: 'The pressure was high at the end, or at the visit, and nothing was done about it.',
  severity: 'warning',
  allowable: true,
  run: (reading, say) => {
    const found = untreated(reading);
    if (found === undefined) return;
    say({ at: found, message: `Pressure: ${found.text}, but neither treatment nor another measurement is recorded.` });
  },
});

export const aboutHighPressureUntreated: About = () => ({
  why: 'A pressure over 30 mmHg harms the optic nerve within days, sooner in glaucoma and in high myopia.',
  whatToDo: 'Record what was given or done, and when the pressure is measured again; or correct the number.',
  source: 'common practice, no source: more than 30 mmHg',
  since: '1.0',
  faulty: { base: 'follow-up', note: 'pressure: 36 mmHg\ntreatment: steroid drops to stop' },
  sound: { base: 'follow-up', note: 'pressure: 26 mmHg\ntreatment: steroid drops to stop' },
});

const TREATED = /pressure|acetazol|timolol|brimonid|dorzol|brinzol|latanop|apraclon|glaucoma|drops to lower/iu;

const SOON = 3;

function isSoon(due: Field<Due> | undefined, date: Field<string> | undefined): boolean {
  return due !== undefined && date !== undefined && (dueAfter(due.value, date.value) ?? SOON + 1) <= SOON;
}

function untreated(reading: CheckContext['reading']): Field<Quantity> | undefined {
  if (reading.kind === 'operation') {
    const { closure, drugs, reviews, date, 'after-care': care } = reading.note;
    const pressure = closure?.pressure;
    if (pressure === undefined || pressure.value.amount <= HIGH) return undefined;
    const treated =
      drugs?.items.some(({ purpose }) => purpose?.value === 'pressure lowering') === true ||
      care?.drops?.items.some(({ kind }) => kind?.value === 'pressure lowering') === true ||
      reviews?.items.some(({ what, due }) => TREATED.test(what?.value ?? '') && isSoon(due, date)) === true;
    return treated ? undefined : pressure;
  }
  if (reading.kind !== 'follow-up') return undefined;
  const { pressure, treatment, reviews, complications } = reading.note;
  if (pressure === undefined || pressure.value.amount <= HIGH) return undefined;
  const treated =
    TREATED.test(treatment?.value ?? '') ||
    reviews?.items.some(({ what }) => what !== undefined && TREATED.test(what.value)) === true ||
    complications?.items.some(({ what, action }) => what?.value === 'raised pressure' && action !== undefined) === true;
  return treated ? undefined : pressure;
}
