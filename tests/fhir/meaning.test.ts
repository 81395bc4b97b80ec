import { describe, expect, test } from 'vitest';
import { amendment, department, operation } from '../export/leaving-notes.ts';
import { bundleOf, isObject, resource, resources, textOf, type Json, type JsonObject } from './bundles.ts';
import { allFaults } from './validators.ts';

const USUAL: Readonly<Record<string, string>> = {
  procedure: 'phacoemulsification with lens',
  patient: '{ ref: P-1, born: 1951 }',
  diagnosis: '{ cataract: [nuclear] }',
  nucleus: '{ technique: divide and conquer }',
  lens: '{ model: HX-1, power: +21.5 D, placed: capsular bag }',
};

function note(fields: Readonly<Record<string, string>> = {}, head: Readonly<Record<string, string>> = {}): string {
  const lines = Object.entries({ ...USUAL, ...fields }).map(([key, value]) => `${key}: ${value}\n`);
  return operation(lines.join(''), head);
}

/** A document that no validator finds fault with. */
async function sound(...words: Parameters<typeof bundleOf>): Promise<JsonObject> {
  const bundle = await bundleOf(...words);
  expect(allFaults(bundle)).toEqual([]);
  return bundle;
}

const list = (value: Json | undefined): readonly JsonObject[] =>
  Array.isArray(value) ? value.filter((item) => isObject(item)) : [];
/** The codes of a concept, with those of the coder marked. */
const codesIn = (concept: Json | undefined): readonly string[] =>
  list(isObject(concept) ? concept['coding'] : undefined).map(
    (coding) => `${textOf(coding, 'code')}${coding['userSelected'] === true ? ' (chosen)' : ''}`,
  );
const all = (bundle: JsonObject, type: string): readonly JsonObject[] =>
  resources(bundle).filter((one) => one['resourceType'] === type);

/** Where each code of a document stands. */
function placesOf(bundle: JsonObject) {
  const [main = {}, ...further] = all(bundle, 'Procedure');
  const concepts = (key: string): readonly (readonly string[])[] => list(main[key]).map(codesIn);
  return {
    main: codesIn(main['code']),
    further: further.map((one) => codesIn(one['code'])),
    sites: concepts('bodySite').slice(1),
    reasons: concepts('reasonCode'),
    complications: concepts('complication'),
    notes: list(main['note']).map((one) => textOf(one, 'text')),
  };
}

describe('codes stand where FHIR has a place for what they mean', () => {
  const rupture = {
    'capsule-state': '{ posterior: torn }',
    complications: '[{ what: posterior capsule rupture }, { what: iris prolapse }]',
    vitrectomy: '{ approach: anterior }',
  };

  test('ICD-10 and OPCS-4', async () => {
    const bundle = await sound(note(rupture), '--codes', 'icd10-opcs4');
    expect(placesOf(bundle)).toMatchObject({
      main: ['C75.1'],
      further: [['C71.2'], ['C79.1']],
      sites: [['Z94.2']],
      reasons: [['H25.1']],
      complications: [['T81.2'], [], ['Y60.0']],
    });
    expect(list(resource(bundle, 'Procedure')['complication']).map((one) => one['text'])).toEqual([
      'posterior capsule rupture',
      'iris prolapse',
      'Unintentional cut or puncture during surgical operation',
    ]);
  });
  test('ICD-10-CM and ICD-10-PCS', async () =>
    expect(placesOf(await sound(note(rupture), '--codes', 'icd10cm'))).toMatchObject({
      main: ['08RJ3JZ'],
      further: [['08B43ZZ']],
      sites: [],
      reasons: [['H25.11']],
      complications: [['H59.211'], []],
    }));
  test('what was done beside the operation is a part of it', async () => {
    const bundle = await sound(note(rupture), '--codes', 'icd10cm');
    const [main, beside] = all(bundle, 'Procedure');
    const [part] = list(beside?.['partOf']);
    const url = list(bundle['entry']).find((entry) => entry['resource'] === main)?.['fullUrl'];
    expect(part?.['reference']).toBe(url);
  });

  test("the coder's own codes stand, and suggestions of that system are told in words", async () => {
    const codes = '[{ system: ICD-10-PCS, code: 08RK3JZ }, { system: ICD-10-CM, code: H25.12 }]';
    const { main, reasons, notes } = placesOf(await sound(note({ codes }), '--codes', 'icd10cm'));
    expect(main).toEqual(['08RK3JZ (chosen)']);
    expect(reasons).toEqual([[], ['H25.12 (chosen)']]);
    expect(notes.join('\n')).toContain('08RK3JZ is a code of the left eye, and the note says right (eye)');
  });
  test('own codes of one system leave the suggestions of another in their place', async () => {
    const codes = '[{ system: OPCS-4, code: Z94.2 }, { system: OPCS-4, code: C71.2 }, { system: OPCS-4, code: C75.1 }]';
    const { main, further, sites, reasons } = placesOf(await sound(note({ codes }), '--codes', 'icd10-opcs4'));
    expect({ main, further, sites, reasons }).toEqual({
      main: ['C71.2 (chosen)'],
      further: [['C75.1 (chosen)']],
      sites: [['Z94.2 (chosen)']],
      reasons: [['H25.1']],
    });
  });
  test('a site of the other eye stands beside no site of this one', async () => {
    const codes = '[{ system: OPCS-4, code: C75.1 }, { system: OPCS-4, code: Z94.3 }]';
    const { sites, notes } = placesOf(await sound(note({ codes }), '--codes', 'icd10-opcs4'));
    expect(sites).toEqual([]);
    expect(notes).toContain('OPCS-4 Z94.3 has no place among the coded data of this document.');
  });
  test('the reasons of a suggestion are in the document', async () => {
    const { notes } = placesOf(await sound(note(rupture), '--codes', 'icd10-opcs4'));
    const why = notes.find((text) => text.startsWith('Suggested: ICD-10 T81.2'));
    expect(why).toContain('capsule-state.posterior: torn; complications[0].what: posterior capsule rupture');
    expect(why).toContain('DCS.XIX.7');
    expect(notes.join('\n')).toContain('Not coded: iris prolapse (complication)');
  });
});

