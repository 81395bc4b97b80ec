import { operationCheck, type About } from '../check.ts';
import { has, removesLens } from '../support/course.ts';
import { related } from '../support/place.ts';

const SMALL = 5;

export const smallPupilWithoutAid = operationCheck({
  id: 'small-pupil-without-aid',
  group: 'sequence and consequence',
  summary: 'The pupil was small, and no aid is recorded.',
  severity: 'info',
  allowable: true,
  run: (note, say) => {
    const none = note.$.said['pupil-aid'];
    const pupil = note.preop?.pupil;
    const small =
      has(note.difficulty, 'small pupil') ?? (pupil !== undefined && pupil.value.amount < SMALL ? pupil : undefined);
    if (none?.word !== 'none' || small === undefined || !removesLens(note)) return;
    say({
      at: none,
      message: `Pupil: “none” is recorded as aid, although the pupil was small${small === pupil ? ` (${small.text})` : ''}. Was it wide enough in theatre?`,
      related: [related(`the pupil: ${small.text}`, small)],
    });
  },
});

export const aboutSmallPupilWithoutAid: About = () => ({
  why: 'A small pupil is a risk factor of capsule rupture; how it was managed belongs in the record.',
  whatToDo: 'Record the aid, or allow the remark when the pupil was wide enough in theatre.',
  source: 'Narendran et al., Eye 2009;23:31-7 (small pupil as risk factor); limit of 5 mm common practice, no source',
  since: '1.0',
  faulty: { note: 'difficulty: [small pupil]' },
  sound: {
    note: 'difficulty: [small pupil]\npreop:\n  pupil: 4.5 mm\npupil-aid:\n  - kind: iris hooks\n    count: 4\n    reason: pupil 4.5 mm',
  },
});
