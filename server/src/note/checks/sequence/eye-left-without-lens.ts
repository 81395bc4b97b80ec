import { operationCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';

const lines = (why: string): string =>
  `procedure: phacoemulsification\nsafety:\n  lens-verified: not applicable\nlens: {placed: none${why}}\ndiagnosis:\n  post-operative: [aphakia]`;

export const eyeLeftWithoutLens = operationCheck({
  id: 'eye-left-without-lens',
  group: 'sequence and consequence',
  summary: 'The eye was left without a lens, and nothing says why.',
  severity: 'warning',
  allowable: true,
  run: ({ lens, plan }, say) => {
    const placed = lens?.placed;
    if (placed?.value !== 'none' || lens?.['changed-because'] !== undefined || lens?.text !== undefined) return;
    const planned = plan?.lens?.power ?? plan?.lens?.model;
    if (planned === undefined) return;
    say({
      at: placed,
      message: `Lens: the eye was left without one although ${planned.text} was planned, and nothing says why.`,
      related: [related(`planned: ${planned.text}`, planned)],
    });
  },
});

export const aboutEyeLeftWithoutLens: About = () => ({
  why: 'A planned lens that was not implanted is a decision that the next surgeon has to understand.',
  whatToDo: 'Say why in “changed-because” or in words with the lens, and what is planned.',
  source: 'RCS Good Surgical Practice 2014, 1.3 (findings and the procedure carried out)',
  since: '1.0',
  faulty: { note: lines('') },
  sound: { note: lines(', changed-because: the bag could not hold a lens') },
});
