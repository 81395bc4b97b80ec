import { id, list, quantity, section, text, value, word } from '../fields/field.ts';
import { yesNo } from '../notation/plain.ts';
import { calendarDate, timeOfDay } from '../notation/time.ts';
import { sides } from '../vocabulary/head.ts';
import { anaesthesiaKinds, antiseptics, seats } from '../vocabulary/theatre.ts';
import { lensIdentity } from './lens-fields.ts';

const who = 'WHO Surgical Safety Checklist 2009';

function pause(label: string, meaning: string) {
  return section(
    { label, meaning, source: who, says: ['not done'] },
    {
      time: value(timeOfDay, { label: 'Time', meaning: 'When it was done.', example: '09:02' }),
      by: id({ label: 'Led by', meaning: 'Staff reference of the person who led it.', example: 'N-11' }),
    },
  );
}

export const safety = section(
  { label: 'Safety checks', meaning: 'Consent, marking and the three pauses.', source: who },
  {
    consent: section(
      { label: 'Consent', meaning: 'The signed consent as seen in theatre.', source: who },
      {
        eye: word(sides, {
          label: 'Side on the consent',
          meaning: 'The side written on the consent.',
          example: 'left',
          source: who,
        }),
        date: value(calendarDate, {
          label: 'Date of consent',
          meaning: 'The day it was signed.',
          example: '2031-02-20',
        }),
        confirmed: value(yesNo, {
          label: 'Confirmed',
          meaning: 'Whether the patient confirmed it today.',
          example: 'yes',
        }),
      },
    ),
    'site-marked': word(sides, {
      label: 'Marked side',
      meaning: 'The side marked on the patient.',
      example: 'left',
      source: who,
      says: ['not done'],
    }),
    'sign-in': pause('Sign in', 'Before anaesthesia.'),
    'time-out': pause('Time out', 'Before the first incision.'),
    'sign-out': pause('Sign out', 'Before the patient leaves the theatre.'),
    'lens-verified': section(
      {
        label: 'Lens verified',
        meaning: 'The lens on the table compared with plan, biometry print-out and box.',
        source: 'IOL quality standard (RCOphth and UKOA 2018)',
        says: ['not done', 'not applicable'],
      },
      {
        eye: word(sides, {
          label: 'Side read out',
          meaning: 'The side read out when the lens was verified.',
          example: 'left',
        }),
        model: lensIdentity.model,
        power: lensIdentity.power,
        by: list(
          { label: 'Verified by', meaning: 'Staff references of those who verified.' },
          id({ label: 'Staff reference', meaning: 'One person.', example: 'N-11' }),
        ),
        time: value(timeOfDay, { label: 'Time', meaning: 'When it was verified.', example: '09:20' }),
      },
    ),
  },
);

export const anaesthesia = section(
  {
    label: 'Anaesthesia',
    meaning: 'Kind, drug and volume.',
    source: '42 CFR 482.51(b)(6); Lundström et al. 2021',
    spoken: ['anaesthesia', 'anesthesia'],
  },
  {
    kinds: list(
      { label: 'Kinds', meaning: 'The kinds of anaesthesia given.', source: 'Lundström et al. 2021' },
      word(anaesthesiaKinds, { label: 'Kind', meaning: 'One kind of anaesthesia.', example: 'sub-Tenon' }),
    ),
    drug: text({ label: 'Drug', meaning: 'The anaesthetic used.', example: 'lidocaine 2 %' }),
    volume: quantity('mL', {
      label: 'Volume',
      meaning: 'Volume of a block.',
      example: '3.5 mL',
      possible: [0.05, 15],
      usual: [1, 8],
      limitsSource: 'common practice, no source',
      spoken: ['volume'],
    }),
    'given-by': id({ label: 'Given by', meaning: 'Staff reference of the person who gave it.', example: 'A-04' }),
    anaesthetist: id({
      label: 'Anaesthetist',
      meaning: 'Staff reference, or none when none was present.',
      example: 'A-04',
      source: 'RCS Good Surgical Practice 2014, 1.3',
      says: ['none'],
    }),
    text: text({ label: 'Anaesthesia in words', meaning: 'What the fields cannot say.' }),
  },
);

export const antisepsis = section(
  {
    label: 'Antisepsis',
    meaning: 'How skin and conjunctiva were prepared.',
    source: 'RCS Good Surgical Practice 2014, 1.3 (extra); endophthalmitis guidance',
  },
  {
    agent: word(antiseptics, {
      label: 'Agent',
      meaning: 'The antiseptic.',
      example: 'povidone-iodine',
      spoken: ['prep'],
    }),
    strength: quantity('%', {
      label: 'Strength',
      meaning: 'Strength on the conjunctiva.',
      example: '5 %',
      possible: [0.01, 20],
      usual: [0.05, 10],
      limitsSource: 'common practice, no source',
    }),
    contact: quantity('min', {
      label: 'Contact time',
      meaning: 'How long it stayed.',
      example: '3 min',
      possible: [0.1, 60],
      usual: [1, 10],
      limitsSource: 'common practice, no source',
    }),
    text: text({ label: 'Antisepsis in words', meaning: 'Draping and lids.' }),
  },
);

export const seat = word(seats, {
  label: 'Seat',
  meaning: 'Where the surgeon sat; the picture is drawn from there.',
  example: 'temporal',
  source: 'common practice, no source',
  spoken: ['sat', 'seated'],
});

export const bloodPrecautions = text({
  label: 'Thromboprophylaxis',
  meaning: 'Measures against deep vein thrombosis, or not applicable.',
  example: 'not applicable',
  source: 'RCS Good Surgical Practice 2014, 1.3',
  says: ['none', 'not applicable'],
});