describe('devices', () => {
  const uses = (bundle: JsonObject): readonly string[] => {
    const [main = {}] = all(bundle, 'Procedure');
    const devices = new Map(list(bundle['entry']).map((entry) => [entry['fullUrl'], entry['resource']]));
    return list(main['focalDevice']).map(({ action, manipulated }) => {
      const device = devices.get(isObject(manipulated) ? (manipulated['reference'] ?? null) : null);
      const { type, status, patient } = isObject(device) ? device : {};
      const name = isObject(type) ? textOf(type, 'text') : '';
      const code = codesIn(action)[0] ?? (isObject(action) ? textOf(action, 'text') : '');
      return `${name}: ${code}, ${typeof status === 'string' ? status : ''}, ${patient === undefined ? 'not in the eye' : 'in the eye'}`;
    });
  };
  const ring = (result: string): Record<string, string> => ({ ring: `{ used: yes, result: ${result} }` });
  const LENS = 'intraocular lens: implanted, active, in the eye';
  const CASES: readonly (readonly [string, Readonly<Record<string, string>>, readonly string[]])[] = [
    ['a usual case', {}, [LENS]],
    ['a ring', ring('bag round and centred'), [LENS, 'tension ring: implanted, active, in the eye']],
    ['a ring removed again', ring('removed again'), [LENS, 'tension ring: explanted, inactive, not in the eye']],
    ['a ring lost', ring('ring lost'), [LENS, 'tension ring: ring lost, unknown, not in the eye']],
    ['a lens moved', { procedure: 'lens repositioning' }, ['intraocular lens: manipulated, active, in the eye']],
    [
      'a lens exchanged',
      { procedure: 'lens exchange' },
      [LENS, 'intraocular lens implanted earlier: explanted, inactive, not in the eye'],
    ],
    [
      'a lens taken out for good',
      { procedure: 'lens exchange', lens: '{ placed: none }' },
      ['intraocular lens implanted earlier: explanted, inactive, not in the eye'],
    ],
    ['an eye left without a lens', { lens: '{ placed: none }' }, []],
  ];
  test.each(CASES)('%s', async (_, fields, expected) => expect(uses(await sound(note(fields)))).toEqual(expected));
  test('nothing was implanted by a plan', async () => {
    const bundle = await sound(note({}, { status: 'planned' }));
    expect([uses(bundle), all(bundle, 'Device')]).toEqual([[], []]);
  });

  const carrier = async (udi: string) => {
    const device = resource(
      await sound(note({ lens: `{ model: HX-1, placed: capsular bag, udi: ${udi} }` })),
      'Device',
    );
    return list(device['udiCarrier'])[0] ?? {};
  };
  // GS1 General Specifications: AI (01) holds 14 digits, the last of them a check digit; weights 3 and 1 give 3 for
  // 0952123454321, the example of the GS1 syntax engine.
  test('a sound label has a device identifier', async () =>
    expect(await carrier('(01)09521234543213(21)7700412')).toMatchObject({
      deviceIdentifier: '09521234543213',
      issuer: 'http://hl7.org/fhir/NamingSystem/gs1-di',
      entryType: 'manual',
    }));
  test.each(['(01)09521234543214(21)7700412', '(01)9521234543213(21)7700412', '(01)095212345432１3(21)7700412'])(
    'no device identifier from %s',
    async (udi) => {
      const found = await carrier(udi);
      expect(found).not.toHaveProperty('deviceIdentifier');
      expect(found).not.toHaveProperty('issuer');
      expect(found['carrierHRF']).toBe(udi);
    },
  );
  test('what is no label is of unknown entry', async () =>
    expect(await carrier('HX-1 7700412')).toEqual({ carrierHRF: 'HX-1 7700412', entryType: 'unknown' }));
});

