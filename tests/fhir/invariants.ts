import { compile } from 'fhirpath';
import r4 from 'fhirpath/fhir-context/r4';
import type { JsonObject } from './bundles.ts';
import { isObject, resources, textOf } from './bundles.ts';

/** Invariants of the FHIR R4 definitions, word for word: where they hold, their key, and the expression. */
const INVARIANTS: readonly (readonly [type: string, key: string, expression: string])[] = [
  [
    'Bundle',
    'bdl-7',
    "(type = 'history') or entry.where(fullUrl.exists()).select(fullUrl&resource.meta.versionId).isDistinct()",
  ],
  ['Bundle', 'bdl-9', "type = 'document' implies (identifier.system.exists() and identifier.value.exists())"],
  ['Bundle', 'bdl-10', "type = 'document' implies (timestamp.hasValue())"],
  ['Bundle', 'bdl-11', "type = 'document' implies entry.first().resource.is(Composition)"],
  ['Composition', 'cmp-1', 'section.all(text.exists() or entry.exists() or section.exists())'],
  ['Composition', 'cmp-2', 'section.all(emptyReason.empty() or entry.empty())'],
  ['Observation', 'obs-6', 'dataAbsentReason.empty() or value.empty()'],
  [
    'Observation',
    'obs-7',
    'value.empty() or component.code.where(coding.intersect(%resource.code.coding).exists()).empty()',
  ],
  ['Observation', 'obs-3', 'referenceRange.all(low.exists() or high.exists() or text.exists())'],
  [
    'Procedure',
    'per-1',
    'performed.ofType(Period).all(start.hasValue().not() or end.hasValue().not() or (start <= end))',
  ],
  ['MedicationAdministration', 'mad-1', 'dosage.all(dose.exists() or rate.exists())'],
];
/** On every resource. */
const EVERYWHERE: readonly (readonly [key: string, expression: string])[] = [
  ['qty-3', 'descendants().ofType(Quantity).all(code.empty() or system.exists())'],
  ['dom-2', 'contained.contained.empty()'],
];

const compiled = new Map<string, (resource: object) => readonly unknown[]>();

function holds(resource: JsonObject, expression: string): boolean {
  let evaluate = compiled.get(expression);
  if (!evaluate) {
    const made = compile(expression, r4) as (resource: object, variables?: object) => unknown[];
    evaluate = (one) => made(one, { resource: one });
    compiled.set(expression, evaluate);
  }
  return evaluate(resource)[0] !== false;
}

/** Invariants that a bundle or one of its resources breaks. */
export function brokenInvariants(bundle: JsonObject): readonly string[] {
  return [bundle, ...resources(bundle)].flatMap((one) => {
    const own = INVARIANTS.filter(([type]) => type === one['resourceType']).map(
      ([, key, expression]) => [key, expression] as const,
    );
    const broken = [...own, ...(one === bundle ? [] : EVERYWHERE)].filter(
      ([, expression]) => isObject(one) && !holds(one, expression),
    );
    return broken.map(([key]) => `invariant ${key} of ${textOf(one, 'resourceType')}`);
  });
}
