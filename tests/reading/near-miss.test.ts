import { describe, expect, test } from 'vitest';
import { fieldsBelow, recordPlan, type Notation } from '@sideport/schemas';
import { readNote } from '../../server/src/note/reading/read-note.ts';

/** Every vocabulary of the format. */
const vocabularies = new Set<Notation<unknown>>();
for (const kind of ['operation', 'follow-up', 'amendment', 'department'] as const) {
  for (const { plan } of fieldsBelow(recordPlan(kind))) {
    const value = plan.kind === 'list' ? plan.item : plan;
    if (value.kind === 'value' && value.notation.words !== undefined && value.notation.name !== 'yes or no')
      vocabularies.add(value.notation);
  }
}
const named = new Map([...vocabularies].map((notation) => [notation.name, notation]));

function suggested(vocabulary: string, text: string): string | undefined {
  const notation = named.get(vocabulary);
  if (notation === undefined) throw new Error(`there is no vocabulary “${vocabulary}”`);
  const reading = notation.read(text);
  return reading.ok ? `read as ${String(reading.value)}` : reading.fault.suggestion;
}

describe('no term is suggested that would be another thing', () => {
  test.each([
    ['anaesthesia', 'LA'],
    ['anaesthesia', 'parabulbar'],
    ['route', 'ICV'],
    ['route', 'ivi'],
    ['route', 'SC'],
    ['procedure', 'ICCE + IOL'],
    ['procedure', 'FLACS with IOL'],
    ['procedure', 'ECCT'],
    ['visit', 'week 3'],
    ['visit', '5 weeks'],
    ['visit', 'day 12'],
    ['visit', 'month 9'],
    ['visit', 'planned'],
    ['formula', 'Holladay 2'],
    ['formula', 'Holladay II'],
    ['formula', 'SRK II'],
    ['formula', 'T1'],
    ['formula', 'Haigis-L'],
    ['formula', 'Hoffer QST'],
    ['axial length adjustment', 'Wang-Koch 2021'],
    ['stage of the operation', 'IOL removal'],
    ['complication', 'IOL loss'],
    ['complication', 'hypertony'],
    ['complication', 'hypopyon'],
    ['complication', 'iridodonesis'],
    ['complication', 'conjunctival oedema'],
    ['complication', 'macular oedema'],
    ['comorbidity', 'macular oedema'],
    ['comorbidity', 'crao'],
    ['comorbidity', 'CRAO'],
    ['comorbidity', 'previous surgery'],
    ['comorbidity', 'previous trabeculotomy'],
    ['comorbidity', 'sub-retinal membrane'],
    ['cataract', 'hypomature'],
    ['cataract', 'phakia'],
    ['suture gauge', '6-0'],
    ['suture gauge', '12-0'],
    ['grading scale', 'LOCS IV'],
    ['grade', 'ST8'],
    ['architecture', '4 planes'],
    ['state of the posterior capsule', 'not intact'],
    ['state of the anterior capsule', 'torn, incontained'],
    ['leak test', 'weak'],
    ['finding of the periphery', 'untreated retinal tear'],
    ['finding of the periphery', 'lattice, untreated'],
    ['outcome of the capsulotomy', 'uncomplete'],
    ['placement', 'not in the bag'],
    ['place of the wound', 'corneal tunnel'],
    ['lens material', 'acrylic'],
    ['suture material', 'PDS'],
    ['order of eyes', 'third'],
    ['order of eyes', '3rd'],
  ])('%s: %s', (vocabulary, text) => {
    expect(suggested(vocabulary, text)).toBeUndefined();
  });
});

describe('a slip of the hand is put right', () => {
  test.each([
    ['urgency', 'electiv', 'elective'],
    ['urgency', 'emergent', 'emergency'],
    ['stage of the operation', 'capsulotmy', 'capsulotomy'],
    ['stage of the operation', 'lens incertion', 'lens insertion'],
    ['seat', 'temprol', 'temporal'],
    ['seat', 'superotemporl', 'superotemporal'],
    ['kind of lens', 'monofcal', 'monofocal'],
    ['lens material', 'hydrophillic acrylic', 'hydrophilic acrylic'],
    ['complication', 'posterior capsul rupture', 'posterior capsule rupture'],
    ['complication', 'suprachoroidal hemorhage', 'suprachoroidal haemorrhage'],
    ['complication', 'endopthalmitis', 'endophthalmitis'],
    ['comorbidity', 'pseudoexfolation', 'pseudoexfoliation'],
    ['comorbidity', 'amblyopa', 'amblyopia'],
    ['comorbidity', 'galucoma', 'glaucoma'],
    ['anaesthesia', 'peribulber', 'peribulbar'],
    ['route', 'intracamral', 'intracameral'],
    ['route', 'subconjuctival', 'subconjunctival'],
    ['viscoelastic', 'cohesiv', 'cohesive'],
    ['viscoelastic', 'DISPERSVE', 'dispersive'],
    ['nucleus technique', 'divide and conqer', 'divide and conquer'],
    ['nucleus technique', 'stopandchop', 'stop and chop'],
    ['order of eyes', 'frist', 'first'],
    ['side', 'rigth', 'right'],
  ])('%s: %s', (vocabulary, text, term) => {
    expect(suggested(vocabulary, text)).toBe(term);
  });
});

test('no text is listed twice in a vocabulary, or stands for two of its terms', () => {
  const wrong = [...vocabularies].flatMap((notation) => {
    const { name, words = [] } = notation;
    const listed = words.flatMap(({ word, synonyms }) => [word, ...synonyms].map((text) => ({ text, word })));
    const again = listed.filter(({ text }, at) =>
      listed.slice(0, at).some((other) => other.text.toLowerCase() === text.toLowerCase()),
    );
    const other = listed.filter(({ text, word }) => {
      const reading = notation.read(text);
      return !reading.ok || reading.value !== word;
    });
    return [...again, ...other].map(({ text, word }) => `${name}: ${text} (${word})`);
  });
  expect(vocabularies.size).toBeGreaterThan(60);
  expect(wrong).toEqual([]);
});

describe('the remark on an unknown word', () => {
  const head = 'opnote: 1\nrecord: operation\nstatus: draft\n';
  const messages = (lines: string): readonly string[] => readNote(head + lines).remarks.map(({ message }) => message);

  test('names the terms of a long list that have a word of it', () => {
    expect(messages('complications:\n  - what: macular oedema\n')).toEqual([
      expect.stringMatching(
        /^What: “macular oedema” is not a known complication\. Expected one of \d+ terms; with a word in common: cystoid macular oedema, /u,
      ),
    ]);
  });

  test('names all terms of a short list', () => {
    expect(messages('anaesthesia:\n  kinds: [LA]\n')).toEqual([
      'Kind: “LA” is not a known anaesthesia. Expected one of: topical, intracameral, sub-Tenon, peribulbar, retrobulbar, general, sedation.',
    ]);
  });

  test('holds no number of a field name for another', () => {
    expect(messages('preop:\n  biometry:\n    k3: 43.25 D @ 5\n')[0]).not.toContain('Did you mean');
  });
});
