import { operationCheck, type About } from '../check.ts';
import { isToric } from '../support/course.ts';
import { related } from '../support/place.ts';

export const keratometryWithoutMeridian = operationCheck({
  id: 'keratometry-without-meridian',
  group: 'completeness',
  summary: 'The plan rests on the steep meridian, but the keratometry has no meridians.',
  severity: 'unfinished',
  allowable: true,
  run: ({ preop, plan, lens }, say) => {
    const { k1, k2 } = preop?.biometry ?? {};
    if (k1 === undefined || k2 === undefined || k1.value.meridian !== null || k2.value.meridian !== null) return;
    const steep = plan?.incision?.['on-steep-meridian'];
    const toric = [lens?.kind, plan?.lens?.kind].find((kind) => isToric(kind?.value));
    const because = steep?.value === true ? steep : toric;
    if (because === undefined) return;
    const reason =
      because === steep ? 'the incision is meant to lie on the steep meridian' : `the lens is ${because.text}`;
    say({
      at: k1,
      message: `Keratometry: no meridian is recorded with ${k1.text} and ${k2.text}, but ${reason}.`,
      related: [related(reason, because)],
    });
  },
});

export const aboutKeratometryWithoutMeridian: About = () => ({
  why: 'Without the meridian neither a toric lens nor an incision on the steep meridian can be checked or computed.',
  whatToDo: 'Copy the meridians from the print-out: 43.25 D @ 5.',
  source: 'ISO 8429:1986 (graduated dial)',
  since: '1.0',
  faulty: {
    note: 'preop:\n  biometry:\n    k1: 43.00 D\n    k2: 43.75 D\nplan:\n  incision:\n    on-steep-meridian: yes',
  },
  sound: {
    note: 'preop:\n  biometry:\n    k1: 43.00 D\n    k2: 43.75 D\nplan:\n  incision:\n    on-steep-meridian: no',
  },
});
