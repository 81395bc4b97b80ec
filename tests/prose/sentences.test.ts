import type { Amendment } from '@sideport/schemas';
import {
  cataractKinds,
  comorbidities,
  difficulties,
  peripheryFindings,
} from '@sideport/schemas/vocabulary/findings.ts';
import { extraProcedures } from '@sideport/schemas/vocabulary/head.ts';
import {
  complicationKinds,
  placements,
  posteriorCapsuleStates,
  ringKinds,
} from '@sideport/schemas/vocabulary/outcome.ts';
import { stages } from '@sideport/schemas/vocabulary/theatre.ts';
import { describe, expect, test } from 'vitest';
import { displayNumber } from '../../server/src/note/calculations/display.ts';
import { amendmentProse } from '../../server/src/note/prose/amendment-prose.ts';
import { SAYS_MORE } from '../../server/src/note/prose/as-typed.ts';
import type { ProseDocument } from '../../server/src/note/prose/document.ts';
import { longInstant, withArticle } from '../../server/src/note/prose/english.ts';
import { followUpProse } from '../../server/src/note/prose/follow-up-prose.ts';
import { operationProse } from '../../server/src/note/prose/operation-prose.ts';
import { readNote } from '../../server/src/note/reading/read-note.ts';

const computed = { values: [], notComputed: [] };

function read(record: string, lines: string) {
  const reading = readNote(
    `opnote: 1\nrecord: ${record}\n${/^status:/mu.test(lines) ? '' : 'status: final\n'}${lines}\n`,
  );
  expect(reading.remarks.filter(({ severity }) => severity === 'error')).toEqual([]);
  return reading;
}

function operation(lines: string, amendments: readonly Amendment[] = []): ProseDocument {
  const reading = read('operation', lines);
  if (reading.kind !== 'operation') throw new Error('No operation');
  return operationProse(reading.note, { computed, amendments, unread: 0 });
}

function followUp(lines: string): ProseDocument {
  const reading = read('follow-up', lines);
  if (reading.kind !== 'follow-up') throw new Error('No follow-up');
  return followUpProse(reading.note, computed, 0);
}

function amendment(lines: string): Amendment {
  const reading = read('amendment', lines);
  if (reading.kind !== 'amendment') throw new Error('No amendment');
  return reading.note;
}

/** All that is said, what is not recorded left out. */
const said = ({ sections }: ProseDocument): string =>
  sections
    .flatMap(({ paragraphs }) => paragraphs)
    .filter((paragraph) => !paragraph.startsWith('Not recorded: '))
    .join(' ')
    .replaceAll('\u00a0', ' ');

const notRecorded = ({ sections }: ProseDocument): string =>
  sections.flatMap(({ paragraphs }) => paragraphs.filter((text) => text.startsWith('Not recorded: '))).join(' ');

const fact = ({ facts }: ProseDocument, label: string) => facts.find((one) => one.label === label)?.text;

