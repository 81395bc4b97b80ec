import type { Json, JsonObject } from './bundles.ts';
import { isObject, resource, textOf } from './bundles.ts';

/** One fault put into a sound document. */
export interface Mutation {
  readonly name: string;
  readonly spoil: (bundle: JsonObject) => void;
}

const set = (name: string, type: string, path: string, value: Json | undefined): Mutation => ({
  name,
  spoil: (bundle) => put(type === 'Bundle' ? bundle : resource(bundle, type), path.split('.'), value),
});

function put(target: Json, [step = '', ...rest]: readonly string[], value: Json | undefined): void {
  const holder = target as Record<string, Json>;
  if (rest.length > 0) put(holder[step] ?? null, rest, value);
  else if (value === undefined) delete holder[step];
  else holder[step] = value;
}

const axialLength = (bundle: JsonObject): JsonObject => resource(bundle, 'Observation', 'Axial length');
const quantity = (bundle: JsonObject): JsonObject => {
  const value = axialLength(bundle)['valueQuantity'];
  if (!isObject(value)) throw new Error('The axial length has no quantity');
  return value;
};
const entries = (bundle: JsonObject): Json[] => (Array.isArray(bundle['entry']) ? bundle['entry'] : []);
const patientUrl = (bundle: JsonObject, type = 'Patient'): string => {
  const entry = entries(bundle).find(
    (one) => isObject(one) && isObject(one['resource']) && one['resource']['resourceType'] === type,
  );
  return isObject(entry) ? textOf(entry, 'fullUrl') : '';
};

export const mutations: readonly Mutation[] = [
  set('no type of the bundle', 'Bundle', 'type', undefined),
  set('a type of bundle that does not exist', 'Bundle', 'type', 'documents'),
  set('no identifier of the document', 'Bundle', 'identifier', undefined),
  set('no timestamp of the document', 'Bundle', 'timestamp', undefined),
  {
    name: 'a document that does not begin with its head',
    spoil: (bundle) => void entries(bundle).push(entries(bundle).shift() ?? null),
  },
  {
    name: 'one address twice',
    spoil: (bundle) => void entries(bundle).push(structuredClone(entries(bundle)[1] ?? null)),
  },
  set('no status of the composition', 'Composition', 'status', undefined),
  set('a status of the composition that does not exist', 'Composition', 'status', 'signed'),
  set('no kind of document', 'Composition', 'type', undefined),
  set('no date of the composition', 'Composition', 'date', undefined),
  set('a date in another notation', 'Composition', 'date', '14.03.2031'),
  set('a day that does not exist', 'Composition', 'date', '2031-02-30'),
  set('a time without its zone', 'Composition', 'date', '2031-03-14T10:02:00'),
  set('no author', 'Composition', 'author', undefined),
  set('no title', 'Composition', 'title', undefined),
  set('a section with nothing in it', 'Composition', 'section.0', { title: 'Empty' }),
  set('a narrative without its namespace', 'Composition', 'text.div', '<div>text</div>'),
  set(
    'a script in a narrative',
    'Composition',
    'text.div',
    '<div xmlns="http://www.w3.org/1999/xhtml"><script>x()</script></div>',
  ),
  set('a status of narrative that does not exist', 'Composition', 'text.status', 'written'),
  set('no status of the procedure', 'Procedure', 'status', undefined),
  set('a status of the procedure that does not exist', 'Procedure', 'status', 'done'),
  set('no patient of the procedure', 'Procedure', 'subject', undefined),
  set('a performer who is nobody', 'Procedure', 'performer.0.actor', undefined),
  set('a period that ends before it begins', 'Procedure', 'performedPeriod', {
    start: '2031-03-14',
    end: '2031-03-13',
  }),
  {
    name: 'a list where one concept is due',
    spoil: (bundle) => put(resource(bundle, 'Procedure'), ['code'], [resource(bundle, 'Procedure')['code'] ?? null]),
  },
  set('one concept where a list is due', 'Procedure', 'bodySite', { text: 'left eye' }),
  set('an element that does not exist', 'Procedure', 'eye', 'left'),
  {
    name: 'a patient that is a device',
    spoil: (bundle) => put(resource(bundle, 'Procedure'), ['subject'], { reference: patientUrl(bundle, 'Device') }),
  },
  set('a reference to nothing', 'Procedure', 'subject', { reference: 'urn:uuid:00000000-0000-4000-8000-000000000000' }),
  set('an empty object', 'Device', 'type', {}),
  set('an empty list', 'Device', 'property', []),
  set('a way of scanning that does not exist', 'Device', 'udiCarrier', [{ entryType: 'typed' }]),
  set('a sex that is no code', 'Patient', 'gender', 'm'),
  set('a month that does not exist in a year of birth', 'Patient', 'birthDate', '1979-13'),
  { name: 'no code of an observation', spoil: (bundle) => put(axialLength(bundle), ['code'], undefined) },
  { name: 'no status of an observation', spoil: (bundle) => put(axialLength(bundle), ['status'], undefined) },
  { name: 'a unit that is no UCUM code', spoil: (bundle) => put(quantity(bundle), ['code'], 'dpt') },
  { name: 'a code of a unit without its system', spoil: (bundle) => put(quantity(bundle), ['system'], undefined) },
  { name: 'a number as text', spoil: (bundle) => put(quantity(bundle), ['value'], '29.60') },
  {
    name: 'a value together with a reason for having none',
    spoil: (bundle) => put(axialLength(bundle), ['dataAbsentReason'], { text: 'not done' }),
  },
  {
    name: 'a part with the code of the whole',
    spoil: (bundle) =>
      put(
        axialLength(bundle),
        ['component'],
        [{ code: structuredClone(axialLength(bundle)['code'] ?? null), valueString: 'x' }],
      ),
  },
  set('no moment of a provenance', 'Provenance', 'recorded', undefined),
  set('nobody behind a provenance', 'Provenance', 'agent', undefined),
  {
    name: 'a procedure that nothing leads to',
    spoil: (bundle) => {
      const sections = resource(bundle, 'Composition')['section'];
      for (const section of Array.isArray(sections) ? sections : []) if (isObject(section)) delete section['entry'];
    },
  },
  set('a control character', 'Procedure', 'note', [{ text: 'a\u0001b' }]),
  set('two codes of one system in one concept', 'Procedure', 'code', {
    coding: [
      { system: 'http://www.cms.gov/Medicare/Coding/ICD10', code: '08RK3JZ' },
      { system: 'http://www.cms.gov/Medicare/Coding/ICD10', code: '08RJ3JZ' },
    ],
  }),
  set('a part of a device', 'Procedure', 'partOf', [{ reference: 'urn:uuid:0' }]),
  set('a dosage without an amount', 'MedicationAdministration', 'dosage', { text: '1 mg' }),
];
