import { operationCheck, type About } from '../check.ts';
import { mayBeHour } from '../support/bare-hour.ts';
import { replacing } from '../support/fixes.ts';

export const clockHourOrDegrees = operationCheck({
  id: 'clock-hour-or-degrees',
  group: 'writing',
  summary: 'The place of an incision is a small number that may be a clock hour or degrees.',
  severity: 'warning',
  allowable: true,
  run: ({ incisions, plan }, say, { reading }) => {
    for (const { at } of [...(incisions?.items ?? []), ...(plan?.incision === undefined ? [] : [plan.incision])]) {
      if (at === undefined || at.value.kind !== 'degrees' || !mayBeHour(at.text)) continue;
      const typed = at.text.trim();
      say({
        at,
        message: `Incision: a bare ${typed} is read as ${typed}°. Write ${typed}° or ${typed} o'clock, whichever is meant.`,
        fixes: [`${typed} o'clock`, `${typed}°`].map((text) => replacing(reading, at.span, text)),
      });
    }
  },
});

export const aboutClockHourOrDegrees: About = () => ({
  why: 'An angle of 2° and 2 o’clock are 28° apart: the arithmetic of the astigmatism takes the one that was read.',
  whatToDo: 'Write the sign of the degree or “o’clock”.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: {
    note: 'incisions:\n  - kind: main\n    at: temporal\n    width: 2.4 mm\n    plane: clear corneal\n    architecture: two planes\n    sutures: none\n  - kind: side-port\n    at: 2\n    width: 1.0 mm',
  },
  sound: {
    note: "incisions:\n  - kind: main\n    at: temporal\n    width: 2.4 mm\n    plane: clear corneal\n    architecture: two planes\n    sutures: none\n  - kind: side-port\n    at: 2 o'clock\n    width: 1.0 mm",
  },
});