/** Each was read aloud by a person when it was written. */
describe('a sentence of an operation', () => {
  test.each([
    [
      'capsulotomy:\n  technique: CCC\n  aimed: 5.5 mm\n  diameter: 6.0 mm\n  off-centre: centred\n  outcome: converted to can-opener',
      'A continuous curvilinear capsulotomy was begun (aimed at 5.5 mm) and converted to a can-opener capsulotomy of 6.0 mm; it was centred on the optic.',
    ],
    [
      'capsulotomy:\n  diameter: 5.0 mm\n  off-centre: 0.2 mm toward nasal\n  outcome: radial tear',
      'A capsulotomy of 5.0 mm was made; its edge tore radially and its centre lay 0.2 mm to the nasal side of the centre of the optic.',
    ],
    ['capsulotomy:\n  outcome: extended', 'A capsulotomy was made; it ran out to the periphery.'],
    ['capsulotomy:\n  outcome: incomplete', 'A capsulotomy was made; it was not complete.'],
    ['capsulotomy:\n  outcome: rescued', 'A capsulotomy was made; it ran out and was rescued.'],
    [
      'plan:\n  formula: other\n  length-adjustment: none\n  predicted: -0.70 D\n  predicted-by: other',
      'The lens was chosen with a formula that is not named here, without adjustment of the axial length; the predicted refraction was -0.70 D by a formula that is not named here.',
    ],
    [
      "plan:\n  formula: the biometer's own\n  predicted: -0.70 D",
      "The lens was chosen with the biometer's own formula; the predicted refraction was -0.70 D.",
    ],
    ['plan:\n  precautions: [floppy iris, capsule dye]', 'Precautions: for a floppy iris; capsule dye.'],
    [
      'comorbidity: [narrow angle, other]',
      'Other disease of this eye: narrow angle and another that is not named here.',
    ],
    ['difficulty: other', 'Expected difficulty: one that is not named here.'],
    ['eye: left\ndiagnosis:\n  cataract: other', 'A diagnosis of the left eye that is not named here.'],
    [
      'eye: left\ndiagnosis:\n  cataract: [nuclear, other]',
      'Nuclear cataract of the left eye and another diagnosis that is not named here.',
    ],
    [
      'eye: right\ndiagnosis:\n  cataract: [posterior subcapsular, after vitrectomy]\n  post-operative: aphakia',
      'Posterior subcapsular cataract of the right eye after vitrectomy. Post-operative diagnosis: aphakia.',
    ],
    ['eye: right\ndiagnosis:\n  cataract: intumescent', 'Intumescent cataract of the right eye.'],
    ['preop:\n  fundus:\n    view: no view', 'The fundus could not be seen.'],
    ['patient:\n  allergies: [NKDA]', 'Allergies: no known drug allergies.'],
    ['patient:\n  allergies: n.k.d.a.', 'Allergies: no known drug allergies.'],
    ['patient:\n  allergies: [penicillin, latex]', 'Allergies: penicillin and latex.'],
    [
      'safety:\n  consent:\n    eye: left\n    date: 2025-02-20\n    confirmed: yes',
      'The patient confirmed the consent of 20 February 2025 for the left eye.',
    ],
    [
      'anaesthesia:\n  kinds: [sub-Tenon, sedation]\n  drug: lidocaine 2 %\n  volume: 4 mL\n  given-by: S-02',
      'Sub-Tenon anaesthesia and sedation with lidocaine 2 % (4 mL) were given by S-02.',
    ],
    ['incisions:\n  - kind: main\n    width: 8.0 mm', 'An 8.0 mm main incision was made.'],
    [
      'pupil-aid:\n  - kind: hooks\n    count: 5\n    reason: pupil 3.5 mm\n  - kind: stretch',
      'Pupil aid: five iris hooks; reason: pupil 3.5 mm. Pupil aid: stretch.',
    ],
    ['pupil-aid: none', 'No pupil aid was used.'],
    [
      'cortex:\n  method: bimanual\n  complete: no',
      'The cortex was not completely removed; it was removed bimanually.',
    ],
    [
      'capsule-state:\n  anterior: torn, uncontained\n  posterior: torn, vitreous face intact',
      'After this the anterior capsule was torn (uncontained) and the posterior capsule was torn (vitreous face intact).',
    ],
    [
      'capsule-state:\n  zonule: ruptured\n  zonule-extent: 3 clock hours\n  zonule-at: 315°',
      'The zonule was ruptured over 3 clock hours, the middle at 315°.',
    ],
    [
      'capsule-state:\n  zonule: ruptured\n  zonule-extent: 1\n  zonule-at: superonasal',
      'The zonule was ruptured over 1 clock hour superonasally.',
    ],
    ["capsule-state:\n  zonule: weak\n  zonule-at: 4 o'clock", "The zonule was weak at 4 o'clock."],
    [
      'ring:\n  used: yes\n  reason: [dialysis, other]\n  result: removed again',
      'A capsular tension ring was placed because of a ruptured zonule and a reason that is not named here; it was removed again.',
    ],
    [
      'lens:\n  placed: sutured to the sclera\n  kind: toric\n  power: +18.0 D\n  cylinder: +3.75 D\n  axis: 98°',
      'A toric lens of +18.0 D with a cylinder of +3.75 D, its marks at 98° was implanted sutured to the sclera.',
    ],
    [
      'drugs:\n  - purpose: pressure lowering\n    dose: 250 mg\n    route: oral\n  - purpose: other\n    dose: 1 mg',
      'A pressure-lowering drug 250 mg was given by mouth. A drug that is not named 1 mg was given.',
    ],
    [
      'incisions:\n  - kind: main\n    sutures:\n      count: 1\n  - kind: side-port\n    sutures:\n      count: 2\nclosure:\n  sutures:\n    count: 3',
      'A main incision was made; one suture was placed. A side-port was made; two sutures were placed. In all, three sutures were placed.',
    ],
    ['closure:\n  sutures:\n    count: 1', 'One suture was placed.'],
    ['closure:\n  sutures: none', 'No sutures were placed.'],
    [
      'complications:\n  - what: pcr\n    when: quadrant removal\n    extent: 4 mm',
      'Complication: posterior capsule rupture during quadrant removal, 4 mm.',
    ],
    [
      'complications:\n  - what: dropped nucleus\n    when: closure\n  - what: other',
      '(1) Complication: dropped nucleus at the closure. (2) Complication: one that is not named here.',
    ],
    [
      'reviews:\n  - what: pressure\n    due: tomorrow\n  - what: sutures\n    due: 2025-04-14\n    by: clinic',
      'Reviews: pressure (after 1 day); sutures (on 14 April 2025, clinic).',
    ],
    [
      'after-care:\n  drops:\n    - kind: steroid\n      regimen: 4 times a day for 4 weeks\n  shield: no',
      'Drops: steroid drops 4 times a day for 4 weeks. The eye was not covered with a shield.',
    ],
    [
      'capsule-state:\n  zonule: ruptured\n  vitreous: prolapsed\n  before: [zonule, vitreous]',
      'The zonule was ruptured. The vitreous prolapsed. Already so before the operation: the zonule and the vitreous.',
    ],
    ['capsule-state:\n  anterior: cut on purpose', 'After this the anterior capsule was cut on purpose.'],
    [
      'explanted-lens:\n  maker: Halden Optics\n  model: HX-1\n  power: +9.0 D\n  serial: 0040711407\n  reason: refractive surprise\n  text: cut in two',
      'A Halden Optics HX-1 lens of +9.0 D (serial number 0040711407) was taken out of the eye; reason: refractive surprise. Cut in two.',
    ],
    [
      'extra-procedures:\n  - what: goniotomy\n    reason: pressure\n    text: over 120 degrees\n  - what: other',
      'Also done: goniotomy; reason: pressure. Over 120 degrees. Also done: a procedure that is not named here.',
    ],
    ['extra-procedures: none', 'Nothing else was done in the same sitting.'],
    ['eye: left\ndiagnosis:\n  eye: right\n  cataract: nuclear', 'Nuclear cataract of the right eye.'],
    ['eye: left\nplan:\n  eye: right', 'The side on the operating list was right.'],
    ['eye: left\nplan:\n  eye: left\n  text: none', 'None.'],
    [
      'eye: left\npreop:\n  biometry:\n    eye: right\n    axial-length: 23.5 mm',
      'Biometry of the right eye gave an axial length of 23.5 mm.',
    ],
    ['preop:\n  fellow-eye: not done', 'The fellow eye was not measured.'],
    ['anaesthesia:\n  drug: lidocaine 2 %', 'Anaesthesia with lidocaine 2 % was given.'],
    [
      'capsule-state:\n  zonule-extent: 2 clock hours\n  zonule-at: 315°',
      'A defect of the zonule lay over 2 clock hours, the middle at 315°.',
    ],
  ])('%j', (lines, sentence) => expect(said(operation(lines))).toBe(sentence));
});

