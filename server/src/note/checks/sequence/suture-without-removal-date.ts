import { operationCheck, type About } from '../check.ts';
import { isPermanent, suturesOf } from '../support/sutures.ts';
import { headOf } from '../support/place.ts';

export const sutureWithoutRemovalDate = operationCheck({
  id: 'suture-without-removal-date',
  group: 'sequence and consequence',
  summary: 'A suture that does not dissolve was placed, and nothing says when it should be out.',
  severity: 'warning',
  allowable: true,
  run: (note, say, context) => {
    const permanent = suturesOf(note).filter(isPermanent);
    const first = permanent[0];
    if (first === undefined || permanent.some((sutures) => sutures['remove-by'] !== undefined)) return;
    if (note.reviews?.items.some(({ what }) => what !== undefined && /suture|stitch/iu.test(what.value)) === true)
      return;
    say({
      at: headOf(first.$, context),
      message: `Sutures: ${first.material?.value ?? 'a suture'} was placed, but nothing says when it should be out (“remove-by”).`,
    });
  },
});

export const aboutSutureWithoutRemovalDate: About = () => ({
  why: 'Forgotten nylon breaks, irritates and lets infection in; until it is out it bends the cornea.',
  whatToDo: 'Write “remove-by” with the suture, or plan the removal as a review.',
  source: 'RCS Good Surgical Practice 2014, 1.3 (closure technique)',
  since: '1.0',
  faulty: {
    note: 'closure:\n  sutures:\n    count: 1\n    gauge: 10-0\n    material: nylon\n  leak-test: no leak after suture',
  },
  sound: {
    note: 'closure:\n  sutures:\n    count: 1\n    gauge: 10-0\n    material: nylon\n    remove-by: 2031-05-20\n  leak-test: no leak after suture',
  },
});
