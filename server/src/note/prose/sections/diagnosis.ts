import type { Field, Operation } from '@sideport/schemas';
import { term, terms } from '../as-typed.ts';
import { and, join } from '../english.ts';
import { Passage, type Tidy } from '../passage.ts';

/** What was wrong with the eye, and the patient's risks. */
export function diagnosisPassage(note: Operation, tidy: Tidy): Passage {
  const passage = new Passage();
  const { diagnosis, patient } = note;
  const kinds = diagnosis?.cataract?.items ?? [];
  const grade = join([diagnosis?.scale?.value, diagnosis?.grade && `grade ${tidy(diagnosis.grade)}`]);
  passage.say(
    kinds.length > 0 ? join([diagnosisWords(kinds, (diagnosis?.eye ?? note.eye)?.value), grade], ', ') : undefined,
  );
  passage.say(tidy(diagnosis?.text));
  const after = diagnosis?.['post-operative']?.items ?? [];
  passage.say(after.length > 0 ? `Post-operative diagnosis: ${diagnosisWords(after, undefined)}` : undefined);
  passage.say(note.indication && `Indication: ${tidy(note.indication)}`);
  const { comorbidity, difficulty } = note;
  passage.say(
    listed('Other disease of this eye', comorbidity && terms(comorbidity.items), note.$.said['comorbidity']?.word),
  );
  passage.say(listed('Expected difficulty', difficulty && terms(difficulty.items), note.$.said['difficulty']?.word));
  sayRisks(passage, patient, tidy);
  passage.need('diagnosis', diagnosis?.cataract, diagnosis?.text);
  passage.need(
    'post-operative diagnosis',
    diagnosis?.['post-operative'],
    note.status?.value === 'planned' ? 'later' : undefined,
  );
  passage.need('indication', note.indication);
  passage.need('other disease of this eye', note.comorbidity, note.$.said['comorbidity']?.word);
  passage.need('allergies', patient?.allergies, patient?.$.said['allergies']?.word);
  passage.need('anticoagulant', patient?.anticoagulant, patient?.$.said['anticoagulant']?.word);
  passage.need('alpha-blocker', patient?.['alpha-blocker']);
  return passage;
}

/** What a patient brings along: allergies and drugs; as it is recorded in a note of any kind. */
export function sayRisks(passage: Passage, patient: Operation['patient'], tidy: Tidy): void {
  const allergies = patient?.allergies?.items.map((one) => allergyWords(tidy(one) ?? ''));
  passage.say(listed('Allergies', allergies && and(allergies), patient?.$.said['allergies']?.word));
  const anticoagulant = tidy(patient?.anticoagulant) ?? patient?.$.said['anticoagulant']?.word;
  passage.say(
    anticoagulant === undefined || anticoagulant === 'not recorded' ? undefined : `Anticoagulant: ${anticoagulant}`,
  );
  passage.say(alphaBlocker(patient?.['alpha-blocker']?.value));
  if (patient?.['lies-flat']) passage.say(`The patient ${patient['lies-flat'].value ? 'can' : 'cannot'} lie flat`);
}

const NOT_A_FORM = ['pseudophakia', 'aphakia', 'clear lens'];
const BEHIND = 'after vitrectomy';

/** `Nuclear and cortical cataract of the left eye`; kinds that are no adjective stand behind it. */
function diagnosisWords(kinds: readonly Field<string>[], eye: string | undefined): string {
  const of = eye === undefined ? '' : ` of the ${eye} eye`;
  const forms = kinds.filter(({ value }) => value !== 'other' && value !== BEHIND && !NOT_A_FORM.includes(value));
  const after = kinds.filter(({ value }) => value === BEHIND);
  const cataract = forms.length + after.length > 0 ? [join([terms(forms), `cataract${of}`, ...after.map(term)])] : [];
  const [first, ...others] = kinds.filter(({ value }) => NOT_A_FORM.includes(value)).map(term);
  const states = first === undefined ? [] : [cataract.length > 0 ? first : first + of, ...others];
  const named = [...cataract, ...states];
  if (named.length === 0) return `a diagnosis${of} that is not named here`;
  const further = kinds.some(({ value }) => value === 'other') ? ['another diagnosis that is not named here'] : [];
  return and([...named, ...further]);
}

/** Short forms that not every reader knows. */
const ALLERGY_SHORT: Readonly<Record<string, string>> = {
  nkda: 'no known drug allergies',
  nka: 'no known allergies',
};

const allergyWords = (text: string): string => ALLERGY_SHORT[text.toLowerCase().replaceAll('.', '')] ?? text;

function listed(label: string, items: string | undefined, said: string | undefined): string | undefined {
  if (items !== undefined && items !== '') return `${label}: ${items}`;
  return said === undefined || said === 'not recorded' ? undefined : `${label}: ${said}`;
}

function alphaBlocker(answer: string | undefined): string | undefined {
  if (answer === undefined) return undefined;
  if (answer === 'never') return 'The patient never took an alpha-blocker';
  return answer === 'now' ? 'The patient takes an alpha-blocker' : 'The patient took an alpha-blocker in the past';
}
