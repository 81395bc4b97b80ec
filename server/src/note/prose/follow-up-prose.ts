import type { FollowUp } from '@sideport/schemas';
import type { ComputedNote } from '../computing/computed.ts';
import { CAUTIONS, referenceOf, signatureLines, statusNotices } from './common.ts';
import type { ProseDocument } from './document.ts';
import { acuityWords, and, capital, join, longDate } from './english.ts';
import { MORE_VALUES, recordedLines } from './recorded-values.ts';
import { placePhrase } from './places.ts';
import { Passage, tidyFor, type Tidy } from './passage.ts';

/** A later visit as prose. */
export function followUpProse(note: FollowUp, computed: ComputedNote, unread: number): ProseDocument {
  const tidy = tidyFor('follow-up');
  const patient = join(
    [tidy(note.patient?.ref), note.patient?.born && `born ${tidy(note.patient.born)}`, tidy(note.patient?.sex)],
    ', ',
  );
  const eye = note.eye ? `${note.eye.value} eye` : 'eye not recorded';
  return {
    title: join([`Follow-up visit: ${eye}`, note.date && longDate(note.date.value)], ', '),
    reference: referenceOf(note),
    notices: statusNotices(note, unread),
    facts: [
      { label: 'Patient', text: patient || 'not recorded' },
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
      ...(note['free-text']
        ? [
            {
              id: 'free-text',
              heading: 'Further remarks',
              paragraphs: [tidy(note['free-text']) ?? ''],
              computed: [],
              amended: [],
            },
          ]
        : []),
    ],
    signatures: signatureLines(note.signed, tidy),
    cautions: [...CAUTIONS, ...(computed.values.length > 0 ? [MORE_VALUES] : [])],
  };
}

function examination(note: FollowUp, tidy: Tidy): Passage {
  const passage = new Passage();
  const { acuity, keratometry, lens, fundus } = note;
  const acuities = [
    acuity?.uncorrected && `${acuityWords(acuity.uncorrected, tidy(acuity.uncorrected))} without correction`,
    acuity?.corrected && `${acuityWords(acuity.corrected, tidy(acuity.corrected))} with the best correction`,
    acuity?.pinhole && `${acuityWords(acuity.pinhole, tidy(acuity.pinhole))} through a pinhole`,
  ].filter((part) => part !== undefined);
  passage.say(acuities.length > 0 ? `The acuity was ${and(acuities)}` : undefined);
  passage.say(note.refraction && `The refraction was ${tidy(note.refraction)}`);
  const k = and([tidy(keratometry?.k1), tidy(keratometry?.k2)]);
  passage.say(k === '' ? undefined : `The keratometry was ${k}`);
  passage.say(note.pressure && `The intraocular pressure was ${tidy(note.pressure)}`);
  passage.say(note.cornea && `Cornea: ${tidy(note.cornea)}`);
  passage.say(note.chamber && `Anterior chamber: ${tidy(note.chamber)}`);
  passage.say(note.wound && `Wound: ${note.wound.value}`);
  passage.say(lens?.placed && `The lens lay ${placePhrase(lens.placed.value)}`);
  const offset = lens?.['off-centre'];
  passage.say(offset && (offset.value.distance === 0 ? 'It was centred' : `Off-centre: ${tidy(offset)}`));
  passage.say(lens?.axis && `Its marks were found at ${tidy(lens.axis)}`);
  passage.say(note.capsule && `Posterior capsule: ${note.capsule.value}`);
  if (note.$.said['fundus']?.word === 'not done') passage.say('The fundus was not examined');
  passage.say(fundus?.dilated && `The pupil was ${fundus.dilated.value ? '' : 'not '}dilated`);
  passage.say(fundus?.macula && `Macula: ${tidy(fundus.macula)}`);
  const periphery = fundus?.periphery?.items.map((finding) => finding.value) ?? [];
  passage.say(periphery.length > 0 ? `Periphery: ${and(periphery)}` : undefined);
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
          join([capital(one.what?.value ?? 'complication not named'), found], ', '),
          one.action && `What was done: ${tidy(one.action)}`,
        ],
        '. ',
      ),
    );
  }
  passage.say(note.treatment && `Treatment: ${tidy(note.treatment)}`);
  const reviews =
    note.reviews?.items.map((review) => join([tidy(review.what) ?? 'review', review.due && `(${tidy(review.due)})`])) ??
    [];
  passage.say(reviews.length > 0 ? `Reviews: ${reviews.join('; ')}` : undefined);
  passage.need('complications, or that there were none', note.complications, note.$.said['complications']?.word);
  return passage;
}
