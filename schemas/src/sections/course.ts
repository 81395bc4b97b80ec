import { id, list, section, text, value, word } from '../fields/field.ts';
import { dose } from '../notation/dose.ts';
import { due } from '../notation/interval.ts';
import { yesNo } from '../notation/plain.ts';
import { regimen } from '../notation/regimen.ts';
import { dateAndTime } from '../notation/time.ts';
import { vocabulary } from '../notation/words.ts';
import { codeSystems, complicationKinds, drugPurposes, routes, signatureMeanings } from '../vocabulary/outcome.ts';
import { stages } from '../vocabulary/theatre.ts';

const rcs = 'RCS Good Surgical Practice 2014, 1.3';

export const drugs = list(
  {
    label: 'Drugs given',
    meaning: 'Drugs given during the operation, or none.',
    source: rcs,
    says: ['none'],
    spoken: ['drugs'],
  },
  section(
    { label: 'Drug', meaning: 'One drug.' },
    {
      drug: text({ label: 'Drug', meaning: 'Generic name.', example: 'cefuroxime' }),
      purpose: word(drugPurposes, { label: 'Purpose', meaning: 'What it is for.', example: 'antibiotic' }),
      route: word(routes, { label: 'Route', meaning: 'How it was given.', example: 'intracameral' }),
      dose: value(dose, {
        label: 'Dose',
        meaning: 'Amount, and the volume it was given in.',
        example: '1 mg in 0.1 mL',
        source: 'ESCRS endophthalmitis study, J Cataract Refract Surg 2007;33:978-88 (cefuroxime 1 mg in 0.1 mL)',
      }),
    },
  ),
);

export const antibioticWithheld = text({
  label: 'Antibiotic withheld because',
  meaning: 'Why no antibiotic was given at the end, when none was.',
  example: 'anaphylaxis to cephalosporins; drops only',
  source: rcs,
});

export const complications = list(
  {
    label: 'Complications',
    meaning: 'Everything that went wrong, or none: “none” says that it was thought of.',
    source: `${rcs}; Lundström et al. 2021`,
    says: ['none'],
    spoken: ['complications'],
  },
  section(
    { label: 'Complication', meaning: 'One complication.' },
    {
      what: word(complicationKinds, {
        label: 'What',
        meaning: 'What went wrong.',
        example: 'posterior capsule rupture',
      }),
      when: word(stages, { label: 'When', meaning: 'At which stage of the operation.', example: 'nucleus' }),
      extent: text({ label: 'Extent', meaning: 'How large, where.', example: 'central, 3 mm' }),
      action: text({
        label: 'Action',
        meaning: 'What was done about it.',
        example: 'dispersive viscoelastic, anterior vitrectomy',
      }),
      account: text({
        label: 'Account',
        meaning: 'What happened, in the surgeon’s words.',
        example: 'the last fragment turned and caught the capsule',
      }),
      told: value(yesNo, {
        label: 'Patient told',
        meaning: 'Whether the patient was told.',
        example: 'yes',
        source: 'common practice, no source',
      }),
    },
  ),
);

export const excluded = list(
  {
    label: 'Complications looked for and not seen',
    meaning: 'Complications that the surgeon says did not happen.',
    spoken: ['no'],
  },
  word(complicationKinds, {
    label: 'Complication',
    meaning: 'One complication that did not happen.',
    example: 'iris prolapse',
  }),
);

export const findings = text({
  label: 'Findings',
  meaning: 'What was found at the operation.',
  example: 'deep chamber, lax zonule temporally',
  source: `42 CFR 482.51(b)(6); ${rcs}; Joint Commission RC.02.01.03`,
  spoken: ['findings'],
});

export const specimens = list(
  {
    label: 'Specimens',
    meaning: 'Tissue removed and kept, or none.',
    source: '42 CFR 482.51(b)(6); Joint Commission RC.02.01.03',
    says: ['none'],
  },
  text({ label: 'Specimen', meaning: 'One specimen.', example: 'vitreous sample for culture' }),
);

export const bloodLoss = word(
  vocabulary('blood loss', [
    ['minimal', ['nil', 'none', '0']],
    ['more than minimal', []],
  ]),
  {
    label: 'Blood loss',
    meaning: 'Estimated blood loss.',
    example: 'minimal',
    source: `${rcs}; Joint Commission RC.02.01.03`,
  },
);

