import { operationCheck, type About } from '../check.ts';
import { isToric } from '../support/course.ts';
import { lensStandard } from '../support/completeness.ts';
import { listed } from '../support/words.ts';
import { isWritten } from '../support/written.ts';

export const toricLensIncomplete = operationCheck({
  id: 'toric-lens-incomplete',
  group: 'completeness',
  summary: 'A toric lens is recorded without cylinder or axis.',
  severity: 'unfinished',
  allowable: true,
  run: (note, say, { reading, status }) => {
    const implanted = { lens: note.lens, path: ['lens'], what: 'Lens' };
    const planned = { lens: note.plan?.lens, path: ['plan', 'lens'], what: 'Planned lens' };
    for (const { lens, path, what } of status === 'planned' ? [planned] : [planned, implanted]) {
      if (lens?.kind === undefined || !isToric(lens.kind.value)) continue;
      const missing = (['cylinder', 'axis'] as const).filter(
        (key) => lens[key] === undefined && !isWritten(reading, [...path, key]),
      );
      if (missing.length === 0) continue;
      say({
        at: lens.kind,
        message: `${what}: it is ${lens.kind.text}, but the ${listed(missing)} ${missing.length === 1 ? 'is' : 'are'} not recorded. Asked for by ${lensStandard}.`,
      });
    }
  },
});

export const aboutToricLensIncomplete: About = () => ({
  why: 'A later rotation can only be seen, and put right, against the recorded axis.',
  whatToDo: 'Copy the cylinder from the box and write the axis at which the marks lie.',
  source: 'IOL quality standard (RCOphth and UKOA 2018)',
  since: '1.0',
  faulty: {
    note: 'plan:\n  lens:\n    kind: toric\n    cylinder: +3.00 D\n    axis: 88°\nlens:\n  kind: toric\n  cylinder: +3.00 D',
  },
  sound: {
    note: 'plan:\n  lens:\n    kind: toric\n    cylinder: +3.00 D\n    axis: 88°\nlens:\n  kind: toric\n  cylinder: +3.00 D\n  axis: 88°',
  },
});
