import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { generatedFiles } from '../../tools/generated/generated-files.ts';

// The schemas are judged by a general-purpose validator, and the notes are read by a general-purpose YAML reader
// (YAML 1.2, core schema): neither knows anything of Sideport.
const validators = new Map(
  ['opnote', 'sideport'].map((name) => {
    const schema: unknown = JSON.parse(readFileSync(`schemas/published/${name}.schema.json`, 'utf8'));
    return [name, new Ajv2020({ allErrors: true, strict: true, strictTypes: false }).compile(schema as object)];
  }),
);

function faults(name: 'opnote' | 'sideport', text: string): readonly string[] {
  const validate = validators.get(name);
  if (validate === undefined) throw new Error(`${name} has no schema`);
  validate(parse(text));
  return (validate.errors ?? []).map((error) => `${error.instancePath} ${error.message}`);
}

function filesBelow(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));
}

test.each(Object.entries(generatedFiles()))('%s is what the source makes (npm run generate)', (path, text) => {
  expect(readFileSync(path, 'utf8')).toBe(text);
});

test.each(filesBelow('samples/sound'))('%s keeps to its schema', (file) => {
  expect(faults(file.endsWith('sideport.yaml') ? 'sideport' : 'opnote', readFileSync(file, 'utf8'))).toEqual([]);
});

const operation = 'opnote: 1\nrecord: operation\n';

test.each([
  ['a field that does not exist', `${operation}dye-used: trypan blue`],
  ['a word that is not in the vocabulary', `${operation}urgency: planed`],
  ['a unit that measures something else', `${operation}anaesthesia:\n  volume: 3.5 mg`],
  ['a bare number outside what is possible', `${operation}anaesthesia:\n  volume: 35`],
  ['a section where a value is due', `${operation}eye:\n  side: left`],
  ['a value where a section is due', `${operation}hydrodissection: complete`],
  ['a word of absence that the field does not know', `${operation}lens: not applicable`],
  ['no kind of record', 'opnote: 1\neye: left'],
  ['a field of another kind of record', 'opnote: 1\nrecord: follow-up\nincisions: []'],
])('refuses %s', (_, text) => {
  expect(faults('opnote', text)).not.toEqual([]);
});

test.each([
  ['a bare number', `${operation}anaesthesia:\n  volume: 3.5`],
  ['another spelling of the unit', `${operation}anaesthesia:\n  volume: 3.5 ml`],
  ['one word where a list is due', `${operation}comorbidity: high myopia`],
  ['a word of absence', `${operation}comorbidity: none\ndye: not recorded`],
  ['an unquoted true', `${operation}closure:\n  hydration: true`],
  ['a synonym', `${operation}eye: OD`.replace('OD', 'od')],
])('understands %s', (_, text) => {
  expect(faults('opnote', text)).toEqual([]);
});
