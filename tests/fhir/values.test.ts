import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { validateXML } from 'xmllint-wasm';
import { emptyFolder, exported, run, SOUND } from '../export/run.ts';
import { at, number, operations, type TypedNote } from '../export/typed-note.ts';
import { isObject, resources, textOf, type JsonObject } from './bundles.ts';

let lines: readonly string[] = [];
let bundles: readonly JsonObject[] = [];
beforeAll(async () => {
  lines = (await exported(SOUND, '--as', 'fhir', '--codes', 'icd10-opcs4')).out.trimEnd().split('\n');
  bundles = lines.map((line) => JSON.parse(line) as JsonObject);
}, 60_000);

/** The note that a document was made from. */
function noteOf(index: number): TypedNote {
  const title = resources(bundles[index] ?? {})[0];
  const identifier = title && isObject(title['identifier']) ? title['identifier']['value'] : undefined;
  return operations.find((note) => note['id'] === identifier) ?? {};
}

/** The digits behind the quantity of an observation, as they stand in the file: a JSON reader would drop a last zero. */
const digitsOf = (line: string, name: string): string | undefined =>
  new RegExp(
    `"code":\\{[^{}]*(?:\\[\\{[^{}]*\\}\\],)?"text":"${name}"\\}[^{}]*(?:\\{[^{}]*\\}[^{}]*)*?"valueQuantity":\\{"value":(-?[0-9.]+)`,
    'u',
  ).exec(line)?.[1];

describe('values of the samples', () => {
  test.each([
    ['Axial length', 'preop.biometry.axial-length'],
    ['Anterior chamber depth', 'preop.biometry.chamber-depth'],
    ['Corneal thickness', 'preop.biometry.corneal-thickness'],
    ['Intraocular pressure', 'preop.pressure'],
    ['Capsulotomy diameter', 'capsulotomy.diameter'],
    ['Ultrasound time', 'nucleus.ultrasound-time'],
  ])('%s has the digits that were typed', (name, path) => {
    const found = lines.map((line) => digitsOf(line, name));
    expect(found).toEqual(lines.map((_, index) => number(noteOf(index), path)));
  });

  test('the lens of every note', () => {
    const devices = bundles.map((bundle) =>
      resources(bundle).find(
        (one) => one['resourceType'] === 'Device' && JSON.stringify(one['type']).includes('intraocular lens'),
      ),
    );
    const told = devices.map(
      (device) =>
        device && [
          device['manufacturer'],
          device['modelNumber'],
          device['serialNumber'],
          device['lotNumber'],
          device['expirationDate'],
        ],
    );
    const typed = bundles.map((_, index) => {
      const note = noteOf(index);
      const placed = at(note, 'lens.placed');
      return placed === undefined || placed === 'none'
        ? undefined
        : ['maker', 'model', 'serial', 'lot', 'expiry'].map((key) => at(note, `lens.${key}`));
    });
    expect(told).toEqual(typed);
  });

  // LOINC panel 62679-6 (axial length, corneal thickness); 79892-6 and 79893-4 as in two public case reports. One public
  // questionnaire has right and left swapped: the code must agree with the body site.
  test('a code of a side stands with its side only', () => {
    const sides: Readonly<Record<string, string>> = {
      '64742-0': 'right',
      '66067-0': 'left',
      '64744-6': 'right',
      '66068-8': 'left',
      '79892-6': 'right',
      '79893-4': 'left',
    };
    const pairs = bundles.flatMap((bundle) =>
      resources(bundle).flatMap((one) => {
        const code = /"code":"(\d+-\d)"/u.exec(JSON.stringify(one['code'] ?? ''))?.[1];
        const side = code && sides[code];
        return side ? [[`${side} eye`, /"text":"(\w+ eye)"/u.exec(JSON.stringify(one['bodySite']))?.[1]]] : [];
      }),
    );
    expect(pairs.length).toBeGreaterThan(20);
    expect(pairs.filter(([byCode, bySite]) => byCode !== bySite)).toEqual([]);
  });

  test('suggested codes are marked as not chosen by the coder', () => {
    const codings = bundles.flatMap(
      (bundle) => JSON.stringify(bundle).match(/\{"system":"https:\/\/fhir\.hl7\.org\.uk[^{}]*\}/gu) ?? [],
    );
    expect(codings.length).toBeGreaterThan(20);
    expect(codings.filter((coding) => !coding.includes('"userSelected":'))).toEqual([]);
  });
});

test('every narrative is well-formed and can be read by an XML parser', async () => {
  const narratives = bundles.flatMap((bundle) => {
    const [head] = resources(bundle);
    const sections = Array.isArray(head?.['section']) ? head['section'] : [];
    return [head, ...sections].flatMap((part) =>
      isObject(part) && isObject(part['text']) ? [textOf(part['text'], 'div')] : [],
    );
  });
  const schema =
    '<xs:schema xmlns:xs="http://www.w3.org/2001/XMLSchema" targetNamespace="http://www.w3.org/1999/xhtml" xmlns:h="http://www.w3.org/1999/xhtml"><xs:element name="div" type="xs:anyType"/></xs:schema>';
  const result = await validateXML({
    xml: narratives.map((contents, index) => ({ fileName: `${index}.xml`, contents })),
    schema: [schema],
  });
  expect(narratives.length).toBeGreaterThan(80);
  expect(result.errors).toEqual([]);
});

test('the same notes give the same documents', async () => {
  const again = await exported(SOUND, '--as', 'fhir', '--codes', 'icd10-opcs4');
  expect(again.out.trimEnd().split('\n')).toEqual(lines);
});

test('a note without any date is named and left out, and the others are written', async () => {
  const folder = emptyFolder();
  writeFileSync(
    join(folder, 'undated.opnote.yaml'),
    'opnote: 1\nrecord: operation\nstatus: draft\nid: OP-1\neye: right\n',
  );
  writeFileSync(
    join(folder, 'dated.opnote.yaml'),
    'opnote: 1\nrecord: operation\nstatus: draft\nid: OP-2\ndate: 2025-01-16\n',
  );
  const result = await run('export', folder, '--as', 'fhir');
  expect(result.code).toBe(2);
  expect(result.out.trimEnd().split('\n')).toHaveLength(1);
  expect(result.err).toContain('undated.opnote.yaml: it was left out: a document needs a date');
});
