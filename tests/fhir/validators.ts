import { Fhir, Versions } from 'fhir/fhir.js';
import { ParseConformance } from 'fhir/parseConformance.js';
import type { JsonObject } from './bundles.ts';
import { resources } from './bundles.ts';
import { brokenInvariants } from './invariants.ts';
import { ownFaults } from './own-checks.ts';
import { schemaFaults } from './schema-check.ts';

const fhir = new Fhir(new ParseConformance(true, Versions.R4));

/** What the package `fhir` says: required elements and required codes. Value sets it does not hold are only warned of. */
function packageFaults(bundle: JsonObject): readonly string[] {
  return [bundle, ...resources(bundle)].flatMap((one) => {
    const { messages } = fhir.validate(one, { errorOnUnexpected: true });
    return messages
      .filter(({ severity }) => ['error', 'fatal'].includes(String(severity)))
      .map(({ location, message }) => `fhir: ${location}: ${message}`);
  });
}

/** Everything that three independent validators and our own checks say against a document. */
export function allFaults(bundle: JsonObject): readonly string[] {
  return [...schemaFaults(bundle), ...packageFaults(bundle), ...brokenInvariants(bundle), ...ownFaults(bundle)];
}
