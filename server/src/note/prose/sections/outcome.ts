import type { Operation } from '@sideport/schemas';
import { complicationName, term, terms } from '../as-typed.ts';
import { and, capital, join } from '../english.ts';
import { Passage, type Tidy } from '../passage.ts';

type Complication = NonNullable<Operation['complications']>['items'][number];

/** Complications first, even when there were none; then what the law asks of every operation report. */
export function outcomePassage(note: Operation, tidy: Tidy): Passage {
  const passage = new Passage();
  const said = note.$.said;
  const complications = note.complications?.items ?? [];
  if (said['complications']?.word === 'none') passage.say('There were no complications');
  for (const [index, one] of complications.entries())
    passage.say(complicationWords(one, complications.length > 1 ? index + 1 : undefined, tidy));
  const excluded = note['complications-excluded']?.items ?? [];
  passage.say(excluded.length > 0 ? `Looked for and not seen: ${terms(excluded)}` : undefined);
  passage.say(note.findings && `Findings: ${tidy(note.findings)}`);
  const specimens = note.specimens?.items.map((one) => tidy(one)) ?? [];
  passage.say(specimens.length > 0 ? `Specimens: ${and(specimens)}` : undefined);
  if (said['specimens']?.word === 'none') passage.say('No specimen was taken');
  passage.say(note['blood-loss'] && `Blood loss: ${note['blood-loss'].value}`);
  const thrombosis = tidy(note.thromboprophylaxis) ?? said['thromboprophylaxis']?.word;
  passage.say(
    thrombosis === undefined || thrombosis === 'not recorded' ? undefined : `Thromboprophylaxis: ${thrombosis}`,
  );
  passage.say(note['condition-at-end'] && `Condition at the end: ${tidy(note['condition-at-end'])}`);
  passage.need('complications, or that there were none', note.complications, said['complications']?.word);
  passage.need('findings', note.findings);
  passage.need('specimens', note.specimens, said['specimens']?.word);
  passage.need('blood loss', note['blood-loss']);
  return passage;
}

function complicationWords(one: Complication, number: number | undefined, tidy: Tidy): string {
  const name = complicationName(one.what) ?? 'one that is not named here';
  const what = join([number !== undefined && `(${number})`, 'Complication:', name]);
  const told = one.told && (one.told.value ? 'The patient was told' : 'The patient was not told');
  return join(
    [
      join([join([what, one.when && stageWords(one.when)]), tidy(one.extent)], ', '),
      tidy(one.account) && capital(tidy(one.account) ?? ''),
      one.action && `What was done: ${tidy(one.action)}`,
      told,
    ],
    '. ',
  );
}

/** Stages that a bare “during” does not fit. */
const STAGES: Readonly<Record<string, string>> = {
  anaesthesia: 'during the anaesthesia',
  incision: 'at the incision',
  capsulotomy: 'during the capsulotomy',
  nucleus: 'during removal of the nucleus',
  cortex: 'during removal of the cortex',
  polishing: 'during polishing of the capsule',
  'ring insertion': 'during insertion of the ring',
  'lens insertion': 'during insertion of the lens',
  'viscoelastic removal': 'during removal of the viscoelastic',
  closure: 'at the closure',
  'after the operation': 'after the operation',
};

function stageWords(stage: NonNullable<Complication['when']>): string {
  const named = term(stage);
  return STAGES[named] ?? `during ${named}`;
}
