import ucum from '@lhncbc/ucum-lhc';
import type { Json, JsonObject } from './bundles.ts';
import { isObject, textOf } from './bundles.ts';

/** Checks that no validator at hand makes: FHIR R4 says so in prose only, or in definitions they do not read. */
const units = ucum.UcumLhcUtils.getInstance();
const REFERENCE_TYPES: Readonly<Record<string, readonly string[]>> = {
  'Composition.subject': ['Patient'],
  'Composition.author': ['Practitioner', 'Device', 'Patient', 'Organization'],
  'Procedure.subject': ['Patient', 'Group'],
  'Procedure.partOf': ['Procedure', 'Observation', 'MedicationAdministration'],
  'Procedure.report': ['Composition', 'DiagnosticReport', 'DocumentReference'],
  'Procedure.performer.actor': ['Practitioner', 'Organization', 'Patient', 'Device'],
  'Procedure.focalDevice.manipulated': ['Device'],
  'Observation.subject': ['Patient', 'Group', 'Device', 'Location'],
  'Device.patient': ['Patient'],
  'MedicationAdministration.subject': ['Patient', 'Group'],
  'Provenance.agent.who': ['Practitioner', 'Organization', 'Patient', 'Device'],
};
const DATE = /^\d{4}-\d{2}-\d{2}/u;

export function ownFaults(bundle: JsonObject): readonly string[] {
  const types = new Map<string, string>();
  for (const entry of Array.isArray(bundle['entry']) ? bundle['entry'] : []) {
    if (isObject(entry) && isObject(entry['resource']))
      types.set(textOf(entry, 'fullUrl'), textOf(entry['resource'], 'resourceType'));
  }
  const faults: string[] = [];
  walk(bundle, textOf(bundle, 'resourceType'), (value, path) => {
    if (Array.isArray(value) && value.length === 0) faults.push(`${path}: an empty list`);
    if (isObject(value) && Object.keys(value).length === 0) faults.push(`${path}: an empty object`);
    if (typeof value === 'string' && DATE.test(value) && !isCalendarDate(value.slice(0, 10)))
      faults.push(`${path}: ${value} is no day of the calendar`);
    if (typeof value === 'string' && path.endsWith('.reference')) faults.push(...referenceFaults(value, path, types));
    if (isObject(value) && value['system'] === 'http://unitsofmeasure.org') {
      const { status } = units.validateUnitString(textOf(value, 'code'));
      if (status !== 'valid') faults.push(`${path}: ${textOf(value, 'code')} is no UCUM code`);
    }
    if (typeof value === 'string' && path.endsWith('.div')) faults.push(...narrativeFaults(value, path));
    if (typeof value === 'string' && CONTROL.test(value)) faults.push(`${path}: a control character`);
    if (isObject(value) && Array.isArray(value['coding'])) faults.push(...codingFaults(value['coding'], path));
  });
  return [...faults, ...unreached(bundle, types)];
}

// R4, 2.24.0.1 (string): no character below U+0020 but tab and line ends.
const CONTROL = /[^\P{Cc}\t\n\r\u007F-\u009F]/u;

/** R4, 2.24.0.8 (CodeableConcept): its codings mean the same; two codes of one system cannot. */
function codingFaults(codings: readonly Json[], path: string): readonly string[] {
  const systems = codings.map((coding) => (isObject(coding) ? textOf(coding, 'system') : ''));
  return new Set(systems).size === systems.length ? [] : [`${path}: two codes of one system in one concept`];
}

/** R4, 2.42.1 (Documents): every resource but those of provenance is reached from the Composition, by references. */
function unreached(bundle: JsonObject, types: ReadonlyMap<string, string>): readonly string[] {
  const resources = new Map<string, Json>();
  for (const entry of Array.isArray(bundle['entry']) ? bundle['entry'] : []) {
    if (isObject(entry)) resources.set(textOf(entry, 'fullUrl'), entry['resource'] ?? null);
  }
  const seen = new Set<string>();
  const visit = (url: string): void => {
    if (seen.has(url)) return;
    seen.add(url);
    walk(resources.get(url) ?? null, '', (value, path) => {
      if (typeof value === 'string' && path.endsWith('.reference')) visit(value);
    });
  };
  visit([...resources.keys()][0] ?? '');
  return [...types].flatMap(([url, type]) =>
    seen.has(url) || type === 'Provenance' ? [] : [`${type}: not reached from the Composition`],
  );
}

function walk(value: Json, path: string, visit: (value: Json, path: string) => void): void {
  visit(value, path);
  if (Array.isArray(value)) for (const item of value) walk(item, path, visit);
  else if (isObject(value)) {
    for (const [key, member] of Object.entries(value))
      walk(member, key === 'resource' && isObject(member) ? textOf(member, 'resourceType') : `${path}.${key}`, visit);
  }
}

function isCalendarDate(date: string): boolean {
  const time = Date.parse(`${date}T00:00:00Z`);
  return !Number.isNaN(time) && new Date(time).toISOString().startsWith(date);
}

function referenceFaults(target: string, path: string, types: ReadonlyMap<string, string>): readonly string[] {
  const type = types.get(target);
  if (type === undefined) return [`${path}: nothing in the bundle has the address ${target}`];
  const allowed = REFERENCE_TYPES[path.replace(/\.reference$/u, '')];
  return allowed && !allowed.includes(type) ? [`${path}: points to a ${type}`] : [];
}

function narrativeFaults(div: string, path: string): readonly string[] {
  return [
    ...(div.startsWith('<div xmlns="http://www.w3.org/1999/xhtml">') ? [] : [`${path}: the narrative is no XHTML div`]),
    ...(/<(?:script|iframe|object|form|link|style)\b|\son\w+=|javascript:/iu.test(div)
      ? [`${path}: the narrative could run something`]
      : []),
  ];
}
