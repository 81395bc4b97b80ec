import type { Operation } from '@sideport/schemas';
import { terms } from '../as-typed.ts';
import { acuityWords, and, join, longDate } from '../english.ts';
import { keratometryWords, refractionWords } from '../measurements.ts';
import { Passage, type Tidy } from '../passage.ts';

type Preop = NonNullable<Operation['preop']>;

/** Examination and biometry. */
export function beforePassage(note: Operation, tidy: Tidy): Passage {
  const passage = new Passage();
  const preop = note.preop;
  const biometry = preop?.biometry;
  if (preop) {
    passage.say(acuities(preop, tidy));
    passage.say(refractionWords(preop.refraction, preop['vertex-distance'], tidy));
    passage.say(preop.pressure && `The intraocular pressure was ${tidy(preop.pressure)}`);
    passage.say(biometryWords(note, preop, tidy));
    passage.say(preop.pupil && `The pupil dilated to ${tidy(preop.pupil)}`);
    passage.say(preop['endothelial-count'] && `The endothelial count was ${tidy(preop['endothelial-count'])}`);
    fundus(preop, tidy, passage);
    passage.say(fellowEye(preop, tidy));
    const fellowSaid = preop.$.said['fellow-eye']?.word;
    if (fellowSaid === 'not done') passage.say('The fellow eye was not measured');
    if (fellowSaid === 'not applicable') passage.say('Fellow eye: not applicable');
    const subjects = preop.counselling?.items.map((subject) => tidy(subject)) ?? [];
    if (subjects.length > 0) passage.say(`The patient was told of: ${subjects.join('; ')}`);
    if (preop.$.said['counselling']?.word === 'none') passage.say('Counselling: none');
  }
  passage.need('acuity', preop?.acuity);
  passage.need('refraction', preop?.refraction);
  passage.need('intraocular pressure', preop?.pressure);
  passage.need('axial length', biometry?.['axial-length']);
  passage.need('keratometry', biometry?.k1, biometry?.k2);
  passage.need('anterior chamber depth', biometry?.['chamber-depth']);
  passage.need('fundus', preop?.fundus, preop?.$.said['fundus']?.word);
  return passage;
}

function acuities({ acuity }: Preop, tidy: Tidy): string | undefined {
  const parts = [
    acuity?.uncorrected && `${acuityWords(acuity.uncorrected, tidy(acuity.uncorrected))} without correction`,
    acuity?.corrected && `${acuityWords(acuity.corrected, tidy(acuity.corrected))} with the best correction`,
    acuity?.pinhole && `${acuityWords(acuity.pinhole, tidy(acuity.pinhole))} through a pinhole`,
  ].filter((part) => part !== undefined);
  return parts.length === 0 ? undefined : `The acuity was ${and(parts)}`;
}

function biometryWords({ eye }: Operation, { biometry }: Preop, tidy: Tidy): string | undefined {
  if (!biometry) return undefined;
  const values = [
    biometry['axial-length'] && `an axial length of ${tidy(biometry['axial-length'])}`,
    keratometryWords(biometry, 'of', tidy),
    biometry['chamber-depth'] && `an anterior chamber depth of ${tidy(biometry['chamber-depth'])}`,
    biometry['lens-thickness'] && `a lens thickness of ${tidy(biometry['lens-thickness'])}`,
    biometry['white-to-white'] && `a white to white of ${tidy(biometry['white-to-white'])}`,
    biometry['corneal-thickness'] && `a corneal thickness of ${tidy(biometry['corneal-thickness'])}`,
  ].filter((value) => value !== undefined);
  if (values.length === 0) return undefined;
  return join([
    biometry.method ? `${biometry.method.value} biometry` : 'biometry',
    biometry.eye && biometry.eye.value !== eye?.value && `of the ${biometry.eye.value} eye`,
    biometry.date && `of ${longDate(biometry.date.value)}`,
    biometry.device && `(${tidy(biometry.device)})`,
    `gave ${and(values)}`,
  ]);
}

function fundus(preop: Preop, tidy: Tidy, passage: Passage): void {
  const { fundus: seen } = preop;
  if (preop.$.said['fundus']?.word === 'not done') passage.say('The fundus was not examined');
  if (!seen) return;
  passage.say(
    seen.view &&
      (seen.view.value === 'no view'
        ? 'The fundus could not be seen'
        : `The view of the fundus was ${seen.view.value}`),
  );
  passage.say(seen.macula && `Macula: ${tidy(seen.macula)}`);
  const periphery = seen.periphery?.items ?? [];
  passage.say(periphery.length > 0 ? `Periphery: ${terms(periphery)}` : undefined);
  if (seen.$.said['periphery']?.word === 'not done') passage.say('The periphery was not examined');
  passage.say(seen['myopic-maculopathy'] && `Myopic maculopathy: category ${seen['myopic-maculopathy'].value}`);
  passage.say(seen.staphyloma && `There was ${seen.staphyloma.value === 'present' ? 'a' : 'no'} posterior staphyloma`);
}

function fellowEye({ 'fellow-eye': fellow }: Preop, tidy: Tidy): string | undefined {
  if (!fellow) return undefined;
  const values = [
    fellow['axial-length'] && `axial length ${tidy(fellow['axial-length'])}`,
    (fellow.k1 ?? fellow.k2) && `keratometry ${and([tidy(fellow.k1), tidy(fellow.k2)])}`,
    fellow['lens-power'] && `lens power ${tidy(fellow['lens-power'])}`,
    fellow.refraction && `refraction ${tidy(fellow.refraction)}`,
    tidy(fellow.text),
  ].filter((value) => value !== undefined);
  return values.length === 0 ? undefined : `Fellow eye: ${values.join(', ')}`;
}
