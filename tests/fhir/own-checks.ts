import ucum from '@lhncbc/ucum-lhc';
import type { Json, JsonObject } from './bundles.ts';
import { isObject, textOf } from './bundles.ts';

/** Eight checks that no validator at hand makes: FHIR R4 says so in prose only, or in definitions they do not read. */
const units = ucum.UcumLhcUtils.getInstance();
const REFERENCE_TYPES: Readonly<Record<string, readonly string[]>> = {
  'Composition.subject': ['Patient'],
  'Composition.author': ['Practitioner', 'Device', 'Patient', 'Organization'],
  'Procedure.subject': ['Patient', 'Group'],
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
  });
  return faults;
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