describe('an eye without its natural lens', () => {
  const lines = 'nucleus: not done\ncortex: not done\ncapsule-state:\n  anterior: intact';
  test.each(['procedure: lens exchange', 'procedure: secondary lens', 'diagnosis:\n  cataract: aphakia'])(
    'is not told that nothing was removed: %j',
    (why) => {
      const prose = operation(`${why}\n${lines}`);
      expect(said(prose)).not.toMatch(/nucleus|cortex|After this/u);
      expect(said(prose)).toContain('The anterior capsule was intact.');
      expect(prose.sections.find(({ id }) => id === 'removal')?.heading).toBe('Capsule and vitreous');
      expect(notRecorded(operation(why))).not.toMatch(/nucleus|cortex|capsulotomy|hydrodissection/u);
    },
  );
  test('keeps what was removed from it', () =>
    expect(said(operation('procedure: lens exchange\ncortex:\n  method: bimanual'))).toBe(
      'The cortex was removed bimanually.',
    ));
  test('another eye is told', () => {
    const prose = operation(`procedure: phacoemulsification\n${lines}`);
    expect(said(prose)).toContain('The nucleus was not removed. No cortex was removed. ');
    expect(prose.sections.find(({ id }) => id === 'removal')?.heading).toBe('Removal of the cataract');
  });
});

test.each([
  ['planned', 'left (second eye to be operated)'],
  ['draft', 'left (second eye)'],
  ['final', 'left (second eye operated)'],
])('the order of the eyes in a %s note', (status, text) => {
  const note = operation(`status: ${status}\neye: left\nwhich-eye: second\npatient:\n  ref: P-1\n  sex: other`);
  expect(fact(note, 'Eye')).toBe(text);
  expect(fact(note, 'Patient')).toBe('P-1, sex: other');
});

