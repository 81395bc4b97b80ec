import { operationCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';
import { isPartlyUnread } from '../support/written.ts';
import { listed } from '../support/words.ts';

export const anaesthesiaDiffersFromPlan = operationCheck({
  id: 'anaesthesia-differs-from-plan',
  group: 'agreement',
  summary: 'Another anaesthesia was given than planned, and nothing says why.',
  severity: 'warning',
  allowable: true,
  run: ({ plan, anaesthesia }, say, { reading }) => {
    const planned = plan?.anaesthesia;
    const given = anaesthesia?.kinds;
    if (planned === undefined || given === undefined || anaesthesia?.text !== undefined) return;
    const missing = planned.items.filter(({ value }) => !given.items.some((kind) => kind.value === value));
    if (missing.length === 0 || isPartlyUnread(reading, 'anaesthesia', 'kinds')) return;
    const [was, is] = [planned, given].map(({ items }) => listed(items.map(({ value }) => value)));
    say({
      at: given.$,
      message: `Anaesthesia: ${is} was given, but ${was} was planned, and nothing says why.`,
      related: [related(`planned: ${was}`, planned.$)],
    });
  },
});

export const aboutAnaesthesiaDiffersFromPlan: About = () => ({
  why: 'A change on the day has a reason, and the next anaesthetist wants to know it.',
  whatToDo: 'Say why in “text” of the anaesthesia, or correct the one that is wrong.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: { note: 'anaesthesia:\n  kinds: [general]\n  anaesthetist: A-04' },
  sound: {
    note: 'anaesthesia:\n  kinds: [general]\n  anaesthetist: A-04\n  text: could not keep still, changed after sign-in',
  },
});