describe('structure', () => {
  test.each([
    ['a plan with nothing in it', { status: 'planned' }],
    ['a draft with nothing in it', {}],
  ])('%s is a document whose operation is reached', async (_, head) => {
    const bundle = await sound(operation('', head));
    const [composition = {}] = resources(bundle);
    expect(list(composition['section']).flatMap(({ entry }) => list(entry)).length).toBeGreaterThan(0);
  });
  test('a plan', async () => {
    const bundle = await sound(note({ preop: '{ pressure: 16 mmHg }' }, { status: 'planned' }));
    expect(resource(bundle, 'Procedure')['status']).toBe('preparation');
  });

  const signed = '[{ by: S-05, meaning: author, at: 2031-03-14T10:02+01:00 }]';
  test.each([
    ['2031-03-16T08:30+01:00', '2031-03-16T08:30:00+01:00'],
    // Written before the signature by the clock of another zone.
    ['2031-03-14T10:30+02:00', '2031-03-14T10:02:00+01:00'],
  ])('an amendment of %s gives a document of %s', async (at, date) => {
    const op = note({ signed }, { status: 'final' });
    const am = amendment('text: the fellow eye was dilated too\n', { kind: 'addendum', at });
    const bundle = await sound({ sideport: department, op, am });
    expect(resource(bundle, 'Composition')).toMatchObject({ status: 'amended', date });
  });

  test('control characters leave as their pictures', async () => {
    const fields = { findings: String.raw`"a\x01b\x1Dc\td"`, place: String.raw`"x\x0By"` };
    const bundle = await sound(note(fields));
    expect(list(resource(bundle, 'Procedure')['note'])[0]?.['text']).toBe('a\u2401b\u241Dc\td');
  });
});

describe('values', () => {
  // LOINC panel 62679-6: axial length 64742-0 right, 66067-0 left; corneal thickness 64744-6 right, 66068-8 left.
  test.each([
    ['left', '66067-0', '66068-8'],
    ['right', '64742-0', '64744-6'],
  ])('biometry of the %s eye in a note of the right one', async (side, length, thickness) => {
    const biometry = `{ eye: ${side}, axial-length: 23.41 mm, corneal-thickness: 552 µm, k1: 43.50 D @ 178, k2: 44.00 D @ 88 }`;
    const bundle = await sound(note({ preop: `{ pressure: 16 mmHg, biometry: ${biometry} }` }));
    const told = (name: string) => {
      const { code, bodySite } = resource(bundle, 'Observation', name);
      return [...codesIn(code), isObject(bodySite) ? bodySite['text'] : undefined];
    };
    expect(told('Axial length')).toEqual([length, `${side} eye`]);
    expect(told('Corneal thickness')).toEqual([thickness, `${side} eye`]);
    expect(told('Keratometry')).toEqual([`${side} eye`]);
    expect(told('Intraocular pressure')).toEqual(['79892-6', 'right eye']);
    const ofCornea = all(bundle, 'Observation').find((one) => JSON.stringify(one['code']).includes('mean-keratometry'));
    expect(JSON.stringify(ofCornea?.['bodySite'])).toContain(`${side} eye`);
  });

  test.each(['6/36-2', '6/9+1', 'CF', '0.4'])('%s has one logMAR in a document', async (text) => {
    const bundle = await sound(note({ preop: `{ acuity: { corrected: "${text}" } }` }));
    const written = list(resource(bundle, 'Observation', 'Best corrected acuity')['component'])[0] ?? {};
    const computed = resource(bundle, 'Observation', 'acuity-logmar of preop.acuity.corrected (computed)');
    const number = (quantity: Json | undefined) => isObject(quantity) && quantity['value'];
    expect(number(written['valueQuantity'])).toBe(number(computed['valueQuantity']));
    if (text === 'CF') expect(JSON.stringify(written['code'])).toContain('schulze-bonsel-2006');
  });
});
