import type { Amendment, FollowUp } from '@sideport/schemas';
import type { ComputedNote } from '../computing/computed.ts';
import { amendmentSection, changesBelow } from './amendment-lines.ts';
import { complicationName, terms } from './as-typed.ts';
import { closingSections } from './closing-sections.ts';
import { CAUTIONS, referenceOf, signatureLines, statusNotices } from './common.ts';
import type { ProseDocument } from './document.ts';
import { reviewsWords } from './due.ts';
import { acuityWords, and, capital, join, longDate, offsetWords } from './english.ts';
import { keratometryWords, refractionWords } from './measurements.ts';
import { MORE_VALUES, recordedLines } from './recorded-values.ts';
import { placePhrase } from './places.ts';
import { Passage, tidyFor, type Tidy } from './passage.ts';
import { sayRisks } from './sections/diagnosis.ts';
import { patientWords } from './sections/people.ts';

/** A later visit as prose, with its amendments at the end; the text above them is the original. */
export function followUpProse(
  note: FollowUp,
  computed: ComputedNote,
  unread: number,
  amendments: readonly Amendment[] = [],
): ProseDocument {
  const tidy = tidyFor('follow-up');
  const eye = note.eye ? `${note.eye.value} eye` : 'eye not recorded';
  return {
    title: join([`Follow-up visit: ${eye}`, note.date && longDate(note.date.value)], ', '),
    reference: referenceOf(note),
    notices: [...statusNotices(note, unread), ...(amendments.length > 0 ? [AMENDED] : [])],
    facts: [
      { label: 'Patient', text: patientWords(note.patient, tidy) },
      { label: 'Eye', text: note.eye?.value ?? 'not recorded' },
      { label: 'Visit', text: join([tidy(note.visit) ?? 'not recorded', note.by && `seen by ${tidy(note.by)}`], ', ') },
      { label: 'Operation', text: tidy(note.operation) ?? 'not recorded' },
      { label: 'Note', text: tidy(note.id) ?? 'no id recorded' },
    ],
    sections: [
      {
        id: 'examination',
        heading: 'Examination',
        paragraphs: examination(note, tidy).paragraphs,
        computed: recordedLines(computed.values),
        amended: [],
      },
      {
        id: 'outcome',
        heading: 'Complications and treatment',
        paragraphs: outcome(note, tidy).paragraphs,
        computed: [],
        amended: [],
      },
      ...closingSections(note, tidy),
      ...(amendments.length > 0
        ? [
            amendmentSection(
              amendments,
              changesBelow(amendments, () => true, note),
            ),
          ]
        : []),
    ],
    signatures: signatureLines(note.signed, tidy),
    cautions: [...CAUTIONS, ...(computed.values.length > 0 ? [MORE_VALUES] : [])],
  };
}

const AMENDED = 'This note has been amended. The text is the original; the amendments stand at the end.';

function examination(note: FollowUp, tidy: Tidy): Passage {
  const passage = new Passage();
  const { acuity, keratometry, lens, fundus } = note;
  const acuities = [
    acuity?.uncorrected && `${acuityWords(acuity.uncorrected, tidy(acuity.uncorrected))} without correction`,
    acuity?.corrected && `${acuityWords(acuity.corrected, tidy(acuity.corrected))} with the best correction`,
    acuity?.pinhole && `${acuityWords(acuity.pinhole, tidy(acuity.pinhole))} through a pinhole`,
  ].filter((part) => part !== undefined);
  sayRisks(passage, note.patient, tidy);
  passage.say(acuities.length > 0 ? `The acuity was ${and(acuities)}` : undefined);
  passage.say(refractionWords(note.refraction, note['vertex-distance'], tidy));
  const measured = keratometryWords({ ...keratometry, 'keratometry-method': keratometry?.method }, 'was', tidy);
  passage.say(measured && `The ${measured}`);
  if (note.$.said['keratometry']?.word === 'not done') passage.say('Keratometry was not done');
  passage.say(note.pressure && `The intraocular pressure was ${tidy(note.pressure)}`);
  passage.say(note.cornea && `Cornea: ${tidy(note.cornea)}`);
  passage.say(note.chamber && `Anterior chamber: ${tidy(note.chamber)}`);
  passage.say(note.wound && `Wound: ${note.wound.value}`);
  const place = placePhrase(lens?.placed);
  passage.say(place && `The lens lay ${place}`);
  if (lens?.placed?.value === 'none') passage.say('There was no lens in the eye');
  const offset = lens?.['off-centre'];
  passage.say(
    offset &&
      (offset.value.distance === 0
        ? 'It was centred'
        : `Its optic lay ${offsetWords(tidy(offset))} of the centre of the pupil`),
  );
  passage.say(lens?.power && `Power of the lens: ${tidy(lens.power)}`);
  passage.say(lens?.axis && `Its marks were found at ${tidy(lens.axis)}`);
  passage.say(note.capsule && `Posterior capsule: ${note.capsule.value}`);
  if (note.$.said['fundus']?.word === 'not done') passage.say('The fundus was not examined');
  passage.say(fundus?.dilated && `The pupil was ${fundus.dilated.value ? '' : 'not '}dilated`);
  passage.say(fundus?.macula && `Macula: ${tidy(fundus.macula)}`);
  const periphery = fundus?.periphery?.items ?? [];
  passage.say(periphery.length > 0 ? `Periphery: ${terms(periphery)}` : undefined);
  if (fundus?.$.said['periphery']?.word === 'not done') passage.say('The periphery was not examined');
  passage.need('acuity', acuity);
  passage.need('refraction', note.refraction);
  passage.need('intraocular pressure', note.pressure);
  passage.need('fundus', fundus, note.$.said['fundus']?.word);
  return passage;
}

function outcome(note: FollowUp, tidy: Tidy): Passage {
  const passage = new Passage();
  if (note.$.said['complications']?.word === 'none') passage.say('There were no complications');
  for (const one of note.complications?.items ?? []) {
    const found = one.found && `found on ${longDate(one.found.value)}`;
    passage.say(
      join(
        [
          join([capital(complicationName(one.what) ?? 'a complication that is not named here'), found], ', '),
          one.action && `What was done: ${tidy(one.action)}`,
        ],
        '. ',
      ),
    );
  }
  passage.say(note.treatment && `Treatment: ${tidy(note.treatment)}`);
  passage.say(reviewsWords(note.reviews?.items, tidy));
  if (note.$.said['reviews']?.word === 'none') passage.say('No review is planned');
  passage.need('complications, or that there were none', note.complications, note.$.said['complications']?.word);
  return passage;
}
