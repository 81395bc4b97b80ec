import { textCheck, type About } from '../check.ts';
import { walk } from '../support/values.ts';

const PEOPLE = ['ref', 'by', 'given-by', 'anaesthetist'];
/** Two capitalised words, or “Name, First name”; no figures. Titles have a check of their own. */
const NAME =
  /^(?!(?:Mr|Mrs|Ms|Miss|Mx|Dr|Prof|Professor|Sister|Master)\b)\p{Lu}[\p{L}’'-]+,? +\p{Lu}[\p{L}.’'-]*(?: +\p{Lu}[\p{L}.’'-]*)*$/u;

export const nameInsteadOfReference = textCheck({
  id: 'name-instead-of-reference',
  group: 'privacy',
  summary: 'A name stands where a reference is due.',
  severity: 'error',
  allowable: true,
  run: (reading, say, { status }) => {
    for (const { field, plan } of walk(reading).values) {
      if (plan.notation.name !== 'identifier' || !PEOPLE.includes(keyOf(field.path)) || !NAME.test(field.text))
        continue;
      say({
        at: field,
        severity: status === 'final' ? 'error' : 'warning',
        message: `Privacy: “${plan.guide.label}” seems to hold a name (${field.text.slice(0, 1)}***). Write the local reference.`,
      });
    }
  },
});

export const aboutNameInsteadOfReference: About = () => ({
  why: 'References keep names out of every copy of the note, and they do not change with marriage.',
  whatToDo: 'Write the local reference of the person.',
  source: '45 CFR 164.514(b)(2) (names); GDPR Art. 4(5)',
  since: '1.0',
  faulty: { note: 'anaesthesia:\n  given-by: Anna Linden' },
  sound: { note: 'anaesthesia:\n  given-by: S-02' },
});

/** The key of a value; an entry of a list goes by the key of the list. */
function keyOf(path: readonly (string | number)[]): string {
  return String(path.findLast((step) => typeof step === 'string'));
}
