import { beforeAll, describe, expect, test } from 'vitest';
import { sampleBundles, type JsonObject } from './bundles.ts';
import { mutations } from './mutations.ts';
import { allFaults } from './validators.ts';

let bundles: readonly JsonObject[] = [];
let sound: JsonObject = {};
beforeAll(async () => {
  bundles = await sampleBundles('--codes', 'icd10cm');
  sound = bundles.find((bundle) => hasDevice(bundle)) ?? {};
}, 60_000);

describe('documents of the sound samples', () => {
  test('there is one for each operation', () => expect(bundles.length).toBeGreaterThanOrEqual(9));
  test('no validator finds a fault', () => {
    expect(bundles.flatMap((bundle, index) => allFaults(bundle).map((fault) => `${index}: ${fault}`))).toEqual([]);
  });
});

describe('a single fault', () => {
  test('there are 32 or more of them', () => expect(mutations.length).toBeGreaterThanOrEqual(32));
  test.each(mutations)('$name is caught', ({ spoil }) => {
    const spoiled = structuredClone(sound);
    spoil(spoiled);
    expect(spoiled).not.toEqual(sound);
    expect(allFaults(spoiled)).not.toEqual([]);
  });
});

const hasDevice = (bundle: JsonObject): boolean =>
  JSON.stringify(bundle).includes('"udiCarrier"') && JSON.stringify(bundle).includes('MedicationAdministration');
