import { operationCheck, type About } from '../check.ts';

const essential: readonly (readonly [section: string | null, key: string, name: string])[] = [
  [null, 'date', 'The date of the operation'],
  [null, 'procedure', 'The procedure'],
  ['lens', 'power', 'The power of the lens'],
  ['lens', 'model', 'The model of the lens'],
  ['lens', 'placed', 'Where the lens lies'],
  ['capsule-state', 'posterior', 'The posterior capsule'],
  ['capsule-state', 'vitreous', 'The vitreous'],
  ['patient', 'ref', 'The patient reference'],
];

export const essentialNotRecorded = operationCheck({
  id: 'essential-not-recorded',
  group: 'completeness',
  summary: 'Something that a final note cannot do without is “not recorded”.',
  severity: 'error',
  allowable: true,
  run: (note, say, { status }) => {
    if (status !== 'final') return;
    for (const [section, key, name] of essential) {
      const group = section === null ? note : note[section as 'lens' | 'patient' | 'capsule-state'];
      const said = group?.$.said[key];
      if (said?.word !== 'not recorded') continue;
      say({
        at: said,
        message: `${name} is “not recorded” in a final note. Find it out from the theatre log or the labels kept.`,
      });
    }
  },
});

export const aboutEssentialNotRecorded: About = () => ({
  why: '“Not recorded” is honest, but a record without lens power or state of the capsule is not one.',
  whatToDo: 'Find it out from the theatre log or the labels kept, now rather than later.',
  source: 'RCS Good Surgical Practice 2014, 1.3; 42 CFR 482.51(b)(6)',
  since: '1.0',
  faulty: { note: 'capsule-state:\n  posterior: not recorded' },
  sound: { note: 'capsule-state:\n  posterior: intact' },
});
