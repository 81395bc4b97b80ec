import { operationCheck, type About } from '../check.ts';
import { lastDayOf } from '../support/dates.ts';
import { labelDisagreements } from '../support/label.ts';
import { implantedLens } from '../support/lenses.ts';
import { dateInDoubt } from '../support/operation-date.ts';
import { related } from '../support/place.ts';

export const expiryBeforeOperation = operationCheck({
  id: 'expiry-before-operation',
  group: 'traceability',
  summary: 'The lens had expired on the day of the operation.',
  severity: 'error',
  allowable: true,
  run: (note, say, context) => {
    const lens = implantedLens(note);
    if (lens?.expiry === undefined || note.date === undefined || dateInDoubt(note, context)) return;
    if (
      lastDayOf(lens.expiry.value) >= note.date.value ||
      labelDisagreements(lens, note.date.value).some(({ field }) => field === lens.expiry)
    )
      return;
    say({
      at: lens.expiry,
      message: `Lens: it expired ${lens.expiry.text}, before the operation of ${note.date.text}.`,
      related: [related(`the operation: ${note.date.text}`, note.date)],
    });
  },
});

export const aboutExpiryBeforeOperation: About = () => ({
  why: 'Sterility is warranted up to the expiry and no longer.',
  whatToDo: 'Compare with the label of the box. If an expired lens was implanted, record it as an incident and say so.',
  source: 'ISO 11979-4 (labelling of intraocular lenses; from memory)',
  since: '1.0',
  faulty: { note: 'without: lens.udi\nlens:\n  expiry: 2031-03' },
  sound: { note: 'without: lens.udi\nlens:\n  expiry: 2031-04' },
});