describe('a sentence of a visit', () => {
  test.each([
    [
      'reviews:\n  - what: pressure\n    due: 2025-02-07\n  - what: retina\n    due: 6 months',
      'Reviews: pressure (on 7 February 2025); retina (after 6 months).',
    ],
    ['reviews: none', 'No review is planned.'],
    [
      'complications:\n  - what: other\n    found: 2025-02-07',
      'A complication that is not named here, found on 7 February 2025.',
    ],
    ['complications:\n  - what: iritis', 'Iritis.'],
    ['lens:\n  placed: none', 'There was no lens in the eye.'],
    [
      "lens:\n  placed: bag\n  off-centre: 0.3 mm toward 3 o'clock",
      "The lens lay in the capsular bag. Its optic lay 0.3 mm to the 3 o'clock side of the centre of the pupil.",
    ],
    [
      'refraction: -0.50\nvertex-distance: 12 mm\nkeratometry:\n  k1: 43.25 D @ 5\n  k2: 44.50 D @ 95\n  index: 1.3375\n  method: automated\nlens:\n  power: +5.5 D',
      'The refraction was -0.50 (vertex distance 12 mm). The automated keratometry was 43.25 D @ 5 and 44.50 D @ 95 (index 1.3375). Power of the lens: +5.5 D.',
    ],
    ['dictation: as spoken\nfree-text: a remark', 'a remark as spoken'],
    [
      'keratometry: not done\nfundus:\n  periphery: not done',
      'Keratometry was not done. The periphery was not examined.',
    ],
  ])('%j', (lines, sentence) => expect(said(followUp(lines))).toBe(sentence));
});

describe('a change of an amendment', () => {
  const original =
    'id: OP-1\nincisions:\n  - kind: main\n  - kind: side-port\nnucleus:\n  steps:\n    - step: chop\ncomplications:\n  - what: pcr\n    extent: inferior';
  const change = (field: string, was = 'not recorded') =>
    amendment(`amends: OP-1\nkind: addendum\nby: S-30\nchanges:\n  - field: ${field}\n    was: ${was}\n    now: other`);
  const line = (document: ProseDocument) => document.sections.flatMap(({ amended }) => amended).join(' ');
  test.each([
    ['lens.lot', 'Lens, lot'],
    ['eye', 'Operated eye'],
    ['complications[0].extent', 'Complication 1 (posterior capsule rupture), extent'],
    ['incisions[1].width', 'Incision 2 (side-port), width'],
    ['nucleus.steps[0].vacuum', 'Nucleus removal, step 1 (chop), vacuum'],
    ['complications[3].extent', 'Complication 4, extent'],
    ['no.such[0].field', 'no.such[0].field'],
  ])('names %s in words', (path, words) => {
    expect(line(operation(original, [change(path)]))).toBe(
      `Addendum by S-30: ${words}: was not recorded, now reads “other”.`,
    );
  });
  test('names an entry also where the amendment stands by itself, when the note is at hand', () => {
    const reading = read('operation', original);
    const note = change('complications[0].extent', 'inferior');
    expect(line(amendmentProse(note, 0, reading.kind === 'operation' ? reading.note : undefined))).toBe(
      'Addendum by S-30: Complication 1 (posterior capsule rupture), extent: was “inferior”, now reads “other”.',
    );
    expect(line(amendmentProse(note, 0, undefined))).toContain('Complication 1, extent: was “inferior”');
  });
});

describe('words', () => {
  test('what is kept as it was typed is a synonym of the term that it stands for', () => {
    const vocabularies = [
      cataractKinds,
      comorbidities,
      difficulties,
      peripheryFindings,
      complicationKinds,
      placements,
      posteriorCapsuleStates,
      ringKinds,
      stages,
      extraProcedures,
    ];
    for (const [term, kept] of Object.entries(SAYS_MORE)) {
      for (const synonym of kept) {
        const read = vocabularies.map((vocabulary) => vocabulary.read(synonym));
        expect(
          read.some((one) => one.ok && one.value === term),
          `${synonym} as ${term}`,
        ).toBe(true);
      }
    }
  });
  test.each([
    ['8.0 mm incision', 'an 8.0 mm incision'],
    ['11 mm incision', 'an 11 mm incision'],
    ['110 mm incision', 'a 110 mm incision'],
    ['one-piece lens', 'a one-piece lens'],
    ['envelope capsulotomy', 'an envelope capsulotomy'],
  ])('the article of %s', (text, whole) => expect(withArticle(text)).toBe(whole));
  test('one day is no days', () => {
    expect(displayNumber(1, 'days')).toBe('1 day');
    expect(displayNumber(28, 'days')).toBe('28 days');
    expect(displayNumber(1, 'years')).toBe('1 year');
  });
  test('universal time has no offset', () =>
    expect(longInstant('2025-02-03T10:30+00:00')).toBe('3 February 2025 at 10:30 (UTC)'));
});
