import { operationCheck, type About } from '../check.ts';
import { related } from '../support/place.ts';
import { wasAbandoned } from '../support/course.ts';

const WITH_LENS = [
  'phacoemulsification with lens',
  'manual small-incision extraction with lens',
  'extracapsular extraction with lens',
  'secondary lens',
  'lens exchange',
];
const WITHOUT_LENS = ['phacoemulsification', 'intracapsular extraction', 'peripheral iridotomy'];

export const procedureDisagreesWithLens = operationCheck({
  id: 'procedure-disagrees-with-lens',
  group: 'agreement',
  summary: 'The procedure says that a lens was implanted and the note that none was, or the other way round.',
  severity: 'error',
  allowable: true,
  run: (note, say, { status }) => {
    const { procedure, lens } = note;
    const shows = lens?.placed ?? lens?.power;
    if (procedure === undefined || shows === undefined || status === 'planned' || wasAbandoned(note)) return;
    const without = lens?.placed?.value === 'none';
    const wrong = without ? WITH_LENS.includes(procedure.value) : WITHOUT_LENS.includes(procedure.value);
    if (!wrong) return;
    say({
      at: procedure,
      message: `Procedure: it says “${procedure.value}”, but ${without ? 'the eye was left without a lens' : `a lens is recorded (${shows.text})`}.`,
      related: [related(`the lens: ${shows.text}`, shows)],
    });
  },
});

export const aboutProcedureDisagreesWithLens: About = () => ({
  why: 'Codes, stock and audit are taken from the procedure.',
  whatToDo: 'Write the procedure as it was done, not as it was planned.',
  source: 'RCS Good Surgical Practice 2014, 1.3 (procedure carried out)',
  since: '1.0',
  faulty: { note: 'procedure: phacoemulsification' },
  sound: { note: 'procedure: phacoemulsification with lens' },
});