const dropKinds = vocabulary('kind of drops', [
  ['steroid', ['corticosteroid']],
  'antibiotic',
  ['non-steroidal', ['nsaid', 'non-steroidal anti-inflammatory', 'non-steroidal anti-inflammatory drug']],
  ['pressure lowering', ['iop lowering']],
  ['lubricant', ['artificial tears', 'tear substitute']],
  ['mydriatic', ['cycloplegic']],
  'other',
]);

export const afterCare = section(
  {
    label: 'After-care',
    meaning: 'Drops, shield and instructions.',
    source: `${rcs} (detailed postoperative care instructions)`,
    spoken: ['after care', 'drops'],
  },
  {
    drops: list(
      { label: 'Drops', meaning: 'Drops prescribed, or none.', says: ['none'], spoken: ['drops'] },
      section(
        { label: 'Drops', meaning: 'One kind of drops.' },
        {
          drug: text({ label: 'Drug', meaning: 'Generic name.', example: 'dexamethasone 0.1 %' }),
          kind: word(dropKinds, { label: 'Kind', meaning: 'What they are for.', example: 'steroid' }),
          regimen: value(regimen, {
            label: 'Regimen',
            meaning: 'How often and how long.',
            example: '4 times a day for 4 weeks',
          }),
        },
      ),
    ),
    shield: value(yesNo, {
      label: 'Shield',
      meaning: 'Whether a shield covers the eye.',
      example: 'yes',
      spoken: ['shield'],
    }),
    pad: value(yesNo, { label: 'Pad', meaning: 'Whether a pad covers the eye.', example: 'no', spoken: ['pad'] }),
    instructions: text({
      label: 'Instructions',
      meaning: 'What the patient was told to do and to watch for.',
      example: 'warned of flashes, floaters and a shadow',
    }),
  },
);

export const reviews = list(
  {
    label: 'Reviews',
    meaning: 'What is to be looked at, and when.',
    source: rcs,
    says: ['none'],
    spoken: ['review', 'follow up'],
  },
  section(
    { label: 'Review', meaning: 'One review.' },
    {
      what: text({ label: 'What', meaning: 'What is to be looked at.', example: 'dilated peripheral retina' }),
      due: value(due, { label: 'Due', meaning: 'When, as a date or after the operation.', example: '1 day' }),
      by: text({ label: 'By', meaning: 'Who sees the patient.', example: 'clinic' }),
    },
  ),
);

export const conditionAtEnd = text({
  label: 'Condition at the end',
  meaning: 'State of eye and patient on leaving the theatre.',
  example: 'comfortable, chamber formed',
  source: '42 CFR 482.51(b)(6) (from memory)',
});

export const codes = list(
  {
    label: 'Codes',
    meaning: 'The coder’s own choice; suggestions are computed and compared, never written here by themselves.',
    says: ['none'],
  },
  section(
    { label: 'Code', meaning: 'One code.' },
    {
      system: word(codeSystems, { label: 'System', meaning: 'The code system.', example: 'ICD-10-PCS' }),
      code: id({ label: 'Code', meaning: 'The code as the system writes it.', example: '08RK3JZ' }),
      reason: text({ label: 'Reason', meaning: 'Why this code.' }),
    },
  ),
);

export const dictation = text({
  label: 'Dictation',
  meaning: 'The dictated text, kept as it was spoken.',
  source: 'common practice, no source',
});
export const freeText = text({ label: 'Free text', meaning: 'What no field can say.' });

export const signed = list(
  {
    label: 'Signed',
    meaning: 'Who signed, in which meaning, and when.',
    source: `${rcs}; 42 CFR 482.24(c)(1); 21 CFR 11.50`,
    spoken: ['signed'],
  },
  section(
    { label: 'Signature', meaning: 'One signature.' },
    {
      by: id({ label: 'By', meaning: 'Staff reference of the signer.', example: 'S-02' }),
      meaning: word(signatureMeanings, {
        label: 'Meaning',
        meaning: 'In which meaning.',
        example: 'author',
        source: '21 CFR 11.50',
      }),
      at: value(dateAndTime, {
        label: 'At',
        meaning: 'Date and time of signing, with the offset.',
        example: '2031-03-14T10:02+01:00',
      }),
    },
  ),
);
