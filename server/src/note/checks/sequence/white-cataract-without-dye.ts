import { operationCheck, type About } from '../check.ts';
import { has } from '../support/course.ts';
import { related } from '../support/place.ts';

export const whiteCataractWithoutDye = operationCheck({
  id: 'white-cataract-without-dye',
  group: 'sequence and consequence',
  summary: 'A white cataract was operated without dye.',
  severity: 'warning',
  allowable: true,
  run: (note, say) => {
    const white = has(note.diagnosis?.cataract, 'white', 'hypermature');
    const none = note.$.said['dye'];
    if (white === undefined || none?.word !== 'none') return;
    say({
      at: none,
      message: `Dye: none is recorded for a ${white.value} cataract. Was the capsule seen without?`,
      related: [related(`the cataract: ${white.value}`, white)],
    });
  },
});

export const aboutWhiteCataractWithoutDye: About = () => ({
  why: 'Without a red reflex the capsule is not seen, and the tear runs out.',
  whatToDo: 'Record the dye that was used; if there was none on purpose, allow the remark.',
  source: 'common practice, no source',
  since: '1.0',
  faulty: { note: 'diagnosis:\n  cataract: [white]\ndifficulty: [brunescent or white lens]' },
  sound: { note: 'diagnosis:\n  cataract: [white]\ndifficulty: [brunescent or white lens]\ndye: trypan blue' },
});
