import type { Operation } from '@sideport/schemas';
import { and, join } from '../english.ts';
import { Passage, type Tidy } from '../passage.ts';

/** What was wrong with the eye, and the patient's risks. */
export function diagnosisPassage(note: Operation, tidy: Tidy): Passage {
  const passage = new Passage();
  const { diagnosis, patient } = note;
  const kinds = diagnosis?.cataract?.items.map((kind) => kind.value) ?? [];
  const grade = join([diagnosis?.scale?.value, diagnosis?.grade && `grade ${tidy(diagnosis.grade)}`]);
  passage.say(kinds.length > 0 ? join([diagnosisWords(kinds, note.eye?.value), grade], ', ') : undefined);
  passage.say(tidy(diagnosis?.text));
  if (diagnosis?.['post-operative']) {
    passage.say(`Post-operative diagnosis: ${and(diagnosis['post-operative'].items.map((kind) => kind.value))}`);
  }
  passage.say(note.indication && `Indication: ${tidy(note.indication)}`);
  passage.say(
    listed(
      'Other disease of this eye',
      note.comorbidity?.items.map((one) => one.value),
      note.$.said['comorbidity']?.word,
    ),
  );
  passage.say(
    listed(
      'Expected difficulty',
      note.difficulty?.items.map((one) => one.value),
      note.$.said['difficulty']?.word,
    ),
  );
  const allergies = patient?.allergies?.items.map((one) => tidy(one) ?? '');
  passage.say(listed('Allergies', allergies, patient?.$.said['allergies']?.word));
  const anticoagulant = tidy(patient?.anticoagulant) ?? patient?.$.said['anticoagulant']?.word;
  passage.say(
    anticoagulant === undefined || anticoagulant === 'not recorded' ? undefined : `Anticoagulant: ${anticoagulant}`,
  );
  passage.say(alphaBlocker(patient?.['alpha-blocker']?.value));
  if (patient?.['lies-flat']) passage.say(`The patient ${patient['lies-flat'].value ? 'can' : 'cannot'} lie flat`);
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

const NOT_A_FORM = ['pseudophakia', 'aphakia', 'clear lens', 'other'];
const BEHIND = 'after vitrectomy';

/** `Nuclear and cortical cataract of the left eye`; kinds that are no adjective stand behind it. */
function diagnosisWords(kinds: readonly string[], eye: string | undefined): string {
  const states = kinds.filter((kind) => NOT_A_FORM.includes(kind));
  const after = kinds.filter((kind) => kind === BEHIND);
  const forms = kinds.filter((kind) => !NOT_A_FORM.includes(kind) && kind !== BEHIND);
  const of = eye === undefined ? '' : ` of the ${eye} eye`;
  const cataract = forms.length > 0 || after.length > 0 ? join([and(forms), `cataract${of}`, ...after]) : '';
  return and([cataract, ...states.map((state) => (cataract === '' ? `${state}${of}` : state))]);
}

function listed(label: string, items: readonly string[] | undefined, said: string | undefined): string | undefined {
  if (items && items.length > 0) return `${label}: ${and(items)}`;
  return said === undefined || said === 'not recorded' ? undefined : `${label}: ${said}`;
}

function alphaBlocker(answer: string | undefined): string | undefined {
  if (answer === undefined) return undefined;
  if (answer === 'never') return 'The patient never took an alpha-blocker';
  return answer === 'now' ? 'The patient takes an alpha-blocker' : 'The patient took an alpha-blocker in the past';
}
