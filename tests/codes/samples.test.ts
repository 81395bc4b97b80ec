import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readCodeMap, withMappedCodes } from '../../server/src/note/codes/code-map.ts';
import { codingFacts } from '../../server/src/note/codes/facts-of-note.ts';
import { suggestCodes } from '../../server/src/note/codes/suggest.ts';
import { readNote } from '../../server/src/note/reading/read-note.ts';
import { SOUND } from '../export/run.ts';

function factsOf(text: string) {
  const reading = readNote(text);
  if (reading.kind !== 'operation') throw new Error('No operation');
  return codingFacts(reading.note);
}
const textOf = (name: string) => readFileSync(join(SOUND, `${name}.opnote.yaml`), 'utf8');
const codes = (text: string, set: 'icd10cm' | 'icd10-opcs4') =>
  suggestCodes(factsOf(text), set).suggestions.map(({ code }) => code);

/** Codes told from the notes by reading them, with the rules of the scenarios. */
describe('sound samples', () => {
  test.each([
    ['long-eye-ring', ['H25.12', '08RK3JZ'], ['H25.1', 'C75.1', 'C71.2', 'C77.6', 'Z94.3']],
    [
      'capsule-tear-right',
      ['H25.811', 'H59.211', '08RJ3JZ', '08B43ZZ'],
      ['H25.8', 'T81.2', 'Y60.0', 'C75.1', 'C71.2', 'C79.1', 'Z94.2'],
    ],
    ['small-pupil-left', ['H25.812', '08RK3JZ'], ['H25.8', 'C75.1', 'C71.2', 'C64.7', 'Z94.3']],
    ['toric-right', ['H25.041', '08RJ3JZ'], ['H25.0', 'C75.1', 'C71.2', 'Z94.2']],
  ])('%s', (name, icd10cm, opcs) => {
    expect(codes(textOf(name), 'icd10cm')).toEqual(icd10cm);
    expect(codes(textOf(name), 'icd10-opcs4')).toEqual(opcs);
  });

  test.each([
    'long-eye-ring',
    'capsule-tear-right',
    'small-pupil-left',
    'toric-right',
    'routine-right',
    'minus-power-right',
  ])('%s: with the other eye only the side of each code changes', (name) => {
    const text = textOf(name);
    const other = text.replace(
      /^eye: (right|left)$/mu,
      (_, side: string) => `eye: ${side === 'right' ? 'left' : 'right'}`,
    );
    for (const set of ['icd10cm', 'icd10-opcs4'] as const) {
      const [one, two] = [codes(text, set), codes(other, set)];
      expect(two).toHaveLength(one.length);
      for (const [index, code] of one.entries()) {
        const differing = Array.from(code).filter((character, at) => character !== two[index]?.charAt(at));
        expect(differing.length).toBeLessThanOrEqual(1);
      }
      expect(two).not.toEqual(one);
    }
  });
});

describe('facts of a note', () => {
  const usual = 'opnote: 1\nrecord: operation\nstatus: final\neye: right\n';
  test.each([
    [
      'procedure: phacoemulsification with lens\n',
      { extraction: { value: 'phacoemulsification' }, lensImplanted: { value: true, from: ['procedure'] } },
    ],
    [
      'procedure: phacoemulsification with lens\nlens:\n  placed: none\n',
      { lensImplanted: { value: false, from: ['lens.placed'], says: 'none' } },
    ],
    ['procedure: phacoemulsification\n', { lensImplanted: { value: false, from: ['procedure'] } }],
    [
      'procedure: phacoemulsification with lens\ncomplications:\n  - what: converted to ecce\n',
      { extraction: { value: 'extracapsular', from: ['procedure', 'complications[0].what'] } },
    ],
    ['procedure: lens exchange\n', { earlierLens: { value: 'exchanged' }, lensImplanted: { value: true } }],
    ['vitrectomy:\n  stain: none\n', { vitrectomy: { value: 'approach not stated', from: ['vitrectomy'] } }],
    [
      'complications:\n  - what: pcr\ncapsule-state:\n  posterior: torn\n',
      { posteriorCapsuleTorn: { from: ['capsule-state.posterior', 'complications[0].what'] }, complications: [] },
    ],
    [
      'lens:\n  placed: sutured to the sclera\n',
      { scleralFixation: { value: 'sutured', from: ['lens.placed'], says: 'sutured to the sclera' } },
    ],
    [
      'lens:\n  placed: scleral fixated\n',
      { scleralFixation: { value: 'sutures not stated', says: 'scleral fixated' } },
    ],
    [
      'pupil-aid:\n  - kind: stretch\n  - kind: iris hooks\n',
      { irisHooks: { from: ['pupil-aid[1].kind'], says: 'iris hooks' } },
    ],
  ])('%j', (text, expected) => expect(factsOf(usual + text)).toMatchObject(expected));

  test.each(['ring:\n  used: yes\n  result: removed again\n', 'ring:\n  used: no\n'])(
    'no ring in the eye: %j',
    (text) => expect(factsOf(usual + text)).not.toHaveProperty('tensionRing'),
  );
});

describe('your own map of codes', () => {
  test('a mapped code follows its suggestion, without a title', () => {
    const map = readCodeMap('from system,from code,to system,to code\nICD-10-PCS,08RJ3JZ,local,OWN-1\n# comment\n');
    if ('fault' in map) throw new Error(map.fault);
    const { suggestions } = suggestCodes(factsOf(textOf('routine-right')), 'icd10cm');
    expect(withMappedCodes(suggestions, map).at(-1)).toMatchObject({
      system: 'local',
      code: 'OWN-1',
      title: '',
      codeSource: 'your own map of codes',
    });
  });
  // RFC 4180, section 2, rules 5 to 7: a cell may stand in quotes, which are no part of it.
  test.each([
    ['ICD-10-PCS,08RJ3JZ,"CPT",66984', 'CPT', '66984'],
    ['"ICD-10-PCS","08RJ3JZ","own ""list""","A,1"', 'own "list"', 'A,1'],
    ['ICD-10-PCS, 08RJ3JZ , local , OWN-1 ', 'local', 'OWN-1'],
  ])('%s', (line, toSystem, toCode) =>
    expect(readCodeMap(`${line}\n`)).toEqual([{ fromSystem: 'ICD-10-PCS', fromCode: '08RJ3JZ', toSystem, toCode }]),
  );
  test('a quotation mark too many is named', () =>
    expect(readCodeMap('a,b,"c,d\n')).toEqual({ fault: 'line 1 has a quotation mark too many or too few' }));
  test('a cell that is empty is named', () => expect(readCodeMap('a,,c,d\n')).toHaveProperty('fault'));
  test('a heading is no line of the map', () => expect(readCodeMap('system,code,own system,own code\n')).toEqual([]));
  test('a line with too few columns is named', () =>
    expect(readCodeMap('a,b,c,d\na,b,c\n')).toEqual({
      fault: 'line 2 should have four columns, system, code, own system and own code, parted by commas',
    }));
});
